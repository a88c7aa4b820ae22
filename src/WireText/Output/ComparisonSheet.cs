using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Comparing;

namespace WireText.Output;

/// <summary>The words of a comparison.</summary>
internal static class ComparisonSheet
{
    private static readonly ImmutableArray<string> Told = ["heard", "level", "hum", "meter", "peak"];

    /// <summary>What is to be done at the bench, in the order in which it is done; sections without a line are left out.</summary>
    public static IEnumerable<(string Heading, ImmutableArray<ListedChange> Changes)> Sections(
        CircuitComparison circuits
    ) =>
        ChangeList
            .Of(circuits)
            .GroupBy(change => change.Section)
            .Select(section => (ChangeList.HeadingOf(section.Key), section.ToImmutableArray()));

    /// <summary>Positions that have other words.</summary>
    public static IEnumerable<string> Names(CircuitComparison circuits) =>
        circuits.Names.Select(one => $"{one.Control}: {one.Before} → {one.After}");

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

    private static string StateOf(Circuit circuit, State state) =>
        StateText.OfStated(circuit, state) is { Length: > 0 } stated ? stated : "every position";
}
