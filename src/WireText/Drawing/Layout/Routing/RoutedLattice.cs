using System.Collections.Immutable;

namespace WireText.Drawing.Layout.Routing;

/// <summary>A path over the lattice for each connection that has one.</summary>
/// <param name="Routes">By connection; null when no legal path was found.</param>
/// <param name="Requests">By connection; null for one that cannot be routed at all.</param>
/// <param name="Tails">The ends of braids, in the order of cables.</param>
/// <param name="Score">What all wires pay (<see cref="RouteCosts"/>), so a crossing counts twice; a wire without a path counts 100 000.</param>
/// <remarks>No two routes share an edge or bend at one node, so any two only cross at right angles; wires of one lug may share its last edge.</remarks>
internal sealed record RoutedLattice(
    Lattice Lattice,
    Route?[] Routes,
    RouteRequest?[] Requests,
    ImmutableArray<BraidTail> Tails,
    long Score
)
{
    public bool IsComplete =>
        !Routes.Where((route, i) => route is null && Requests[i] is not null).Any()
        && Tails.All(tail => tail.Route is not null);
}

/// <summary>One end of a cable's braid, from a node of the first core to its own lug or surface.</summary>
/// <param name="Cable">The cable's index.</param>
/// <param name="IsAtStart">True at the first end of the cores.</param>
/// <param name="Route">Null when no legal path was found.</param>
internal sealed record BraidTail(int Cable, bool IsAtStart, Route? Route, RouteRequest? Request);
