using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Text;

namespace WireText.Checks.Repairs;

/// <summary>What becomes of one line of a wiring text. Lines are given with single blanks and without comments.</summary>
/// <param name="Old">The line that is there; null where lines are added.</param>
/// <param name="New">The lines in its place; empty where it goes.</param>
public sealed record LineEdit(string? Old, ImmutableArray<string> New)
{
    /// <summary>A place on the line that is there; null where lines are added.</summary>
    public SourceLocation? At { get; init; }

    /// <summary>The same as changes of the text; none where there is no place for a line to add.</summary>
    public ImmutableArray<TextEdit> InText(Circuit circuit) =>
        At is not { } place ? WireLines.Added(circuit, New[0])
        : New.IsEmpty ? [TextEdit.WithoutStatement(place)]
        : New is [var only] && Line.Of(place).ChangedWords(only) is { } words ? words
        : [TextEdit.Statement(place, New)];

    /// <summary>What an edit of the circuit is in its text, in the order of the lines.</summary>
    public static ImmutableArray<LineEdit> Of(Circuit circuit, CircuitEdit edit)
    {
        var edited = edit.Apply(circuit);
        return edit switch
        {
            RenamePositions rename => [Renamed(edited.Controls[rename.Control])],
            AddWire add => [new LineEdit(null, [Added(circuit, add)])],
            _ => Rewired(circuit, edited),
        };
    }

    private static LineEdit Renamed(Control control) =>
        new(
            Line.Of(control.NamedAt!.Value).Tidied,
            [$"positions {control.Name} {string.Join(' ', control.Positions.Select(position => position.Name))}"]
        )
        {
            At = control.NamedAt,
        };

    /// <summary>The line that adds a wire, black where it goes to ground.</summary>
    public static string Added(Circuit circuit, AddWire add)
    {
        var sleeve = circuit.Outputs[0].Sleeve;
        var isGround = circuit.Nets.SameNet(add.From, sleeve) || circuit.Nets.SameNet(add.To, sleeve);
        return WireLines.Line(
            circuit.NameOf(add.From),
            circuit.NameOf(add.To),
            isGround ? WireLines.GroundColour : WireLines.SignalColour
        );
    }

    private static ImmutableArray<LineEdit> Rewired(Circuit circuit, Circuit edited) =>
        [
            .. circuit
                .Wires.Where(wire => wire != edited.Wires[wire.Index])
                .GroupBy(wire => Line.Of(wire.DeclaredAt))
                .OrderBy(group => group.Key.Source.Path, StringComparer.Ordinal)
                .ThenBy(group => group.Key.Span.Start)
                .Select(group => new LineEdit(
                    group.Key.Tidied,
                    group.First().Kind == WireKind.Wire
                        ? Runs(edited, group.First())
                        : [Renamed(group.Key, circuit, edited, group)]
                )
                {
                    At = group.First().DeclaredAt,
                }),
        ];

    /// <summary>What is left of a run of wire: one line, or one for each piece where it no longer meets.</summary>
    private static ImmutableArray<string> Runs(Circuit edited, Wire changed)
    {
        var runs = new List<List<int>>();
        var stretches = edited.Wires.Where(wire => wire.Kind == WireKind.Wire && wire.Run == changed.Run).ToList();
        foreach (var stretch in stretches.Where(wire => wire.From >= 0))
        {
            if (runs.Count > 0 && runs[^1][^1] == stretch.From)
            {
                runs[^1].Add(stretch.To);
            }
            else
            {
                runs.Add([stretch.From, stretch.To]);
            }
        }

        var rest = Line.Of(changed.DeclaredAt).TidiedFrom(stretches[^1].DeclaredAt.Span.End);
        return [.. runs.Select(lugs => $"wire {string.Join(" to ", lugs.Select(edited.NameOf))} {rest}")];
    }

    /// <summary>The line with other lugs in the places of those that changed.</summary>
    private static string Renamed(Line line, Circuit circuit, Circuit edited, IEnumerable<Wire> changed)
    {
        var names = changed
            .SelectMany(WireEnd.BothOf)
            .Where(end => end.LugIn(circuit) != end.LugIn(edited))
            .Select(end => (At: end.PlaceIn(circuit)!.Value.Span, Name: edited.NameOf(end.LugIn(edited))))
            .OrderByDescending(place => place.At.Start);
        var text = line.Source.Slice(line.Span);
        foreach (var (at, name) in names)
        {
            text = string.Concat(
                text.AsSpan(0, at.Start - line.Span.Start),
                name,
                text.AsSpan(at.End - line.Span.Start)
            );
        }

        return LineScan.Tidied(text);
    }

    /// <summary>What one line of a source says, without its comment.</summary>
    private readonly record struct Line(SourceText Source, TextSpan Span)
    {
        public static Line Of(SourceLocation location) =>
            new(location.Source, LineScan.Of(location.Source, location.Position.Line).Content);

        public string Tidied => LineScan.Tidied(Source.Slice(Span));

        public string TidiedFrom(int offset) => LineScan.Tidied(Source.Slice(TextSpan.FromBounds(offset, Span.End)));

        /// <summary>The words that differ in another line with as many, so that columns and comment stay; else null.</summary>
        public ImmutableArray<TextEdit>? ChangedWords(string other)
        {
            var text = Source.Slice(Span);
            var (old, now) = (LineScan.WordsOf(text), LineScan.WordsOf(other));
            var (source, start) = (Source, Span.Start);
            return old.Count != now.Count
                ? null
                :
                [
                    .. old.Zip(now)
                        .Select(pair => (At: pair.First, Now: other.Substring(pair.Second.Start, pair.Second.Length)))
                        .Where(word => text.Substring(word.At.Start, word.At.Length) != word.Now)
                        .Select(word => new TextEdit(
                            new SourceLocation(source, word.At with { Start = start + word.At.Start }),
                            word.Now
                        )),
                ];
        }
    }
}
