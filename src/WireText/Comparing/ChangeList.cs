using System.Collections.Immutable;
using WireText.Circuits;

namespace WireText.Comparing;

/// <summary>What kind of work a change is, in the order in which it is done at the bench.</summary>
public enum ChangeSection
{
    WiresLifted,
    PartsOut,
    PartsIn,
    PartsChanged,

    /// <summary>Nothing is done: more is known of a part than before.</summary>
    PartsMeasured,
    WiresMoved,
    WiresExchanged,
    WiresAdded,
}

/// <summary>One thing to be done, with the number by which lists and pictures call it.</summary>
/// <param name="Number">From 1.</param>
/// <param name="Wire">Null for a change of a part.</param>
/// <param name="Before">The part of the earlier circuit; null where there was none, and for a wire.</param>
/// <param name="After">The part of the later circuit; null where there is none, and for a wire.</param>
public sealed record ListedChange(
    int Number,
    ChangeSection Section,
    string Words,
    WireChange? Wire,
    Part? Before,
    Part? After
);

/// <summary>What is to be done to make one circuit of the other, numbered.</summary>
public static class ChangeList
{
    public static ImmutableArray<ListedChange> Of(CircuitComparison circuits)
    {
        var parts = circuits
            .Dropped.Select(part => Of(ChangeSection.PartsOut, Words(circuits.Before, part), part, null))
            .Concat(circuits.Added.Select(part => Of(ChangeSection.PartsIn, Words(circuits.After, part), null, part)))
            .Concat(
                circuits.Changed.Select(one =>
                    Of(
                        one.IsLearnt ? ChangeSection.PartsMeasured : ChangeSection.PartsChanged,
                        Words(one),
                        one.Before,
                        one.After
                    )
                )
            );
        var wires = circuits.Wires.Select(change => new ListedChange(
            0,
            SectionOf(change.Kind),
            Words(circuits, change),
            change,
            null,
            null
        ));
        return
        [
            .. parts
                .Concat(wires)
                .OrderBy(change => change.Section)
                .Select((change, index) => change with { Number = index + 1 }),
        ];
    }

    /// <summary>What stands above the changes of a section.</summary>
    public static string HeadingOf(ChangeSection section) =>
        section switch
        {
            ChangeSection.WiresLifted => "wires lifted",
            ChangeSection.PartsOut => "parts out",
            ChangeSection.PartsIn => "parts in",
            ChangeSection.PartsChanged => "parts changed",
            ChangeSection.PartsMeasured => "parts known better now",
            ChangeSection.WiresMoved => "wires moved",
            ChangeSection.WiresExchanged => "wires exchanged",
            _ => "wires added",
        };

    /// <summary>What is done with one, where no heading stands above it.</summary>
    public static string WordOf(ChangeSection section) =>
        section switch
        {
            ChangeSection.WiresLifted => "lifted",
            ChangeSection.PartsOut => "out",
            ChangeSection.PartsIn => "in",
            ChangeSection.PartsChanged => "changed",
            ChangeSection.PartsMeasured => "known better now",
            ChangeSection.WiresMoved => "moved",
            ChangeSection.WiresExchanged => "exchanged",
            _ => "added",
        };

    /// <summary>The words for a wire: <c>vol.2 to out.tip blue</c>.</summary>
    public static string Words(Circuit circuit, Wire wire)
    {
        var text = $"{End(circuit, wire.From)} to {End(circuit, wire.To)}";
        return wire.Colour is { } colour ? $"{text} {colour.Name}" : text;
    }

    /// <summary>The words for a part: <c>button mute momentary</c>.</summary>
    public static string Words(Circuit circuit, Part part) =>
        $"{part.Kind} {part.Name} {PartWords.Of(circuit, part)}".TrimEnd();

    private static ListedChange Of(ChangeSection section, string words, Part? before, Part? after) =>
        new(0, section, words, null, before, after);

    private static string Words(PartChange change) =>
        change.WordsBefore == change.WordsAfter
            ? $"{change.After.Name}: {change.WordsAfter}, other values"
            : $"{change.After.Name}: {change.WordsBefore} → {change.WordsAfter}";

    private static string Words(CircuitComparison circuits, WireChange change) =>
        string.Join(
            " → ",
            new[]
            {
                change.Before is { } was ? Words(circuits.Before, was) : null,
                change.After is { } now ? Words(circuits.After, now) : null,
            }.OfType<string>()
        );

    private static ChangeSection SectionOf(WireChangeKind kind) =>
        kind switch
        {
            WireChangeKind.Lifted => ChangeSection.WiresLifted,
            WireChangeKind.Moved => ChangeSection.WiresMoved,
            WireChangeKind.Exchanged => ChangeSection.WiresExchanged,
            _ => ChangeSection.WiresAdded,
        };

    private static string End(Circuit circuit, int lug) => lug < 0 ? "cut" : circuit.NameOf(lug);
}
