using WireText.Circuits;

namespace WireText.Tests.Checks.Mutants;

/// <summary>The lugs that a soldering iron could take for another.</summary>
internal static class LugNeighbours
{
    /// <summary>
    /// Lugs of the same part that come next to it, before or after, in the order in which the part lists them, or that lie
    /// beside it on its face: no third lug is nearer to both than they are to each other (relative neighbourhood: Toussaint
    /// 1980).
    /// </summary>
    public static IEnumerable<int> Of(Circuit circuit, int lug)
    {
        var lugs = circuit.PartOf(circuit.Lugs[lug]).Lugs.RemoveAll(other => circuit.Lugs[other].IsInner);
        return lugs.Where(other =>
            other != lug
            && (
                Math.Abs(lugs.IndexOf(other) - lugs.IndexOf(lug)) == 1
                || lugs.All(third => third == lug || third == other || !IsBetween(circuit, lug, third, other))
            )
        );
    }

    private static bool IsBetween(Circuit circuit, int lug, int third, int other) =>
        Math.Max(Distance(circuit, lug, third), Distance(circuit, third, other)) < Distance(circuit, lug, other);

    private static double Distance(Circuit circuit, int one, int other)
    {
        var (a, b) = (circuit.Lugs[one].Terminal.At!.Value, circuit.Lugs[other].Terminal.At!.Value);
        return Math.Sqrt(((a.X - b.X) * (a.X - b.X)) + ((a.Y - b.Y) * (a.Y - b.Y)));
    }
}
