namespace WireText.Drawing.Layout.Routing;

/// <summary>Routes a lattice from one start or from several, and keeps the result with the best score; of equals the first.</summary>
internal static class RouterStarts
{
    public static RoutedLattice Best(Lattice lattice, LayoutEffort effort)
    {
        if (effort == LayoutEffort.Quick)
        {
            return WireRouter.Route(
                lattice,
                new RouterEffort(0, RouteCosts.Crossing, Haste: 6, ImproveSweeps: 1, ImprovePairs: false)
            );
        }

        RoutedLattice? best = null;
        foreach (var crossing in new[] { RouteCosts.Crossing, RouteCosts.Crossing * 3 / 2 })
        {
            for (var order = 0; order < 3; order++)
            {
                var routed = WireRouter.Route(
                    lattice,
                    new RouterEffort(order, crossing, Haste: 4, ImproveSweeps: 3, ImprovePairs: true)
                );
                best = best is null || routed.Score < best.Score ? routed : best;
            }
        }

        return best!;
    }
}
