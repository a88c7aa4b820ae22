namespace WireText.Drawing.Layout.Routing;

/// <summary>Routes a lattice from one start or from several, and keeps the result with the best score; of equals the first.</summary>
internal static class RouterStarts
{
    /// <summary>With more wires than this the quick search hurries more.</summary>
    private const int Many = 60;

    public static RoutedLattice Best(Lattice lattice, LayoutEffort effort, SearchBudget budget)
    {
        if (effort == LayoutEffort.Quick)
        {
            return WireRouter.Route(lattice, QuickEffort(lattice.Wiring.Connections.Length), budget);
        }

        RoutedLattice? best = null;
        foreach (var crossing in new[] { RouteCosts.Crossing, RouteCosts.Crossing * 3 / 2 })
        {
            for (var order = 0; order < 3; order++)
            {
                var routed = WireRouter.Route(
                    lattice,
                    new RouterEffort(order, crossing, Haste: 4, ImproveSweeps: 3, ImprovePairs: true),
                    budget
                );
                best = best is null || routed.Score < best.Score ? routed : best;
            }
        }

        return best!;
    }

    private static RouterEffort QuickEffort(int wires) =>
        new(
            0,
            RouteCosts.Crossing,
            Haste: wires > Many ? 12 : 6,
            ImproveSweeps: wires > Many ? 0 : 1,
            ImprovePairs: false
        );
}
