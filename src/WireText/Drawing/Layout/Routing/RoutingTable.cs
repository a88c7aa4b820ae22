namespace WireText.Drawing.Layout.Routing;

/// <summary>The wires of one routing, the path that each has just now, and the search that finds it another.</summary>
internal sealed class RoutingTable : IDisposable
{
    private readonly RouterEffort effort;
    private readonly SearchBudget budget;
    private readonly PathSearch search;

    public RoutingTable(Lattice lattice, RouterEffort effort, SearchBudget budget)
    {
        (Lattice, this.effort, this.budget) = (lattice, effort, budget);
        Congestion = new Congestion(lattice);
        search = new PathSearch(lattice, Congestion, budget);
        Requests =
        [
            .. lattice.Wiring.Connections.Select(
                (wire, i) => wire.CanRoute ? RouteRequest.Between(lattice, i, wire.From, wire.To) : null
            ),
        ];
        Routes = new Route?[Requests.Length];
        Order = OrderOf(effort.Order);
    }

    public Lattice Lattice { get; }

    public Congestion Congestion { get; }

    /// <summary>By connection; null for one that cannot be routed at all.</summary>
    public RouteRequest?[] Requests { get; }

    /// <summary>By connection; null for one without a path.</summary>
    public Route?[] Routes { get; }

    /// <summary>The connections that can be routed, in the order in which they are.</summary>
    public int[] Order { get; }

    /// <summary>True when no search will find anything any more.</summary>
    public bool IsSpent => budget.IsSpent;

    /// <summary>The terms on a legal picture: no lane for two.</summary>
    public SearchTerms Settled => new(SearchTerms.Hard, effort.CrossingCost, effort.ImproveHaste);

    /// <summary>The terms while wires still compete.</summary>
    public SearchTerms Competing(int present) => new(present, effort.CrossingCost, effort.Haste);

    public void Dispose()
    {
        search.Dispose();
        Congestion.Dispose();
    }

    public RouteRequest RequestOf(int wire) =>
        Requests[wire] ?? throw new InvalidOperationException("A wire that cannot be routed is in no order.");

    public void Place(int wire, Route? route)
    {
        Routes[wire] = route;
        if (route is not null)
        {
            Congestion.Add(route);
        }
    }

    /// <summary>Takes a wire's path out of the picture; null for a wire without one.</summary>
    public Route? TakeOut(int wire)
    {
        var route = Routes[wire];
        if (route is not null)
        {
            Congestion.Remove(route);
            Routes[wire] = null;
        }

        return route;
    }

    /// <summary>A path for a wire that was taken out, not far from its ends; null when there is none on these terms.</summary>
    public Route? FindNear(int wire, in SearchTerms terms) =>
        search.Find(RequestOf(wire), WindowOf(RequestOf(wire), attempt: 0), terms);

    /// <summary>The same, and farther from its ends.</summary>
    public Route? FindFarther(int wire, in SearchTerms terms) =>
        search.Find(RequestOf(wire), WindowOf(RequestOf(wire), attempt: 1), terms);

    /// <summary>The same near its ends, else farther away, else anywhere.</summary>
    public Route? FindAnywhere(int wire, in SearchTerms terms) => FindAnywhere(RequestOf(wire), terms);

    public Route? FindAnywhere(RouteRequest request, in SearchTerms terms)
    {
        for (var attempt = 0; attempt < 3; attempt++)
        {
            if (search.Find(request, WindowOf(request, attempt), terms) is { } route)
            {
                return route;
            }
        }

        return null;
    }

    /// <summary>What a wire that was taken out would pay for a path.</summary>
    public int CostOf(int wire, Route route, in SearchTerms terms) => CostOf(RequestOf(wire), route, terms);

    /// <summary>The same of a request; <see cref="RouteCosts.Impossible"/> when the path is closed to it.</summary>
    public int CostOf(RouteRequest request, Route route, in SearchTerms terms) => search.CostOf(request, route, terms);

    /// <summary>What a wire pays for the path that it has.</summary>
    public int CostInPlace(int wire, Route route, in SearchTerms terms)
    {
        Congestion.Remove(route);
        var cost = CostOf(wire, route, terms);
        Congestion.Add(route);
        return cost;
    }

    private int[] OrderOf(int kind)
    {
        var routable = Enumerable.Range(0, Requests.Length).Where(wire => Requests[wire] is not null);
        return kind switch
        {
            1 => [.. routable.OrderByDescending(wire => RequestOf(wire).LowerBound).ThenBy(wire => wire)],
            2 => [.. routable],
            _ => [.. routable.OrderBy(wire => RequestOf(wire).LowerBound).ThenBy(wire => wire)],
        };
    }

    private LatticeBox WindowOf(RouteRequest request, int attempt)
    {
        var to = Lattice.BoxOf(request.To);
        var box = to.Union(request.From >= 0 ? Lattice.BoxOf(request.From) : Lattice.BoxAround(request.Breakouts));
        var reach = 12 + ((box.X2 - box.X1 + box.Y2 - box.Y1) / effort.Haste);
        return box.Grown(attempt > 1 ? 1_000_000 : reach * (1 + (3 * attempt)), Lattice.Width, Lattice.Height);
    }
}
