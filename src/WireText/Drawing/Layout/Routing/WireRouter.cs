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

/// <summary>How much work the router does.</summary>
/// <param name="Haste">See <see cref="PathSearch.Haste"/>; for the first way of each wire, and while wires compete.</param>
/// <param name="ImproveHaste">The same for gains on a legal picture.</param>
/// <param name="Negotiation">How the wires compete for lanes.</param>
/// <param name="ImproveSweeps">Times that each wire is taken out and routed anew.</param>
/// <param name="ImprovePairs">Whether pairs that cross are routed anew together.</param>
internal readonly record struct RouterEffort(
    int Order,
    int CrossingCost,
    int Haste,
    int ImproveHaste,
    Negotiation Negotiation,
    int ImproveSweeps,
    bool ImprovePairs
);

/// <summary>How the price of a lane that another wire has rises from round to round.</summary>
/// <param name="FirstPresent">The price at first; never more than <see cref="RouteCosts.MostPresent"/>.</param>
/// <param name="GrowthInFifths">By how many fifths it is multiplied each round.</param>
/// <param name="MostRoundsWithoutGain">After so many rounds without fewer wires in conflict it ends.</param>
internal readonly record struct Negotiation(int FirstPresent, int GrowthInFifths, int MostRoundsWithoutGain)
{
    /// <summary>Wires begin almost free to overlap, so that each shows where it would rather be.</summary>
    public static readonly Negotiation Patient = new(30, 8, 6);

    /// <summary>Wires keep apart from the start: fewer rounds, and a few crossings more.</summary>
    public static readonly Negotiation Brisk = new(120, 12, 3);
}

/// <summary>
/// Routes all wires of a placement: every wire for itself with a price on lanes that others have, then again those in conflict
/// at a rising price until none is (negotiated congestion), then one wire and one crossing pair at a time for strict gains.
/// </summary>
internal sealed class WireRouter : IDisposable
{
    private const int MostRounds = 60;
    private const long UnroutedScore = 100_000;

    private readonly Lattice lattice;
    private readonly Congestion congestion;
    private readonly PathSearch search;
    private readonly RouterEffort effort;
    private readonly RouteRequest?[] requests;
    private readonly Route?[] routes;
    private readonly int[] order;

    private WireRouter(Lattice lattice, RouterEffort effort, SearchBudget budget)
    {
        (this.lattice, this.effort) = (lattice, effort);
        congestion = new Congestion(lattice);
        search = new PathSearch(lattice, congestion)
        {
            CrossingCost = effort.CrossingCost,
            Haste = effort.Haste,
            Budget = budget,
        };
        var connections = lattice.Wiring.Connections;
        requests = new RouteRequest?[connections.Length];
        routes = new Route?[connections.Length];
        for (var i = 0; i < connections.Length; i++)
        {
            if (connections[i].CanRoute)
            {
                requests[i] = RouteRequest.Between(lattice, i, connections[i].From, connections[i].To);
            }
        }

        order = OrderOf(effort.Order);
    }

    public static RoutedLattice Route(Lattice lattice, RouterEffort effort, SearchBudget budget)
    {
        using var router = new WireRouter(lattice, effort, budget);
        router.RouteAll();
        router.Negotiate();
        router.DropConflicts();
        router.search.Haste = effort.ImproveHaste;
        for (var sweep = 0; sweep < effort.ImproveSweeps && router.ImproveSingles(); sweep++) { }

        if (effort.ImprovePairs)
        {
            router.ImprovePairs();
            router.ImproveSingles();
        }

        router.RunCablesTogether();
        router.RetryUnrouted();
        router.MakeRoomForHops();
        var tails = router.RouteTails();
        var score = router.Score() + (UnroutedScore * tails.Count(tail => tail.Route is null));
        return new RoutedLattice(lattice, router.routes, router.requests, tails, score);
    }

    public void Dispose()
    {
        search.Dispose();
        congestion.Dispose();
    }

    private int[] OrderOf(int kind)
    {
        var routable = Enumerable.Range(0, requests.Length).Where(i => requests[i] is not null);
        return kind switch
        {
            1 => [.. routable.OrderByDescending(i => requests[i]!.LowerBound).ThenBy(i => i)],
            2 => [.. routable],
            _ => [.. routable.OrderBy(i => requests[i]!.LowerBound).ThenBy(i => i)],
        };
    }

    private void RouteAll()
    {
        foreach (var wire in order)
        {
            Place(wire, FindInGrowingWindow(wire, effort.Negotiation.FirstPresent));
        }
    }

    private void Place(int wire, Route? route)
    {
        routes[wire] = route;
        if (route is not null)
        {
            congestion.Add(route);
        }
    }

    private Route? TakeOut(int wire)
    {
        var route = routes[wire];
        if (route is not null)
        {
            congestion.Remove(route);
            routes[wire] = null;
        }

        return route;
    }

    private LatticeBox WindowOf(RouteRequest request, int attempt)
    {
        var to = lattice.BoxOf(request.To);
        var box = request.From >= 0 ? to.Union(lattice.BoxOf(request.From)) : to.Union(BoxOf(request.Breakouts));
        var reach = 12 + ((box.X2 - box.X1 + box.Y2 - box.Y1) / effort.Haste);
        return box.Grown(attempt > 1 ? 1_000_000 : reach * (1 + (3 * attempt)), lattice.Width, lattice.Height);
    }

    private LatticeBox BoxOf(int[] nodes)
    {
        var box = new LatticeBox(int.MaxValue, int.MaxValue, int.MinValue, int.MinValue);
        foreach (var node in nodes)
        {
            var (x, y) = (lattice.XOf(node), lattice.YOf(node));
            box = box.Union(new LatticeBox(x, y, x, y));
        }

        return box;
    }

    private Route? FindInGrowingWindow(int wire, int present) => FindInGrowingWindow(requests[wire]!, present);

    private Route? FindInGrowingWindow(RouteRequest request, int present)
    {
        for (var attempt = 0; attempt < 3; attempt++)
        {
            if (search.Find(request, WindowOf(request, attempt), present) is { } route)
            {
                return route;
            }
        }

        return null;
    }

    private void Negotiate()
    {
        var present = effort.Negotiation.FirstPresent;
        var (fewest, sinceFewest) = (int.MaxValue, 0);
        for (var round = 0; round < MostRounds; round++)
        {
            var contested = ConflictsInOrder();
            sinceFewest = contested.Count < fewest ? 0 : sinceFewest + 1;
            fewest = Math.Min(fewest, contested.Count);
            if (
                contested.Count == 0
                || sinceFewest == effort.Negotiation.MostRoundsWithoutGain
                || search.Budget.IsSpent
            )
            {
                return;
            }

            foreach (var wire in contested)
            {
                congestion.Remember(routes[wire]!);
            }

            present = Math.Min(RouteCosts.MostPresent, present * effort.Negotiation.GrowthInFifths / 5);
            foreach (var wire in contested)
            {
                var old = TakeOut(wire);
                Place(wire, FindInGrowingWindow(wire, present) ?? old);
            }
        }
    }

    private List<int> ConflictsInOrder() =>
        [.. order.Where(wire => routes[wire] is { } route && congestion.IsInConflict(route))];

    /// <summary>Takes out wires until the rest is legal, the last in order first, then lets each find a free way if there is one.</summary>
    private void DropConflicts()
    {
        var dropped = new List<int>();
        foreach (var wire in Enumerable.Reverse(order))
        {
            if (routes[wire] is { } route && congestion.IsInConflict(route))
            {
                TakeOut(wire);
                dropped.Add(wire);
            }
        }

        foreach (var wire in dropped)
        {
            Place(wire, FindInGrowingWindow(wire, PathSearch.Hard));
        }
    }

    private void RetryUnrouted()
    {
        foreach (var wire in order.Where(wire => routes[wire] is null))
        {
            Place(wire, FindInGrowingWindow(wire, PathSearch.Hard));
        }
    }

    /// <summary>Routes each wire anew, dearest detour first, and keeps only gains.</summary>
    /// <returns>True when some wire gained.</returns>
    private bool ImproveSingles()
    {
        var hasGained = false;
        var byExcess = order
            .Where(wire => routes[wire] is not null)
            .Select(wire => (Wire: wire, Excess: CurrentCost(wire) - (RouteCosts.Step * requests[wire]!.LowerBound)))
            .OrderByDescending(wire => wire.Excess)
            .ThenBy(wire => wire.Wire)
            .Select(wire => wire.Wire)
            .ToArray();
        foreach (var wire in byExcess)
        {
            var old = TakeOut(wire)!;
            var price = search.CostOf(requests[wire]!, old);
            var found = search.Find(requests[wire]!, WindowOf(requests[wire]!, 0), PathSearch.Hard, price);
            Place(wire, found ?? old);
            hasGained |= found is not null;
        }

        return hasGained;
    }

    /// <summary>Leads the cores of each cable side by side, every core after the first beside those before it; all of a cable's or none.</summary>
    private void RunCablesTogether()
    {
        foreach (var cable in lattice.Wiring.Cables)
        {
            int[] cores =
            [
                .. cable
                    .Cores.Select(lattice.Wiring.ConnectionOf)
                    .Where(core => core >= 0 && routes[core] is not null)
                    .OrderBy(core => requests[core]!.LowerBound),
            ];
            var apart = cores.Skip(1).Select(core => (Core: core, Route: TakeOut(core)!)).ToArray();
            if (!RunTogether(cores))
            {
                foreach (var (core, route) in apart)
                {
                    TakeOut(core);
                    Place(core, route);
                }
            }
        }
    }

    /// <returns>False when one of the cores found no way.</returns>
    private bool RunTogether(int[] cores)
    {
        search.Company = new bool[lattice.NodeCount];
        foreach (var core in cores)
        {
            if (routes[core] is null)
            {
                Place(core, search.Find(requests[core]!, WindowOf(requests[core]!, 1), PathSearch.Hard));
            }

            foreach (var node in routes[core]?.Nodes ?? [])
            {
                MarkBeside(search.Company, node);
            }
        }

        search.Company = null;
        return cores.All(core => routes[core] is not null);
    }

    private void MarkBeside(bool[] company, int node)
    {
        for (var direction = 0; direction < 4; direction++)
        {
            var beside = node + lattice.Step(direction);
            if (beside >= 0 && beside < company.Length)
            {
                company[beside] = true;
            }
        }
    }

    /// <summary>Leads wires off crossings at which neither has room for a hop, where another legal way exists.</summary>
    private void MakeRoomForHops()
    {
        foreach (var wire in order)
        {
            if (routes[wire] is { } old && HopRoom.FirstWithout(lattice, congestion, old) is >= 0 and var node)
            {
                TakeOut(wire);
                search.ClosedNode = node;
                var found = search.Find(requests[wire]!, WindowOf(requests[wire]!, 0), PathSearch.Hard);
                search.ClosedNode = -1;
                var isBetter = found is not null && HopRoom.FirstWithout(lattice, congestion, found) < 0;
                Place(wire, isBetter ? found : old);
            }
        }
    }

    /// <summary>Routes the ends of braids last: they start on a core, so the cores must lie still.</summary>
    private ImmutableArray<BraidTail> RouteTails()
    {
        var tails = ImmutableArray.CreateBuilder<BraidTail>();
        for (var cable = 0; cable < lattice.Wiring.Cables.Length; cable++)
        {
            var (braid, from, to) = (
                lattice.Wiring.Cables[cable].BraidId,
                lattice.Wiring.Cables[cable].BraidFrom,
                lattice.Wiring.Cables[cable].BraidTo
            );
            if (braid is not null && from is not null)
            {
                tails.Add(RouteTail(cable, isAtStart: true, lattice.Wiring.TerminalOf(from)));
            }

            if (braid is not null && to is not null)
            {
                tails.Add(RouteTail(cable, isAtStart: false, lattice.Wiring.TerminalOf(to)));
            }
        }

        return tails.ToImmutable();
    }

    private BraidTail RouteTail(int cable, bool isAtStart, int terminal)
    {
        var breakouts = BraidCores.BreakoutsOf(lattice, routes, requests, cable, isAtStart);
        var free = breakouts.Where(node => congestion.UsersOf(node) == 1).ToArray();
        if (terminal < 0 || free.Length == 0)
        {
            return new BraidTail(cable, isAtStart, Route: null, Request: null);
        }

        var request = new RouteRequest(requests.Length + cable, -1, terminal, free, 0);
        var route = FindInGrowingWindow(request, PathSearch.Hard);
        if (route is not null)
        {
            congestion.Add(route);
        }

        return new BraidTail(cable, isAtStart, route, request);
    }

    private int CurrentCost(int wire)
    {
        var route = TakeOut(wire)!;
        var cost = search.CostOf(requests[wire]!, route);
        Place(wire, route);
        return cost;
    }

    private void ImprovePairs()
    {
        foreach (var (a, b, crossing) in CrossingPairs())
        {
            ImprovePair(a, b, crossing);
        }
    }

    /// <summary>Routes two wires that cross anew, either first, and the first once more without the place where they crossed.</summary>
    private void ImprovePair(int a, int b, int crossing)
    {
        var (oldA, oldB) = (TakeOut(a)!, TakeOut(b)!);
        var alone = search.CostOf(requests[a]!, oldA);
        congestion.Add(oldA);
        var price = alone + search.CostOf(requests[b]!, oldB);
        congestion.Remove(oldA);
        var best = (Cost: price, A: oldA, B: oldB);
        foreach (var (first, second, closed) in new[] { (a, b, -1), (b, a, -1), (a, b, crossing), (b, a, crossing) })
        {
            search.ClosedNode = closed;
            var one = search.Find(requests[first]!, WindowOf(requests[first]!, 0), PathSearch.Hard, best.Cost);
            search.ClosedNode = -1;
            if (one is null)
            {
                continue;
            }

            congestion.Add(one);
            var left = best.Cost - one.Cost;
            var two = search.Find(requests[second]!, WindowOf(requests[second]!, 0), PathSearch.Hard, left);
            congestion.Remove(one);
            if (two is not null)
            {
                best = (one.Cost + two.Cost, first == a ? one : two, first == a ? two : one);
            }
        }

        Place(a, best.A);
        Place(b, best.B);
    }

    /// <summary>Each pair of wires that cross, with the first node at which they do.</summary>
    private List<(int A, int B, int Node)> CrossingPairs()
    {
        var pairs = new SortedDictionary<(int A, int B), int>();
        var straight = new Dictionary<int, int>();
        foreach (var wire in order.Order())
        {
            foreach (var (node, isHorizontal) in StraightNodes(routes[wire]))
            {
                var key = (2 * node) + (isHorizontal ? 1 : 0);
                straight.TryAdd(key, wire);
                if (straight.TryGetValue(key ^ 1, out var other) && other != wire)
                {
                    pairs.TryAdd((Math.Min(wire, other), Math.Max(wire, other)), node);
                }
            }
        }

        return [.. pairs.Select(pair => (pair.Key.A, pair.Key.B, pair.Value))];
    }

    private static IEnumerable<(int Node, bool IsHorizontal)> StraightNodes(Route? route)
    {
        for (var i = 1; route is not null && i + 1 < route.Nodes.Length; i++)
        {
            var (before, node, after) = (route.Nodes[i - 1], route.Nodes[i], route.Nodes[i + 1]);
            if (node - before == after - node)
            {
                yield return (node, Math.Abs(node - before) == 1);
            }
        }
    }

    /// <summary>What all wires pay. Both wires of a crossing pay for it, so it weighs twice against other faults here.</summary>
    private long Score()
    {
        search.CrossingCost = RouteCosts.Crossing;
        long score = 0;
        foreach (var wire in order)
        {
            score += routes[wire] is null ? UnroutedScore : CurrentCost(wire);
        }

        return score;
    }
}
