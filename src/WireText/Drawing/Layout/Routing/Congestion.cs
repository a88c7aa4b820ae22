namespace WireText.Drawing.Layout.Routing;

/// <summary>How many wires use each edge and node of the lattice right now, and what was contested before.</summary>
/// <remarks>
/// A picture is legal when each edge has one wire at most and a node where a wire bends or lands has no other wire; then two
/// wires can only cross at right angles. Wires of one lug may share the last edge before it.
/// </remarks>
internal sealed class Congestion(Lattice lattice) : IDisposable
{
    private readonly NodeUse[] nodeUse = SharedMemory.TakeCleared<NodeUse>(lattice.NodeCount);
    private readonly EdgeUse[] edgeUse = SharedMemory.TakeCleared<EdgeUse>(2 * lattice.NodeCount);

    /// <summary>By node; there may be more elements than nodes.</summary>
    public NodeUse[] Nodes => nodeUse;

    /// <summary>By edge; see <see cref="Lattice.EdgeOffset"/>. There may be more elements than edges.</summary>
    public EdgeUse[] Edges => edgeUse;

    public void Dispose()
    {
        SharedMemory.GiveBack(nodeUse);
        SharedMemory.GiveBack(edgeUse);
    }

    public int UsersOf(int node) => nodeUse[node].Users;

    public int EdgeBetween(int a, int b) => (2 * a) + lattice.EdgeOffset(Lattice.DirectionOf(a, b));

    public void Add(Route route) => Count(route, 1);

    public void Remove(Route route) => Count(route, -1);

    /// <summary>The joints beside a landing, on the eight nodes around it and on itself.</summary>
    public int JointsNear(int node)
    {
        var (above, below) = (node - lattice.Width, node + lattice.Width);
        return JointsInRow(above) + JointsInRow(node) + JointsInRow(below);
    }

    private int JointsInRow(int middle) =>
        nodeUse[middle - 1].Landings + nodeUse[middle].Landings + nodeUse[middle + 1].Landings;

    /// <summary>True when some edge or node of the route has another wire on it where it must not.</summary>
    public bool IsInConflict(Route route) => Contested(route, addHistory: 0);

    /// <summary>Raises the lasting price of each contested edge and node of the route.</summary>
    public void Remember(Route route) => Contested(route, RouteCosts.History);

    private void Count(Route route, int by)
    {
        var nodes = route.Nodes;
        for (var i = 0; i + 1 < nodes.Length; i++)
        {
            edgeUse[EdgeBetween(nodes[i], nodes[i + 1])].Users += by;
        }

        for (var i = 1; i + 1 < nodes.Length; i++)
        {
            CountThrough(nodes[i - 1], nodes[i], nodes[i + 1], by);
        }

        CountLanding(nodes[0], route.LandsAtStart, by);
        CountLanding(nodes[^1], route.LandsAtEnd, by);
    }

    private void CountLanding(int node, bool lands, int by)
    {
        if (lands)
        {
            nodeUse[node].Bends += by;
            nodeUse[node].Landings += by;
        }
    }

    private void CountThrough(int before, int node, int after, int by)
    {
        ref var use = ref nodeUse[node];
        if (node - before != after - node)
        {
            use.Bends += by;
        }
        else if (Math.Abs(node - before) == 1)
        {
            use.Horizontal += by;
        }
        else
        {
            use.Vertical += by;
        }
    }

    private bool Contested(Route route, int addHistory)
    {
        var nodes = route.Nodes;
        var found = false;
        for (var i = 0; i + 1 < nodes.Length; i++)
        {
            var edge = EdgeBetween(nodes[i], nodes[i + 1]);
            if (edgeUse[edge].Users > 1 && !IsStub(route, i))
            {
                edgeUse[edge].History += addHistory;
                found = true;
            }
        }

        for (var i = 0; i < nodes.Length; i++)
        {
            if (OthersAt(route, i) > 0)
            {
                nodeUse[nodes[i]].History += addHistory;
                found = true;
            }
        }

        return found;
    }

    /// <summary>True when edge i of the route is its first or last one and ends on a lug.</summary>
    private static bool IsStub(Route route, int i) =>
        (i == 0 && route.IsLugAtStart) || (i == route.Nodes.Length - 2 && route.IsLugAtEnd);

    private int OthersAt(Route route, int i)
    {
        var nodes = route.Nodes;
        var node = nodes[i];
        if (i == 0 || i == nodes.Length - 1)
        {
            var lands = i == 0 ? route.LandsAtStart : route.LandsAtEnd;
            return lands ? UsersOf(node) - 1 : 0;
        }

        var isStraight = node - nodes[i - 1] == nodes[i + 1] - node;
        var others = (isStraight ? nodeUse[node].Bends : UsersOf(node) - 1);
        return others - StubMatesAt(route, i, isStraight);
    }

    /// <summary>How many wires of the same lug stand at the node beside it, where they may: they fan out from there.</summary>
    private int StubMatesAt(Route route, int i, bool isStraight)
    {
        var nodes = route.Nodes;
        var mates = 0;
        if (i == 1 && route.IsLugAtStart)
        {
            mates += MatesOver(nodes[0], nodes[1], isStraight);
        }

        if (i == nodes.Length - 2 && route.IsLugAtEnd)
        {
            mates += MatesOver(nodes[^1], nodes[^2], isStraight);
        }

        return mates;
    }

    private int MatesOver(int lug, int node, bool isStraight)
    {
        var mates = edgeUse[EdgeBetween(lug, node)].Users - 1;
        return isStraight ? Math.Min(mates, nodeUse[node].Bends) : mates;
    }
}

/// <summary>The wires at one node of the lattice.</summary>
internal struct NodeUse
{
    /// <summary>Wires straight through, east to west.</summary>
    public int Horizontal;

    /// <summary>Wires straight through, north to south.</summary>
    public int Vertical;

    /// <summary>Wires that bend or land here.</summary>
    public int Bends;

    /// <summary>Wires that land here.</summary>
    public int Landings;

    /// <summary>The lasting price of a node that was contested.</summary>
    public int History;

    public readonly int Users => Horizontal + Vertical + Bends;
}

/// <summary>The wires on one edge of the lattice.</summary>
internal struct EdgeUse
{
    public int Users;

    /// <summary>The lasting price of an edge that was contested.</summary>
    public int History;
}
