using System.Collections.Immutable;
using WireText.Circuits;

namespace WireText.Comparing;

/// <summary>A part that is in both circuits and not the same in both.</summary>
public sealed record PartChange(Part Before, Part After, string WordsBefore, string WordsAfter)
{
    /// <summary>True where it is the same part, and only more is known of it: it stays where it is.</summary>
    public bool IsLearnt { get; init; }
}

/// <summary>A control whose positions are called otherwise, or that rests elsewhere.</summary>
public sealed record NameChange(string Control, string Before, string After);

/// <summary>How two circuits differ: parts, wires, and what positions are called. Names of parts, places, order and form are no difference.</summary>
/// <param name="Dropped">Parts of the earlier circuit that are in the later no more.</param>
/// <param name="Added">Parts that are new.</param>
public sealed record CircuitComparison(
    Circuit Before,
    Circuit After,
    ImmutableArray<Part> Dropped,
    ImmutableArray<Part> Added,
    ImmutableArray<PartChange> Changed,
    ImmutableArray<WireChange> Wires,
    ImmutableArray<NameChange> Names
)
{
    /// <summary>Worked out once: by whoever made the comparison, else when it is asked for.</summary>
    internal PartMatching Parts
    {
        get => field ??= PartMatching.Of(Before, After);
        private init;
    }

    /// <summary>True when nothing is to be soldered, bought or read anew.</summary>
    public bool IsSame => Dropped.IsEmpty && Added.IsEmpty && Changed.IsEmpty && Wires.IsEmpty && Names.IsEmpty;

    public static CircuitComparison Of(Circuit before, Circuit after)
    {
        var parts = PartMatching.Of(before, after);
        var both = before.Parts.Select(part => (Before: part, After: parts.AfterOf(part))).ToList();
        return new CircuitComparison(
            before,
            after,
            [.. both.Where(pair => pair.After is null).Select(pair => pair.Before)],
            [.. after.Parts.Where(part => parts.BeforeOf(part) is null)],
            [
                .. both.Where(pair => pair.After is { } now && !PartWords.AreAlike(before, pair.Before, after, now))
                    .Select(pair => new PartChange(
                        pair.Before,
                        pair.After!,
                        PartWords.Of(before, pair.Before),
                        PartWords.Of(after, pair.After!)
                    )
                    {
                        IsLearnt = Learning.IsOf(before, pair.Before, after, pair.After!),
                    }),
            ],
            WireChanges.Of(before, after, parts),
            [
                .. both.Where(pair => pair.After is not null)
                    .SelectMany(pair => Renamed(before, pair.Before, after, pair.After!, parts)),
            ]
        )
        {
            Parts = parts,
        };
    }

    /// <summary>The control of the earlier circuit that a control of the later was; null when it is new.</summary>
    public Control? ControlBefore(Control control)
    {
        var part = After.Parts[control.Part];
        var at = part.Controls.IndexOf(control.Index);
        return Parts.BeforeOf(part) is { } was && at < was.Controls.Length ? Before.Controls[was.Controls[at]] : null;
    }

    /// <summary>The dial of the earlier circuit that a dial of the later was; null when it is new.</summary>
    public Dial? DialBefore(Dial dial)
    {
        var part = After.Parts[dial.Part];
        var at = part.Dials.IndexOf(dial.Index);
        return Parts.BeforeOf(part) is { } was && at < was.Dials.Length ? Before.Dials[was.Dials[at]] : null;
    }

    private static IEnumerable<NameChange> Renamed(
        Circuit before,
        Part was,
        Circuit after,
        Part now,
        PartMatching parts
    ) =>
        was
            .Controls.Zip(now.Controls)
            .Select(pair => (Was: before.Controls[pair.First], Now: after.Controls[pair.Second]))
            .Where(pair =>
                Words(pair.Was, name => name) != Words(pair.Now, name => name)
                && Words(pair.Was, name => Later(before, parts, name)) != Words(pair.Now, name => name)
            )
            .Select(pair => new NameChange(
                pair.Now.Name,
                Words(pair.Was, name => name),
                Words(pair.Now, name => name)
            ));

    /// <summary>A position's name with the parts in it as they are called later: <c>rear-middle</c> for <c>bridge-middle</c>.</summary>
    private static string Later(Circuit before, PartMatching parts, string name) =>
        string.Join(
            '-',
            name.Split('-')
                .Select(word => before.FindPart(word) is { } part && parts.AfterOf(part) is { } now ? now.Name : word)
        );

    private static string Words(Control control, Func<string, string> naming) =>
        string.Join(
            ' ',
            control.Positions.Select(position =>
                naming(position.Name)
                + (position == control.Positions[control.Rest] && control.IsRestNamed ? " (rest)" : "")
            )
        );
}
