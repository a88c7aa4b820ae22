using System.Runtime.CompilerServices;

namespace WireText.Drawing.Layout.Routing;

/// <summary>
/// Finds the cheapest path of one wire over the lattice by A*. A state is a node, the direction in which the wire came, and
/// what it did one node before: nothing, a bend, a crossing. The path is a pure function of request, congestion and terms.
/// </summary>
/// <remarks>States are marked with the number of the search instead of being cleared, so a search costs what it visits.</remarks>
internal sealed class PathSearch : IDisposable
{
    private const int Impossible = RouteCosts.Impossible;

    private readonly Lattice lattice;
    private readonly SearchBudget budget;
    private readonly WirePrices prices;
    private readonly LatticeNode[] nodes;
    private readonly SearchState[] states;
    private readonly int[] targetMark;
    private readonly int[] stepTo = new int[4];
    private readonly StateQueue waiting = new();
    private int search;
    private RouteRequest request = new(0, 0, 0, [], 0);
    private LatticeBox window;
    private LatticeBox targetBox;
    private int haste;
    private int fromLug;
    private int toLug;
    private int best;
    private int bestState;

    /// <param name="budget">Of one routing; each state that is taken up is counted.</param>
    public PathSearch(Lattice lattice, Congestion congestion, SearchBudget budget)
    {
        (this.lattice, this.budget, nodes) = (lattice, budget, lattice.Nodes);
        prices = new WirePrices(lattice, congestion);
        states = SharedMemory.TakeCleared<SearchState>(12 * lattice.NodeCount);
        targetMark = SharedMemory.TakeCleared<int>(lattice.NodeCount);
        for (var direction = 0; direction < 4; direction++)
        {
            stepTo[direction] = lattice.Step(direction);
        }
    }

    public void Dispose()
    {
        SharedMemory.GiveBack(states);
        SharedMemory.GiveBack(targetMark);
    }

    /// <summary>The cheapest path inside a window, or null.</summary>
    public Route? Find(RouteRequest wire, LatticeBox within, in SearchTerms terms)
    {
        Begin(wire, within, terms);
        Seed();
        while (!waiting.IsEmpty && waiting.LeastEstimate < best && !budget.IsSpent)
        {
            var (cost, state) = waiting.Pop();
            if (states[state].Cost == cost)
            {
                Expand(state, cost);
            }
        }

        prices.End();
        return bestState < 0 ? null : TraceBack();
    }

    /// <summary>What a path of this request costs among the other wires as they are; its own use must have been taken out.</summary>
    public int CostOf(RouteRequest wire, Route route, in SearchTerms terms)
    {
        prices.Begin(wire, terms);
        var cost = prices.CostOf(route);
        prices.End();
        return cost;
    }

    private void Begin(RouteRequest wire, LatticeBox within, in SearchTerms terms)
    {
        prices.Begin(wire, terms);
        (request, window, haste) = (wire, within, terms.Haste);
        search++;
        (best, bestState) = (terms.Below, -1);
        fromLug = wire.From >= 0 ? lattice.LugNode[wire.From] : -1;
        toLug = lattice.LugNode[wire.To];
        targetBox = lattice.BoxOf(wire.To);
        foreach (var landing in lattice.Landings[wire.To])
        {
            targetMark[landing] = search;
        }

        waiting.Clear();
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
        var seed = prices.SeedCost(node);
        if (seed == Impossible || !IsInWindow(node))
        {
            return;
        }

        for (var direction = 0; direction < 4; direction++)
        {
            var step = prices.FirstStepCost(node, direction);
            if (step != Impossible)
            {
                Reach(node + stepTo[direction], direction, WirePrices.Nothing, seed + step, -1 - node);
            }
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private bool IsInWindow(int node)
    {
        ref readonly var at = ref nodes[node];
        return at.X >= window.X1 && at.X <= window.X2 && at.Y >= window.Y1 && at.Y <= window.Y2;
    }

    private void Expand(int state, int cost)
    {
        budget.Spend();
        var (node, direction, before) = (state / 12, (state / 3) & 3, state % 3);
        if (node == toLug)
        {
            return;
        }

        for (var turn = -1; turn <= 1; turn++)
        {
            var next = (direction + turn) & 3;
            var step = prices.StepCost(node, next);
            if (step == Impossible)
            {
                continue;
            }

            var here = prices.NodeCost(node, direction, before, next, out var did);
            if (here != Impossible)
            {
                Reach(node + stepTo[next], next, did, cost + step + here, state);
            }
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private void Reach(int node, int direction, int before, int cost, int from)
    {
        if (node == toLug)
        {
            Finish(node, direction, before, cost + prices.ArrivalCost(direction), from);
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

        waiting.Push(cost + ((ahead * haste) >> 2), cost, state);
        if (targetMark[node] == search)
        {
            var landing = prices.LandingCost(node);
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
        var path = new List<int>();
        var state = bestState;
        while (state >= 0)
        {
            path.Add(state / 12);
            state = states[state].From;
        }

        path.Add(-1 - state);
        path.Reverse();
        var start = request.From < 0 ? RouteEnd.Breakout : (fromLug >= 0 ? RouteEnd.Lug : RouteEnd.Landing);
        return new Route([.. path], start, toLug >= 0 ? RouteEnd.Lug : RouteEnd.Landing, best);
    }

    /// <summary>How a search came to a state.</summary>
    /// <param name="Search">The number of the search that was here last; what it left is stale for any other.</param>
    /// <param name="From">The state before, or -1 - node for a start.</param>
    private readonly record struct SearchState(int Search, int Cost, int From);
}
