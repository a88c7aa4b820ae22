namespace WireText.Drawing.Layout.Routing;

/// <summary>
/// The parts that a wire ends on, and how often it may cross their borders: it leaves its first part once and enters its last
/// part once, and not at all when its lug there lies outside. A wire that joins two lugs of a part, or a part with what lies on
/// it, may do as it likes.
/// </summary>
internal readonly struct OwnParts
{
    private readonly int from;
    private readonly int to;
    private readonly int fromLug;
    private readonly int toLug;
    private readonly bool startsInside;
    private readonly bool endsInside;
    private readonly bool isFree;

    public OwnParts(Lattice lattice, RouteRequest request)
    {
        var hasStart = request.From >= 0;
        from = hasStart ? lattice.Wiring.Terminals[request.From].Part : -1;
        to = lattice.Wiring.Terminals[request.To].Part;
        fromLug = hasStart ? lattice.LugNode[request.From] : -1;
        toLug = lattice.LugNode[request.To];
        startsInside = hasStart && lattice.IsInside[request.From];
        endsInside = lattice.IsInside[request.To];
        IsOne = from == to;
        isFree = IsOne || HostOf(lattice, request.From) == to || HostOf(lattice, request.To) == from;
    }

    /// <summary>True when both ends are on one part.</summary>
    public bool IsOne { get; }

    /// <summary>True for a step into the part that the wire has left, or out of the part that it has reached.</summary>
    /// <param name="node">The node that it steps from, which is <paramref name="here"/>.</param>
    /// <param name="ahead">The node that it steps to, which is <paramref name="next"/>.</param>
    public bool IsTurningBack(in LatticeNode here, in LatticeNode next, int node, int ahead)
    {
        if (isFree)
        {
            return false;
        }

        var isEdge = here.Zone != next.Zone;
        if (next.Zone == from + 1)
        {
            return node == fromLug ? next.IsInside && !startsInside : isEdge || next.IsInside;
        }

        if (next.Zone == to + 1 && next.IsInside && !endsInside)
        {
            return true;
        }

        return here.Zone == to + 1 && ahead != toLug && (isEdge || here.IsInside);
    }

    /// <summary>The part on which the part of a terminal lies there, or -2.</summary>
    private static int HostOf(Lattice lattice, int terminal) =>
        terminal >= 0 && lattice.Host[terminal] >= 0 ? lattice.Host[terminal] : -2;
}
