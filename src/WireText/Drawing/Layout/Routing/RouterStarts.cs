namespace WireText.Drawing.Layout.Routing;

/// <summary>Routes a lattice from one start or from several, and keeps the result with the best score; of equals the first.</summary>
internal static class RouterStarts
{
    /// <summary>With more wires than this the quick search takes the first legal picture.</summary>
    private const int Many = 60;

    /// <summary>The price of a crossing for a hasty search: at the usual one it leaves more of them.</summary>
    private const int DearCrossing = RouteCosts.Crossing * 5 / 4;

    /// <remarks>The starts run side by side where there are processors for them; none sees another, so the result is the same.</remarks>
    public static RoutedLattice Best(Lattice lattice, LayoutEffort effort, LayoutBudget budget)
    {
        var starts = StartsFor(effort, lattice, budget.Bounds);
        var routed = new RoutedLattice[starts.Length];
        if (starts.Length == 1)
        {
            return Route(lattice, starts[0], budget, budget.Bounds.QuickStates);
        }

        SearchBudget[] shares = [.. starts.Select(_ => budget.Share(budget.Bounds.FullStartStates, starts.Length))];
        Parallel.For(
            0,
            starts.Length,
            new ParallelOptions { CancellationToken = budget.Cancellation },
            i => routed[i] = WireRouter.Route(lattice, starts[i], shares[i])
        );
        Array.ForEach(shares, budget.Settle);
        return routed.MinBy(one => one.Score)!;
    }

    /// <summary>What a placement is worth when its wires are routed quickly.</summary>
    public static long Trial(Lattice lattice, LayoutBudget budget) =>
        Route(lattice, QuickEffort(lattice, budget.Bounds), budget, budget.Bounds.TrialStates).Score;

    /// <summary>The wires on the paths that an earlier picture gave them, with those it has no path for routed quickly.</summary>
    public static RoutedLattice Continue(Lattice lattice, RoutedLattice before, LayoutBudget budget)
    {
        var share = budget.Share(budget.Bounds.QuickStates);
        var routed = WireRouter.Continue(lattice, before, QuickEffort(lattice, budget.Bounds), share);
        budget.Settle(share);
        return routed;
    }

    private static RoutedLattice Route(Lattice lattice, RouterEffort effort, LayoutBudget budget, long most)
    {
        var share = budget.Share(most);
        var routed = WireRouter.Route(lattice, effort, share);
        budget.Settle(share);
        return routed;
    }

    private static RouterEffort[] StartsFor(LayoutEffort effort, Lattice lattice, LayoutBounds bounds) =>
        effort == LayoutEffort.Quick
            ? [QuickEffort(lattice, bounds)]
            :
            [
                .. from manner in new[]
                {
                    (RouteCosts.Crossing, Negotiation.Brisk),
                    (RouteCosts.Crossing * 3 / 2, Negotiation.Patient),
                }
                from order in new[] { 0, 1, 2 }
                select new RouterEffort(
                    order,
                    manner.Item1,
                    Haste: 4,
                    ImproveHaste: 4,
                    manner.Item2 with
                    {
                        MostRounds = bounds.Rounds,
                    },
                    ImproveSweeps: 3,
                    ImprovePairs: true
                ),
            ];

    private static RouterEffort QuickEffort(Lattice lattice, LayoutBounds bounds)
    {
        var areMany = lattice.Wiring.Connections.Length > Many;
        return new RouterEffort(
            0,
            areMany ? RouteCosts.Crossing : DearCrossing,
            Haste: areMany ? 12 : 10,
            ImproveHaste: 8,
            Negotiation.Brisk with
            {
                MostRounds = bounds.Rounds,
            },
            ImproveSweeps: areMany ? 0 : 1,
            ImprovePairs: false
        );
    }
}
