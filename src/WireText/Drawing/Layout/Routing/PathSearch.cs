using System.Runtime.CompilerServices;

namespace WireText.Drawing.Layout.Routing;

/// <summary>
/// Finds the cheapest path of one wire over the lattice by A*. A state is a node, the direction in which the wire came, and
/// what it did one node before: nothing, a bend, a crossing. The path is a pure function of request, congestion and price.
/// </summary>
/// <remarks>States are marked with the number of the search instead of being cleared, so a search costs what it visits.</remarks>
internal sealed class PathSearch : IDisposable
{
    /// <summary>The price at which a used lane is no lane at all.</summary>
    public const int Hard = -1;

    private const int Nothing = 0;
    private const int Bent = 1;
    private const int Crossed = 2;
    private const int Impossible = int.MaxValue;

    private readonly Lattice lattice;
    private readonly Congestion congestion;
    private readonly LatticeNode[] nodes;
    private readonly NodeUse[] nodeUse;
    private readonly EdgeUse[] edges;
    private readonly SearchState[] states;
    private readonly int[] targetMark;
    private readonly byte[] admitted;
    private readonly int[] nearLugCost;
    private readonly int[] stepTo = new int[4];
    private readonly int[] edgeTo = new int[4];
    private readonly StateQueue waiting = new();
    private readonly List<int> opened = [];
    private int search;
    private RouteRequest request;
    private LatticeBox window;
    private LatticeBox targetBox;
    private int present;
    private int fromLug;
    private int toLug;
    private int fromPart;
    private int toPart;
    private bool isOnHost;
    private bool startsInside;
    private bool endsInside;
    private int best;
    private int bestState;

    public PathSearch(Lattice lattice, Congestion congestion)
    {
        (this.lattice, this.congestion) = (lattice, congestion);
        (nodes, nodeUse, edges) = (lattice.Nodes, congestion.Nodes, congestion.Edges);
        states = SharedMemory.TakeCleared<SearchState>(12 * lattice.NodeCount);
        targetMark = SharedMemory.TakeCleared<int>(lattice.NodeCount);
        admitted = new byte[1 + lattice.Wiring.Parts.Length + lattice.Wiring.Terminals.Length];
        admitted[0] = ZoneAccess.Free;
        nearLugCost = new int[1 + lattice.Wiring.Terminals.Length];
        Array.Fill(nearLugCost, RouteCosts.NearForeignLug);
        nearLugCost[0] = 0;
        request = new RouteRequest(0, 0, 0, [], 0);
        for (var direction = 0; direction < 4; direction++)
        {
            stepTo[direction] = lattice.Step(direction);
            edgeTo[direction] = lattice.EdgeOffset(direction);
        }
    }

    /// <summary>What a perpendicular crossing costs.</summary>
    public int CrossingCost { get; set; } = RouteCosts.Crossing;

    /// <summary>Quarters by which the distance ahead counts: 4 finds the cheapest path, more finds a good one sooner.</summary>
    public int Haste { get; set; } = 4;

    /// <summary>A node that no path may enter; -1 for none.</summary>
    public int ClosedNode { get; set; } = -1;

    /// <summary>The nodes beside the wires that a path should run along; null when it may go where it likes.</summary>
    public bool[]? Company { get; set; }

    /// <summary>Of one routing; each state that is taken up is counted.</summary>
    public required SearchBudget Budget { get; init; }

    public void Dispose()
    {
        SharedMemory.GiveBack(states);
        SharedMemory.GiveBack(targetMark);
    }

    /// <summary>The cheapest path inside the window, or null.</summary>
    /// <param name="present">What each other user of a lane costs, or <see cref="Hard"/>.</param>
    /// <param name="below">Only a path that costs less than this is of use; nothing dearer is looked at.</param>
    public Route? Find(RouteRequest request, LatticeBox window, int present, int below = Impossible)
    {
        Begin(request, present);
        waiting.Clear();
        best = below;
        this.window = window;
        Seed();
        while (!waiting.IsEmpty && waiting.LeastEstimate < best && !Budget.IsSpent)
        {
            var (cost, state) = waiting.Pop();
            if (states[state].Cost == cost)
            {
                Expand(state, cost);
            }
        }

        var route = bestState < 0 ? null : TraceBack();
        Forget();
        return route;
    }

    /// <summary>What a path of this request costs among the other wires as they are; its own use must have been taken out.</summary>
    public int CostOf(RouteRequest request, Route route)
    {
        Begin(request, Hard);
        var nodes = route.Nodes;
        var total = SeedCost(nodes[0]);
        var direction = Lattice.DirectionOf(nodes[0], nodes[1]);
        var (before, last) = (Nothing, nodes.Length - 1);
        total += FirstStepCost(nodes[0], direction);
        for (var i = 1; i < last; i++)
        {
            var next = Lattice.DirectionOf(nodes[i], nodes[i + 1]);
            total += NodeCost(nodes[i], direction, before, next, out before) + StepCost(nodes[i], next);
            direction = next;
        }

        total += EndCost(nodes[last], direction);
        Forget();
        return total;
    }

    private void Begin(RouteRequest request, int present)
    {
        (this.request, this.present) = (request, present);
        search++;
        (best, bestState) = (Impossible, -1);
        fromLug = request.From >= 0 ? lattice.LugNode[request.From] : -1;
        toLug = lattice.LugNode[request.To];
        fromPart = request.From >= 0 ? lattice.Wiring.Terminals[request.From].Part : -1;
        toPart = lattice.Wiring.Terminals[request.To].Part;
        isOnHost = HostOf(request.From) == toPart || HostOf(request.To) == fromPart;
        startsInside = request.From >= 0 && lattice.IsInside[request.From];
        endsInside = lattice.IsInside[request.To];
        targetBox = lattice.BoxOf(request.To);
        Admit(request.To);
        if (request.From >= 0)
        {
            Admit(request.From);
        }

        foreach (var landing in lattice.Landings[request.To])
        {
            targetMark[landing] = search;
        }
    }

    /// <summary>The part on which the part of a terminal lies there, or -2.</summary>
    private int HostOf(int terminal) => terminal >= 0 && lattice.Host[terminal] >= 0 ? lattice.Host[terminal] : -2;

    private void Admit(int terminal)
    {
        var part = lattice.Wiring.Terminals[terminal].Part;
        nearLugCost[terminal + 1] = 0;
        if (lattice.LugNode[terminal] < 0)
        {
            AdmitTo(1 + part, ZoneAccess.Rim);
            return;
        }

        if (lattice.IsInner[terminal])
        {
            AdmitTo(1 + part, ZoneAccess.Corridor);
        }

        AdmitTo(1 + lattice.Wiring.Parts.Length + terminal, ZoneAccess.Free);
        if (lattice.Host[terminal] >= 0)
        {
            AdmitTo(1 + lattice.Host[terminal], ZoneAccess.Guest);
        }
    }

    private void AdmitTo(int zone, byte access)
    {
        admitted[zone] |= access;
        opened.Add(zone);
    }

    private void Forget()
    {
        foreach (var zone in opened)
        {
            admitted[zone] = 0;
        }

        opened.Clear();
        nearLugCost[request.To + 1] = RouteCosts.NearForeignLug;
        if (request.From >= 0)
        {
            nearLugCost[request.From + 1] = RouteCosts.NearForeignLug;
        }
    }

    private void Seed()
    {
        if (fromLug >= 0)
        {
            SeedAt(fromLug);
            return;
        }

        foreach (var node in request.From >= 0 ? lattice.Landings[request.From] : request.Breakouts)
        {
            SeedAt(node);
        }
    }

    private void SeedAt(int node)
    {
        var seed = SeedCost(node);
        if (seed == Impossible || !IsInWindow(node))
        {
            return;
        }

        for (var direction = 0; direction < 4; direction++)
        {
            var step = FirstStepCost(node, direction);
            if (step != Impossible)
            {
                Reach(node + stepTo[direction], direction, Nothing, seed + step, -1 - node);
            }
        }
    }

    private int SeedCost(int node) => fromLug >= 0 || request.From < 0 ? 0 : LandingCost(node);

    private int FirstStepCost(int node, int direction)
    {
        var step = StepCost(node, direction);
        return step != Impossible && fromLug >= 0 ? step + ExitCost(request.From, direction) : step;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private int ExitCost(int terminal, int direction) =>
        (lattice.ExitMask[terminal] & (1 << direction)) != 0 ? 0 : RouteCosts.UnnaturalExit;

    private int LandingCost(int node)
    {
        var users = congestion.UsersOf(node);
        if (users > 0 && present == Hard)
        {
            return Impossible;
        }

        return (congestion.JointsNear(node) * RouteCosts.CloseLanding)
            + (users * present)
            + (present == Hard ? 0 : nodeUse[node].History);
    }

    private int EndCost(int node, int direction) =>
        node == toLug ? ExitCost(request.To, (direction + 2) & 3) : LandingCost(node);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private bool IsInWindow(int node)
    {
        ref readonly var at = ref nodes[node];
        return at.X >= window.X1 && at.X <= window.X2 && at.Y >= window.Y1 && at.Y <= window.Y2;
    }

    private void Expand(int state, int cost)
    {
        Budget.Spend();
        var (node, direction, before) = (state / 12, (state / 3) & 3, state % 3);
        if (node == toLug)
        {
            return;
        }

        for (var turn = -1; turn <= 1; turn++)
        {
            var next = (direction + turn) & 3;
            var step = StepCost(node, next);
            if (step == Impossible)
            {
                continue;
            }

            var here = NodeCost(node, direction, before, next, out var did);
            if (here != Impossible)
            {
                Reach(node + stepTo[next], next, did, cost + step + here, state);
            }
        }
    }

    /// <summary>The price of the edge that leaves a node and of the node it leads to; <see cref="Impossible"/> when it is closed.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private int StepCost(int node, int direction)
    {
        var to = node + stepTo[direction];
        ref readonly var next = ref nodes[to];
        if ((next.Access & admitted[next.Zone]) == 0 || to == ClosedNode)
        {
            return Impossible;
        }

        ref readonly var here = ref nodes[node];
        var isEdge = here.Zone != next.Zone;
        if ((isEdge || here.IsInside != next.IsInside) && IsTurningBack(node, to))
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
        cost += Company is { } company && !company[to] ? RouteCosts.AwayFromCable : 0;
        cost += isEdge && fromPart == toPart ? RouteCosts.EdgeOfOwnPart : 0;
        var users = edges[edge].Users;
        if (isStub)
        {
            return cost + (users * RouteCosts.SharedStub);
        }

        if (present == Hard)
        {
            return users > 0 ? Impossible : cost;
        }

        return cost + (users * present) + edges[edge].History;
    }

    /// <summary>
    /// True for a step into the part that the wire has left, or out of the part that it has reached: a wire leaves its first
    /// part once and enters its last part once, and not at all when its lug there lies outside. One that joins two lugs of a
    /// part, or a part with what lies on it, may do as it likes.
    /// </summary>
    private bool IsTurningBack(int node, int to)
    {
        if (fromPart == toPart || isOnHost)
        {
            return false;
        }

        ref readonly var here = ref nodes[node];
        ref readonly var next = ref nodes[to];
        var isEdge = here.Zone != next.Zone;
        if (next.Zone == fromPart + 1)
        {
            return node == fromLug ? next.IsInside && !startsInside : isEdge || next.IsInside;
        }

        if (next.Zone == toPart + 1 && next.IsInside && !endsInside)
        {
            return true;
        }

        return here.Zone == toPart + 1 && to != toLug && (isEdge || here.IsInside);
    }

    /// <summary>The price of going straight or bending at a node between two steps.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private int NodeCost(int node, int direction, int before, int next, out int did)
    {
        var cost = 0;
        int users;
        ref readonly var use = ref nodeUse[node];
        if (next == direction)
        {
            var across = (direction & 1) == 0 ? use.Vertical : use.Horizontal;
            users = use.Bends;
            did = across > 0 ? Crossed : Nothing;
            cost = across * CrossingCost;
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

        if (present == Hard)
        {
            return users > 0 ? Impossible : cost;
        }

        return cost + (users * present) + use.History;
    }

    /// <summary>What it costs more when the crossed wire has a corner or an end beside the crossing too: then neither has room to hop.</summary>
    private int CornerAcross(int node, int direction)
    {
        var across = stepTo[(direction + 1) & 3];
        var (left, right) = (node - across, node + across);
        var isCramped =
            (nodeUse[left].Bends | nodeUse[right].Bends) > 0
            || Math.Max(nodes[left].Zone, nodes[right].Zone) > lattice.Wiring.Parts.Length;
        return isCramped ? RouteCosts.NoRoomToHop : 0;
    }

    /// <summary>How many of the users of a node beside one of the wire's own lugs come from that lug too: they fan out from there.</summary>
    private int StubMates(int node, int direction, int next, int users)
    {
        var mates = 0;
        if (fromLug >= 0 && node - stepTo[direction] == fromLug)
        {
            mates += edges[(2 * fromLug) + edgeTo[direction]].Users;
        }

        if (node + stepTo[next] == toLug)
        {
            mates += edges[(2 * node) + edgeTo[next]].Users;
        }

        return Math.Min(mates, users);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private void Reach(int node, int direction, int before, int cost, int from)
    {
        if (node == toLug)
        {
            Finish(node, direction, before, cost + ExitCost(request.To, (direction + 2) & 3), from);
            return;
        }

        if (!IsInWindow(node))
        {
            return;
        }

        var plain = ((node << 2) + direction) * 3;
        ref var reached = ref states[plain + before];
        if (reached.Search == search && reached.Cost <= cost)
        {
            return;
        }

        // Whoever comes here after nothing special can go on at least as cheaply from here.
        if (states[plain].Search == search && states[plain].Cost <= cost)
        {
            return;
        }

        reached = new SearchState(search, cost, from);
        var state = plain + before;
        var ahead = Estimate(node, direction);
        if (cost + ahead >= best)
        {
            return;
        }

        waiting.Push(cost + ((ahead * Haste) >> 2), cost, state);
        if (targetMark[node] == search)
        {
            var landing = LandingCost(node);
            if (landing != Impossible && cost + landing < best)
            {
                (best, bestState) = (cost + landing, state);
            }
        }
    }

    private void Finish(int node, int direction, int before, int cost, int from)
    {
        if (cost < best)
        {
            var state = (((node << 2) + direction) * 3) + before;
            states[state] = new SearchState(search, cost, from);
            (best, bestState) = (cost, state);
        }
    }

    /// <summary>No path to the target is cheaper: its lane steps, and the bends that its direction forces.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private int Estimate(int node, int direction)
    {
        ref readonly var at = ref nodes[node];
        var dx = Math.Max(0, targetBox.X1 - at.X) + Math.Min(0, targetBox.X2 - at.X);
        var dy = Math.Max(0, targetBox.Y1 - at.Y) + Math.Min(0, targetBox.Y2 - at.Y);
        var (along, aside) = (direction & 1) == 0 ? (dx, dy) : (dy, dx);
        var ahead = (direction & 2) == 0 ? along : -along;
        var bends = ahead < 0 ? 2 : (aside == 0 ? 0 : 1);
        return (RouteCosts.Step * (Math.Abs(dx) + Math.Abs(dy))) + (RouteCosts.Bend * bends);
    }

    private Route TraceBack()
    {
        var nodes = new List<int>();
        var state = bestState;
        while (state >= 0)
        {
            nodes.Add(state / 12);
            state = states[state].From;
        }

        nodes.Add(-1 - state);
        nodes.Reverse();
        var start = request.From < 0 ? RouteEnd.Breakout : (fromLug >= 0 ? RouteEnd.Lug : RouteEnd.Landing);
        return new Route([.. nodes], start, toLug >= 0 ? RouteEnd.Lug : RouteEnd.Landing, best);
    }
}

/// <summary>How a search came to a state.</summary>
/// <param name="Search">The number of the search that was here last; what it left is stale for any other.</param>
/// <param name="From">The state before, or -1 - node for a start.</param>
internal readonly record struct SearchState(int Search, int Cost, int From);
