namespace WireText.Drawing.Layout.Routing;

/// <summary>A wire to route: from a lug, any landing of a surface or any breakout node, to a lug or any landing.</summary>
/// <param name="Key">The place in the canonical order of all requests; it decides ties.</param>
/// <param name="From">The terminal to start at; -1 when it starts at one of <paramref name="Breakouts"/>.</param>
/// <param name="LowerBound">No path has fewer lane steps.</param>
internal sealed record RouteRequest(int Key, int From, int To, int[] Breakouts, int LowerBound)
{
    public static RouteRequest Between(Lattice lattice, int key, int from, int to) =>
        // A lug is the narrower end, so the search starts there.
        lattice.LugNode[from] < 0
        && lattice.LugNode[to] >= 0
            ? new RouteRequest(key, to, from, [], lattice.BoxOf(to).DistanceTo(lattice.BoxOf(from)))
            : new RouteRequest(key, from, to, [], lattice.BoxOf(from).DistanceTo(lattice.BoxOf(to)));
}
