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

    private readonly Lattice _lattice;
    private readonly Congestion _congestion;
    private readonly LatticeNode[] _nodes;
    private readonly NodeUse[] _use;
    private readonly EdgeUse[] _edges;
    private readonly SearchState[] _states;
    private readonly int[] _targetMark;
    private readonly byte[] _admitted;
    private readonly int[] _nearLugCost;
    private readonly int[] _step = new int[4];
    private readonly int[] _edge = new int[4];
    private readonly StateQueue _waiting = new();
    private readonly List<int> _opened = [];
    private int _search;
    private RouteRequest _request;
    private LatticeBox _window;
    private LatticeBox _targetBox;
    private int _present;
    private int _fromLug;
    private int _toLug;
    private int _fromPart;
    private int _toPart;
    private bool _isOnHost;
    private bool _startsInside;
    private bool _endsInside;
    private int _best;
    private int _bestState;

    public PathSearch(Lattice lattice, Congestion congestion)
    {
        (_lattice, _congestion) = (lattice, congestion);
        (_nodes, _use, _edges) = (lattice.Nodes, congestion.Nodes, congestion.Edges);
        _states = SharedMemory.TakeCleared<SearchState>(12 * lattice.NodeCount);
        _targetMark = SharedMemory.TakeCleared<int>(lattice.NodeCount);
        _admitted = new byte[1 + lattice.Wiring.Parts.Length + lattice.Wiring.Terminals.Length];
        _admitted[0] = ZoneAccess.Free;
        _nearLugCost = new int[1 + lattice.Wiring.Terminals.Length];
        Array.Fill(_nearLugCost, RouteCosts.NearForeignLug);
        _nearLugCost[0] = 0;
        _request = new RouteRequest(0, 0, 0, [], 0);
        for (var direction = 0; direction < 4; direction++)
        {
            _step[direction] = lattice.Step(direction);
            _edge[direction] = lattice.EdgeOffset(direction);
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
        SharedMemory.GiveBack(_states);
        SharedMemory.GiveBack(_targetMark);
    }

    /// <summary>The cheapest path inside the window, or null.</summary>
    /// <param name="present">What each other user of a lane costs, or <see cref="Hard"/>.</param>
    /// <param name="below">Only a path that costs less than this is of use; nothing dearer is looked at.</param>
    public Route? Find(RouteRequest request, LatticeBox window, int present, int below = Impossible)
    {
        Begin(request, present);
        _waiting.Clear();
        _best = below;
        _window = window;
        Seed();
        while (!_waiting.IsEmpty && _waiting.LeastEstimate < _best && !Budget.IsSpent)
        {
            var (cost, state) = _waiting.Pop();
            if (_states[state].Cost == cost)
            {
                Expand(state, cost);
            }
        }

        var route = _bestState < 0 ? null : TraceBack();
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
        (_request, _present) = (request, present);
        _search++;
        (_best, _bestState) = (Impossible, -1);
        _fromLug = request.From >= 0 ? _lattice.LugNode[request.From] : -1;
        _toLug = _lattice.LugNode[request.To];
        _fromPart = request.From >= 0 ? _lattice.Wiring.Terminals[request.From].Part : -1;
        _toPart = _lattice.Wiring.Terminals[request.To].Part;
        _isOnHost = HostOf(request.From) == _toPart || HostOf(request.To) == _fromPart;
        _startsInside = request.From >= 0 && _lattice.IsInside[request.From];
        _endsInside = _lattice.IsInside[request.To];
        _targetBox = _lattice.BoxOf(request.To);
        Admit(request.To);
        if (request.From >= 0)
        {
            Admit(request.From);
        }

        foreach (var landing in _lattice.Landings[request.To])
        {
            _targetMark[landing] = _search;
        }
    }

    /// <summary>The part on which the part of a terminal lies there, or -2.</summary>
    private int HostOf(int terminal) => terminal >= 0 && _lattice.Host[terminal] >= 0 ? _lattice.Host[terminal] : -2;

    private void Admit(int terminal)
    {
        var part = _lattice.Wiring.Terminals[terminal].Part;
        _nearLugCost[terminal + 1] = 0;
        if (_lattice.LugNode[terminal] < 0)
        {
            AdmitTo(1 + part, ZoneAccess.Rim);
            return;
        }

        if (_lattice.IsInner[terminal])
        {
            AdmitTo(1 + part, ZoneAccess.Corridor);
        }

        AdmitTo(1 + _lattice.Wiring.Parts.Length + terminal, ZoneAccess.Free);
        if (_lattice.Host[terminal] >= 0)
        {
            AdmitTo(1 + _lattice.Host[terminal], ZoneAccess.Guest);
        }
    }

    private void AdmitTo(int zone, byte access)
    {
        _admitted[zone] |= access;
        _opened.Add(zone);
    }

    private void Forget()
    {
        foreach (var zone in _opened)
        {
            _admitted[zone] = 0;
        }

        _opened.Clear();
        _nearLugCost[_request.To + 1] = RouteCosts.NearForeignLug;
        if (_request.From >= 0)
        {
            _nearLugCost[_request.From + 1] = RouteCosts.NearForeignLug;
        }
    }

    private void Seed()
    {
        if (_fromLug >= 0)
        {
            SeedAt(_fromLug);
            return;
        }

        foreach (var node in _request.From >= 0 ? _lattice.Landings[_request.From] : _request.Breakouts)
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
                Reach(node + _step[direction], direction, Nothing, seed + step, -1 - node);
            }
        }
    }

    private int SeedCost(int node) => _fromLug >= 0 || _request.From < 0 ? 0 : LandingCost(node);

    private int FirstStepCost(int node, int direction)
    {
        var step = StepCost(node, direction);
        return step != Impossible && _fromLug >= 0 ? step + ExitCost(_request.From, direction) : step;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private int ExitCost(int terminal, int direction) =>
        (_lattice.ExitMask[terminal] & (1 << direction)) != 0 ? 0 : RouteCosts.UnnaturalExit;

    private int LandingCost(int node)
    {
        var users = _congestion.UsersOf(node);
        if (users > 0 && _present == Hard)
        {
            return Impossible;
        }

        return (_congestion.JointsNear(node) * RouteCosts.CloseLanding)
            + (users * _present)
            + (_present == Hard ? 0 : _use[node].History);
    }

    private int EndCost(int node, int direction) =>
        node == _toLug ? ExitCost(_request.To, (direction + 2) & 3) : LandingCost(node);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private bool IsInWindow(int node)
    {
        ref readonly var at = ref _nodes[node];
        return at.X >= _window.X1 && at.X <= _window.X2 && at.Y >= _window.Y1 && at.Y <= _window.Y2;
    }

    private void Expand(int state, int cost)
    {
        Budget.Spend();
        var (node, direction, before) = (state / 12, (state / 3) & 3, state % 3);
        if (node == _toLug)
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
                Reach(node + _step[next], next, did, cost + step + here, state);
            }
        }
    }

    /// <summary>The price of the edge that leaves a node and of the node it leads to; <see cref="Impossible"/> when it is closed.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private int StepCost(int node, int direction)
    {
        var to = node + _step[direction];
        ref readonly var next = ref _nodes[to];
        if ((next.Access & _admitted[next.Zone]) == 0 || to == ClosedNode)
        {
            return Impossible;
        }

        ref readonly var here = ref _nodes[node];
        var isEdge = here.Zone != next.Zone;
        if ((isEdge || here.IsInside != next.IsInside) && IsTurningBack(node, to))
        {
            return Impossible;
        }

        var edge = (2 * node) + _edge[direction];
        var isStub = node == _fromLug || to == _toLug;
        var owner = _nodes[edge >> 1].EdgeLug((edge & 1) == 0);
        if (owner != 0 && owner != _request.From + 1 && owner != _request.To + 1 && !isStub)
        {
            return Impossible;
        }

        var cost = next.StepCost + _nearLugCost[next.NearLug];
        cost += Company is { } company && !company[to] ? RouteCosts.AwayFromCable : 0;
        cost += isEdge && _fromPart == _toPart ? RouteCosts.EdgeOfOwnPart : 0;
        var users = _edges[edge].Users;
        if (isStub)
        {
            return cost + (users * RouteCosts.SharedStub);
        }

        if (_present == Hard)
        {
            return users > 0 ? Impossible : cost;
        }

        return cost + (users * _present) + _edges[edge].History;
    }

    /// <summary>
    /// True for a step into the part that the wire has left, or out of the part that it has reached: a wire leaves its first
    /// part once and enters its last part once, and not at all when its lug there lies outside. One that joins two lugs of a
    /// part, or a part with what lies on it, may do as it likes.
    /// </summary>
    private bool IsTurningBack(int node, int to)
    {
        if (_fromPart == _toPart || _isOnHost)
        {
            return false;
        }

        ref readonly var here = ref _nodes[node];
        ref readonly var next = ref _nodes[to];
        var isEdge = here.Zone != next.Zone;
        if (next.Zone == _fromPart + 1)
        {
            return node == _fromLug ? next.IsInside && !_startsInside : isEdge || next.IsInside;
        }

        if (next.Zone == _toPart + 1 && next.IsInside && !_endsInside)
        {
            return true;
        }

        return here.Zone == _toPart + 1 && to != _toLug && (isEdge || here.IsInside);
    }

    /// <summary>The price of going straight or bending at a node between two steps.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private int NodeCost(int node, int direction, int before, int next, out int did)
    {
        var cost = 0;
        int users;
        ref readonly var use = ref _use[node];
        if (next == direction)
        {
            var across = (direction & 1) == 0 ? use.Vertical : use.Horizontal;
            users = use.Bends;
            did = across > 0 ? Crossed : Nothing;
            cost = across * CrossingCost;
            var isBesideLug = node - _step[direction] == _fromLug || node + _step[next] == _toLug;
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
                cost += RouteCosts.CrampedCrossing + CornerAcross(node - _step[direction], direction);
            }
        }

        if (users > 0)
        {
            users -= StubMates(node, direction, next, users);
        }

        if (_present == Hard)
        {
            return users > 0 ? Impossible : cost;
        }

        return cost + (users * _present) + use.History;
    }

    /// <summary>What it costs more when the crossed wire has a corner or an end beside the crossing too: then neither has room to hop.</summary>
    private int CornerAcross(int node, int direction)
    {
        var across = _step[(direction + 1) & 3];
        var (left, right) = (node - across, node + across);
        var isCramped =
            (_use[left].Bends | _use[right].Bends) > 0
            || Math.Max(_nodes[left].Zone, _nodes[right].Zone) > _lattice.Wiring.Parts.Length;
        return isCramped ? RouteCosts.NoRoomToHop : 0;
    }

    /// <summary>How many of the users of a node beside one of the wire's own lugs come from that lug too: they fan out from there.</summary>
    private int StubMates(int node, int direction, int next, int users)
    {
        var mates = 0;
        if (_fromLug >= 0 && node - _step[direction] == _fromLug)
        {
            mates += _edges[(2 * _fromLug) + _edge[direction]].Users;
        }

        if (node + _step[next] == _toLug)
        {
            mates += _edges[(2 * node) + _edge[next]].Users;
        }

        return Math.Min(mates, users);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private void Reach(int node, int direction, int before, int cost, int from)
    {
        if (node == _toLug)
        {
            Finish(node, direction, before, cost + ExitCost(_request.To, (direction + 2) & 3), from);
            return;
        }

        if (!IsInWindow(node))
        {
            return;
        }

        var plain = ((node << 2) + direction) * 3;
        ref var reached = ref _states[plain + before];
        if (reached.Search == _search && reached.Cost <= cost)
        {
            return;
        }

        // Whoever comes here after nothing special can go on at least as cheaply from here.
        if (_states[plain].Search == _search && _states[plain].Cost <= cost)
        {
            return;
        }

        reached = new SearchState(_search, cost, from);
        var state = plain + before;
        var ahead = Estimate(node, direction);
        if (cost + ahead >= _best)
        {
            return;
        }

        _waiting.Push(cost + ((ahead * Haste) >> 2), cost, state);
        if (_targetMark[node] == _search)
        {
            var landing = LandingCost(node);
            if (landing != Impossible && cost + landing < _best)
            {
                (_best, _bestState) = (cost + landing, state);
            }
        }
    }

    private void Finish(int node, int direction, int before, int cost, int from)
    {
        if (cost < _best)
        {
            var state = (((node << 2) + direction) * 3) + before;
            _states[state] = new SearchState(_search, cost, from);
            (_best, _bestState) = (cost, state);
        }
    }

    /// <summary>No path to the target is cheaper: its lane steps, and the bends that its direction forces.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private int Estimate(int node, int direction)
    {
        ref readonly var at = ref _nodes[node];
        var dx = Math.Max(0, _targetBox.X1 - at.X) + Math.Min(0, _targetBox.X2 - at.X);
        var dy = Math.Max(0, _targetBox.Y1 - at.Y) + Math.Min(0, _targetBox.Y2 - at.Y);
        var (along, aside) = (direction & 1) == 0 ? (dx, dy) : (dy, dx);
        var ahead = (direction & 2) == 0 ? along : -along;
        var bends = ahead < 0 ? 2 : (aside == 0 ? 0 : 1);
        return (RouteCosts.Step * (Math.Abs(dx) + Math.Abs(dy))) + (RouteCosts.Bend * bends);
    }

    private Route TraceBack()
    {
        var nodes = new List<int>();
        var state = _bestState;
        while (state >= 0)
        {
            nodes.Add(state / 12);
            state = _states[state].From;
        }

        nodes.Add(-1 - state);
        nodes.Reverse();
        var start = _request.From < 0 ? RouteEnd.Breakout : (_fromLug >= 0 ? RouteEnd.Lug : RouteEnd.Landing);
        return new Route([.. nodes], start, _toLug >= 0 ? RouteEnd.Lug : RouteEnd.Landing, _best);
    }
}

/// <summary>How a search came to a state.</summary>
/// <param name="Search">The number of the search that was here last; what it left is stale for any other.</param>
/// <param name="From">The state before, or -1 - node for a start.</param>
internal readonly record struct SearchState(int Search, int Cost, int From);
