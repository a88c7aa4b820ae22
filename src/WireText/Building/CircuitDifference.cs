using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Comparing;

namespace WireText.Building;

/// <summary>What the iron has to do to make one circuit into another.</summary>
/// <param name="Gone">Wires of the first that come off, in its order.</param>
/// <param name="Added">Wires of the second that are new, in its order.</param>
/// <param name="PartsGone">Parts of the first that come out.</param>
/// <param name="PartsAdded">Parts of the second that are new.</param>
internal sealed record CircuitDifference(
    ImmutableArray<Wire> Gone,
    ImmutableArray<Wire> Added,
    ImmutableArray<Part> PartsGone,
    ImmutableArray<Part> PartsAdded
)
{
    /// <remarks>A part that is replaced takes all wires on it off and on again, though their names stay.</remarks>
    public static CircuitDifference Of(Circuit before, Circuit after)
    {
        var circuits = CircuitComparison.Of(before, after);
        var replaced = circuits.Changed.RemoveAll(change => change.IsLearnt);
        var gone = InOrder(circuits.Dropped.Concat(replaced.Select(change => change.Before)));
        var added = InOrder(circuits.Added.Concat(replaced.Select(change => change.After)));
        return new CircuitDifference(
            WiresOf(before, gone, circuits.Wires.Select(change => change.Before)),
            WiresOf(after, added, circuits.Wires.Select(change => change.After)),
            gone,
            added
        );
    }

    private static ImmutableArray<Part> InOrder(IEnumerable<Part> parts) => [.. parts.OrderBy(part => part.Index)];

    private static ImmutableArray<Wire> WiresOf(Circuit circuit, ImmutableArray<Part> parts, IEnumerable<Wire?> changed)
    {
        var lugs = parts.SelectMany(part => part.Lugs).ToHashSet();
        var wires = changed.OfType<Wire>().Select(wire => wire.Index).ToHashSet();
        return
        [
            .. circuit.Wires.Where(wire =>
                wires.Contains(wire.Index) || lugs.Contains(wire.From) || lugs.Contains(wire.To)
            ),
        ];
    }
}
