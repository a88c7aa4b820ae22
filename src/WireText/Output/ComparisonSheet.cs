using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Comparing;

namespace WireText.Output;

/// <summary>The words of a comparison.</summary>
internal static class ComparisonSheet
{
    private static readonly ImmutableArray<string> Told = ["heard", "level", "hum", "meter", "peak"];

    /// <summary>What is to be done at the bench, in the order in which it is done; sections without a line are left out.</summary>
    public static IEnumerable<(string Heading, ImmutableArray<string> Lines)> Sections(CircuitComparison circuits)
    {
        (string, ImmutableArray<string>)[] all =
        [
            ("wires lifted", OfWires(circuits, WireChangeKind.Lifted)),
            ("parts out", [.. circuits.Dropped.Select(part => Words(circuits.Before, part))]),
            ("parts in", [.. circuits.Added.Select(part => Words(circuits.After, part))]),
            ("parts changed", [.. circuits.Changed.Select(one => Words(circuits, one))]),
            ("wires moved", OfWires(circuits, WireChangeKind.Moved)),
            ("wires exchanged", OfWires(circuits, WireChangeKind.Exchanged)),
            ("wires added", OfWires(circuits, WireChangeKind.Added)),
            (
                "positions called otherwise",
                [.. circuits.Names.Select(one => $"{one.Control}: {one.Before} → {one.After}")]
            ),
        ];
        return all.Where(section => !section.Item2.IsEmpty);
    }

    /// <summary>The positions that do something else, each with what differs.</summary>
    public static IEnumerable<(
        string State,
        ImmutableArray<(string What, string Before, string After)> Lines
    )> Positions(PositionComparison positions)
    {
        foreach (var row in positions.Rows)
        {
            var (before, after) = (
                PositionSheet.CellsOf(positions.Before, row.Before),
                PositionSheet.CellsOf(positions.After, row.After)
            );
            ImmutableArray<(string, string, string)> lines =
            [
                .. Enumerable
                    .Range(0, Told.Length)
                    .Where(cell => before[cell] != after[cell])
                    .Select(cell => (Told[cell], before[cell], after[cell])),
            ];
            if (!lines.IsEmpty)
            {
                var state = StateOf(positions.After, row.State);
                var jack = positions.HasJacks ? $"at '{positions.After.Parts[row.After.Jack!.Value].Name}': " : "";
                yield return (jack + state, lines);
            }
        }
    }

    /// <summary>The words for a wire: <c>vol.2 to out.tip blue</c>.</summary>
    public static string Words(Circuit circuit, Wire wire)
    {
        var text = $"{End(circuit, wire.From)} to {End(circuit, wire.To)}";
        return wire.Colour is { } colour ? $"{text} {colour.Name}" : text;
    }

    /// <summary>The words for a part: <c>button mute momentary</c>.</summary>
    public static string Words(Circuit circuit, Part part) =>
        $"{part.Kind} {part.Name} {PartWords.Of(circuit, part)}".TrimEnd();

    private static string Words(CircuitComparison circuits, PartChange change) =>
        change.WordsBefore == change.WordsAfter
            ? $"{change.After.Name}: {change.WordsAfter}, other values"
            : $"{change.After.Name}: {change.WordsBefore} → {change.WordsAfter}";

    private static ImmutableArray<string> OfWires(CircuitComparison circuits, WireChangeKind kind) =>
        [
            .. circuits
                .Wires.Where(change => change.Kind == kind)
                .Select(change =>
                    (change.Before, change.After) switch
                    {
                        ({ } was, null) => Words(circuits.Before, was),
                        (null, { } now) => Words(circuits.After, now),
                        ({ } was, { } now) => $"{Words(circuits.Before, was)} → {Words(circuits.After, now)}",
                        _ => "",
                    }
                ),
        ];

    private static string StateOf(Circuit circuit, State state) =>
        StateText.OfStated(circuit, state) is { Length: > 0 } stated ? stated : "every position";

    private static string End(Circuit circuit, int lug) => lug < 0 ? "cut" : circuit.NameOf(lug);
}
