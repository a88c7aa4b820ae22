namespace WireText.Drawing.Layout.Routing;

/// <summary>
/// Routes all wires of a placement: they compete for lanes until no two lie on one another, then one wire and one crossing pair
/// at a time is routed anew for strict gains; cables are drawn together and braids led out at the end.
/// </summary>
internal static class WireRouter
{
    /// <summary>What a wire without a path counts: more than any path costs, so that a picture with fewer of them wins.</summary>
    private const long UnroutedScore = 100_000;

    public static RoutedLattice Route(Lattice lattice, RouterEffort effort, SearchBudget budget)
    {
        using var table = new RoutingTable(lattice, effort, budget);
        new LaneNegotiation(table, effort.Negotiation).Run();
        Improve(new RouteGains(table), effort);
        new CableCores(table).RunTogether(lattice.Wiring.Cables);
        return Finish(table, new BraidTails(table, kept: null));
    }

    /// <summary>
    /// The same with the paths of an earlier picture to start from: what it has a legal path for keeps it, and gives way only where
    /// a wire without one needs the room.
    /// </summary>
    public static RoutedLattice Continue(
        Lattice lattice,
        RoutedLattice before,
        RouterEffort effort,
        SearchBudget budget
    )
    {
        using var table = new RoutingTable(lattice, effort, budget);
        var kept = KeptRoutes.Place(table, before);
        new LaneNegotiation(table, effort.Negotiation).Run();
        new RouteGains(table).ImproveSingles(kept.IsAnother);
        new CableCores(table).RunTogether(lattice.Wiring.Cables.Where(kept.HasAnotherCore));
        return Finish(table, new BraidTails(table, kept));
    }

    private static RoutedLattice Finish(RoutingTable table, BraidTails braids)
    {
        RetryUnrouted(table);
        HopRoom.Make(table);
        var tails = braids.Route();
        var score = ScoreOf(table) + (UnroutedScore * tails.Count(tail => tail.Route is null));
        return new RoutedLattice(table.Lattice, table.Routes, table.Requests, tails, score);
    }

    private static void Improve(RouteGains gains, RouterEffort effort)
    {
        for (var sweep = 0; sweep < effort.ImproveSweeps && gains.ImproveSingles(); sweep++) { }

        if (effort.ImprovePairs)
        {
            gains.ImprovePairs();
            gains.ImproveSingles();
        }
    }

    private static void RetryUnrouted(RoutingTable table)
    {
        foreach (var wire in table.Order.Where(wire => table.Routes[wire] is null))
        {
            table.Place(wire, table.FindAnywhere(wire, table.Settled));
        }
    }

    /// <summary>What all wires pay. Both wires of a crossing pay for it, so it weighs twice against other faults here.</summary>
    private static long ScoreOf(RoutingTable table)
    {
        var terms = table.Settled with { CrossingCost = RouteCosts.Crossing };
        long score = 0;
        foreach (var wire in table.Order)
        {
            score += table.Routes[wire] is { } route ? table.CostInPlace(wire, route, terms) : UnroutedScore;
        }

        return score;
    }
}
