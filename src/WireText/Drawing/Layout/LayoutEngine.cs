using WireText.Drawing.Layout.Finishing;
using WireText.Drawing.Layout.Placement;
using WireText.Drawing.Layout.Routing;

namespace WireText.Drawing.Layout;

/// <summary>Places parts, routes wires and sets labels: from a <see cref="LayoutProblem"/> to finished geometry.</summary>
/// <remarks>The result is a pure function of the problem's content and the effort; the order of its lists does not matter.</remarks>
public static class LayoutEngine
{
    /// <summary>How often channels are widened when wires are left without a path.</summary>
    private const int MostWidenings = 3;

    public static LayoutResult Lay(LayoutProblem problem, LayoutEffort effort)
    {
        ArgumentNullException.ThrowIfNull(problem);
        var wiring = Wiring.Of(problem);
        RoutedLattice? best = null;
        for (var widening = 0; widening <= MostWidenings; widening++)
        {
            var placement = PartPlacer.Place(wiring, problem, effort, widening);
            var labelled = LabelPlacer.Place(placement);
            if (LatticeBuilder.IsTooLarge(labelled))
            {
                return best is null ? LayoutFinisher.WithoutWires(labelled) : LayoutFinisher.Finish(best);
            }

            var routed = RouterStarts.Best(LatticeBuilder.Build(labelled), effort);
            if (best is null || routed.Score < best.Score)
            {
                best = routed;
            }

            if (best.IsComplete || wiring.Parts.All(part => part.GivenAt is not null))
            {
                break;
            }
        }

        return LayoutFinisher.Finish(best!);
    }
}
