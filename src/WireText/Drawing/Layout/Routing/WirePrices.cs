using System.Runtime.CompilerServices;

namespace WireText.Drawing.Layout.Routing;

/// <summary>What the wire that is routed just now pays for its steps, bends, crossings and ends among the others as they are.</summary>
internal sealed class WirePrices
{
    private const int Impossible = RouteCosts.Impossible;

    // What a wire did at the node before: it decides what bends and crossings cost at the next.
    public const int Nothing = 0;
    public const int Bent = 1;
    public const int Crossed = 2;

    private readonly Lattice lattice;
    private readonly Congestion congestion;
    private readonly ZonePasses passes;
    private readonly LatticeNode[] nodes;
    private readonly NodeUse[] nodeUse;
    private readonly EdgeUse[] edgeUse;
    private readonly byte[] admitted;
    private readonly int[] nearLugCost;
    private readonly int[] stepTo = new int[4];
    private readonly int[] edgeTo = new int[4];
    private readonly int partCount;
    private RouteRequest request = new(0, 0, 0, [], 0);
    private OwnParts own;
    private bool[]? company;
    private int present;
    private int crossingCost;
    private int closedNode;
    private int fromLug;
    private int toLug;

    public WirePrices(Lattice lattice, Congestion congestion)
    {
        (this.lattice, this.congestion) = (lattice, congestion);
        (nodes, nodeUse, edgeUse) = (lattice.Nodes, congestion.Nodes, congestion.Edges);
        passes = new ZonePasses(lattice);
        (admitted, nearLugCost) = (passes.Admitted, passes.NearLugCost);
        partCount = lattice.Wiring.Parts.Length;
        for (var direction = 0; direction < 4; direction++)
        {
            stepTo[direction] = lattice.Step(direction);
            edgeTo[direction] = lattice.EdgeOffset(direction);
        }
    }

    /// <summary>From now on the prices are those of this wire; its own use must have been taken out.</summary>
    public void Begin(RouteRequest wire, in SearchTerms terms)
    {
        request = wire;
        (present, crossingCost, closedNode, company) = (
            terms.Present,
            terms.CrossingCost,
            terms.ClosedNode,
            terms.Company
        );
        fromLug = wire.From >= 0 ? lattice.LugNode[wire.From] : -1;
        toLug = lattice.LugNode[wire.To];
        own = new OwnParts(lattice, wire);
        passes.Admit(wire.To);
        if (wire.From >= 0)
        {
            passes.Admit(wire.From);
        }
    }

    public void End() => passes.Revoke(request);

    /// <summary>What a path of the wire costs; <see cref="RouteCosts.Impossible"/> when some step of it is closed to the wire.</summary>
    public int CostOf(Route route)
    {
        var path = route.Nodes;
        var direction = Lattice.DirectionOf(path[0], path[1]);
        var (before, last) = (Nothing, path.Length - 1);
        var total = Sum(SeedCost(path[0]), FirstStepCost(path[0], direction));
        for (var i = 1; i < last && total != Impossible; i++)
        {
            var next = Lattice.DirectionOf(path[i], path[i + 1]);
            var here = NodeCost(path[i], direction, before, next, out before);
            total = Sum(total, Sum(here, StepCost(path[i], next)));
            direction = next;
        }

        return Sum(total, path[last] == toLug ? ArrivalCost(direction) : LandingCost(path[last]));
    }

    private static int Sum(int one, int other) => one == Impossible || other == Impossible ? Impossible : one + other;

    /// <summary>What it costs to begin at a node.</summary>
    public int SeedCost(int node) => fromLug >= 0 || request.From < 0 ? 0 : LandingCost(node);

    public int FirstStepCost(int node, int direction)
    {
        var step = StepCost(node, direction);
        return step != Impossible && fromLug >= 0 ? step + ExitCost(request.From, direction) : step;
    }

    /// <summary>What it costs to come to the last lug in a direction.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public int ArrivalCost(int direction) => ExitCost(request.To, (direction + 2) & 3);

    /// <summary>What a joint on a node of a surface costs.</summary>
    public int LandingCost(int node)
    {
        var users = congestion.UsersOf(node);
        if (users > 0 && present == SearchTerms.Hard)
        {
            return Impossible;
        }

        return (congestion.JointsNear(node) * RouteCosts.CloseLanding)
            + (users * present)
            + (present == SearchTerms.Hard ? 0 : nodeUse[node].History);
    }

    /// <summary>The price of the edge that leaves a node and of the node it leads to; <see cref="Impossible"/> when it is closed.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public int StepCost(int node, int direction)
    {
        var to = node + stepTo[direction];
        ref readonly var next = ref nodes[to];
        if ((next.Access & admitted[next.Zone]) == 0 || to == closedNode)
        {
            return Impossible;
        }

        ref readonly var here = ref nodes[node];
        var isEdge = here.Zone != next.Zone;
        if ((isEdge || here.IsInside != next.IsInside) && own.IsTurningBack(here, next, node, to))
        {
            return Impossible;
        }

        var edge = (2 * node) + edgeTo[direction];
        var isStub = node == fromLug || to == toLug;
        var owner = nodes[edge >> 1].EdgeLug((edge & 1) == 0);
        if (owner != 0 && owner != request.From + 1 && owner != request.To + 1 && !isStub)
        {
            return Impossible;
        }

        var cost = next.StepCost + nearLugCost[next.NearLug];
        cost += company is { } beside && !beside[to] ? RouteCosts.AwayFromCable : 0;
        cost += isEdge && own.IsOne ? RouteCosts.EdgeOfOwnPart : 0;
        var users = edgeUse[edge].Users;
        if (isStub)
        {
            return cost + (users * RouteCosts.SharedStub);
        }

        if (present == SearchTerms.Hard)
        {
            return users > 0 ? Impossible : cost;
        }

        return cost + (users * present) + edgeUse[edge].History;
    }

    /// <summary>The price of going straight or bending at a node between two steps.</summary>
    /// <param name="before">What the wire did one node before.</param>
    /// <param name="did">What it does here.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public int NodeCost(int node, int direction, int before, int next, out int did)
    {
        var cost = 0;
        int users;
        ref readonly var use = ref nodeUse[node];
        if (next == direction)
        {
            var across = (direction & 1) == 0 ? use.Vertical : use.Horizontal;
            users = use.Bends;
            did = across > 0 ? Crossed : Nothing;
            cost = across * crossingCost;
            var isBesideLug = node - stepTo[direction] == fromLug || node + stepTo[next] == toLug;
            if (across > 0 && (before == Bent || isBesideLug))
            {
                cost += RouteCosts.CrampedCrossing + CornerAcross(node, direction);
                cost += isBesideLug ? RouteCosts.CrossingBesideLug : 0;
            }
        }
        else
        {
            users = use.Users;
            did = Bent;
            cost = RouteCosts.Bend;
            if (before == Bent)
            {
                cost += RouteCosts.Jog;
            }
            else if (before == Crossed)
            {
                cost += RouteCosts.CrampedCrossing + CornerAcross(node - stepTo[direction], direction);
            }
        }

        if (users > 0)
        {
            users -= StubMates(node, direction, next, users);
        }

        if (present == SearchTerms.Hard)
        {
            return users > 0 ? Impossible : cost;
        }

        return cost + (users * present) + use.History;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private int ExitCost(int terminal, int direction) =>
        (lattice.ExitMask[terminal] & (1 << direction)) != 0 ? 0 : RouteCosts.UnnaturalExit;

    /// <summary>What it costs more when the crossed wire has a corner or an end beside the crossing too: then neither has room to hop.</summary>
    private int CornerAcross(int node, int direction)
    {
        var across = stepTo[(direction + 1) & 3];
        var (left, right) = (node - across, node + across);
        var isCramped =
            (nodeUse[left].Bends | nodeUse[right].Bends) > 0
            || Math.Max(nodes[left].Zone, nodes[right].Zone) > partCount;
        return isCramped ? RouteCosts.NoRoomToHop : 0;
    }

    /// <summary>How many of the users of a node beside one of the wire's own lugs come from that lug too: they fan out from there.</summary>
    private int StubMates(int node, int direction, int next, int users)
    {
        var mates = 0;
        if (fromLug >= 0 && node - stepTo[direction] == fromLug)
        {
            mates += edgeUse[(2 * fromLug) + edgeTo[direction]].Users;
        }

        if (node + stepTo[next] == toLug)
        {
            mates += edgeUse[(2 * node) + edgeTo[next]].Users;
        }

        return Math.Min(mates, users);
    }
}
