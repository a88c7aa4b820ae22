using System.Collections.Immutable;
using WireText.Circuits;

namespace WireText.Electrical.Faults;

/// <summary>Lugs of one part that a soldering iron could take for each other.</summary>
internal static class NeighbouringLugs
{
    /// <summary>
    /// The lugs beside one on the face of its part: no third lug is nearer to both than they are to each other (relative
    /// neighbourhood: Toussaint 1980). In the order of the part.
    /// </summary>
    public static IEnumerable<int> Of(Circuit circuit, int lug)
    {
        ImmutableArray<Lug> lugs =
        [
            .. circuit
                .PartOf(circuit.Lugs[lug])
                .Lugs.Select(index => circuit.Lugs[index])
                .Where(other => other.Terminal.At is not null),
        ];
        var at = circuit.Lugs[lug];
        return lugs.Where(other =>
                other.Index != lug
                && lugs.All(third => third.Index == lug || third.Index == other.Index || !IsBetween(at, third, other))
            )
            .Select(other => other.Index);
    }

    private static bool IsBetween(Lug one, Lug third, Lug other) =>
        Math.Max(SquaredDistance(one, third), SquaredDistance(third, other)) < SquaredDistance(one, other);

    private static double SquaredDistance(Lug one, Lug other)
    {
        var (a, b) = (one.Terminal.At!.Value, other.Terminal.At!.Value);
        return ((a.X - b.X) * (a.X - b.X)) + ((a.Y - b.Y) * (a.Y - b.Y));
    }
}
