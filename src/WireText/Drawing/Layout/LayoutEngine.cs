using WireText.Drawing.Layout.Finishing;
using WireText.Drawing.Layout.Placement;
using WireText.Drawing.Layout.Routing;
using WireText.Geometry;

namespace WireText.Drawing.Layout;

/// <summary>Places parts, routes wires and sets labels: from a <see cref="LayoutProblem"/> to finished geometry.</summary>
/// <remarks>The result is a pure function of the problem's content and the effort; the order of its lists does not matter.</remarks>
public static class LayoutEngine
{
    /// <summary>How often channels are widened when wires are left without a path.</summary>
    internal const int MostWidenings = 3;

    /// <summary>
    /// Up to here full effort and every widening are worth their time. No harness is near it; a larger drawing is laid at
    /// quick effort and widened from the start, once.
    /// </summary>
    public const int MostWiresAtFullEffort = 150;

    /// <summary>
    /// States that one layout takes up at most, at either effort: four times what the densest example takes at full effort, and some
    /// eight seconds of one processor.
    /// </summary>
    public const long MostStates = 50_000_000;

    /// <summary>The layout, with as much work as any may take.</summary>
    /// <param name="effort">Taken as quick above <see cref="MostWiresAtFullEffort"/> wires.</param>
    /// <exception cref="OperationCanceledException">Nobody waits for the layout any more.</exception>
    public static LayoutResult Lay(
        LayoutProblem problem,
        LayoutEffort effort,
        CancellationToken cancellation = default
    ) => Lay(problem, effort, LayoutBounds.Standard, cancellation);

    /// <summary>The layout that so much work gives.</summary>
    /// <param name="effort">Taken as quick above <see cref="MostWiresAtFullEffort"/> wires.</param>
    /// <param name="bounds">Past them the best so far stands, and wires without a path are in <see cref="LayoutResult.Unrouted"/>.</param>
    /// <exception cref="OperationCanceledException">Nobody waits for the layout any more.</exception>
    public static LayoutResult Lay(
        LayoutProblem problem,
        LayoutEffort effort,
        LayoutBounds bounds,
        CancellationToken cancellation = default
    )
    {
        ArgumentNullException.ThrowIfNull(problem);
        ArgumentNullException.ThrowIfNull(bounds);
        var isLarge = problem.Wires.Length > MostWiresAtFullEffort;
        effort = isLarge ? LayoutEffort.Quick : effort;
        var mostWidenings = isLarge ? Math.Min(1, bounds.Widenings) : bounds.Widenings;
        var wiring = Wiring.Of(problem);
        var budget = new LayoutBudget(bounds, cancellation);
        var (start, unwidened) = BestStart(wiring, problem, effort, budget);
        RoutedLattice? best = null;
        for (var widening = isLarge ? 1 : 0; widening <= mostWidenings; widening++)
        {
            var tried = widening == 0 ? unwidened : null;
            var labelled = LabelPlacer.Place(tried ?? PartPlacer.Place(wiring, problem, start, widening, budget));
            if (LatticeBuilder.IsTooLarge(labelled))
            {
                var finished = best is null ? LayoutFinisher.WithoutWires(labelled) : LayoutFinisher.Finish(best);
                return finished with { States = budget.Spent };
            }

            var routed = RouterStarts.Best(LatticeBuilder.Build(labelled, opensAllSides: widening > 0), effort, budget);
            if (best is null || routed.Score < best.Score)
            {
                best = routed;
            }

            // Where every part was given nothing can be widened; opening the parts is all there is to try.
            var isFixed = wiring.Parts.All(part => part.GivenAt is not null);
            if (best.IsComplete || (isFixed && widening == 1) || budget.IsSpent)
            {
                break;
            }
        }

        return LayoutFinisher.Finish(best!) with
        {
            States = budget.Spent,
        };
    }

    /// <summary>
    /// A layout that goes on from an earlier one, for who looks on while a wiring is written: parts that both have stay where they
    /// are, and wires that both have keep their paths where what is new leaves them room. It depends on what was laid before, and is
    /// quick whatever the effort of that was.
    /// </summary>
    /// <param name="before">What was laid out then.</param>
    /// <param name="laid">What it was laid out to.</param>
    /// <returns>A layout of the problem alone, at quick effort, where nothing can be held: with other rows to arrange, and where a wire would have no path.</returns>
    /// <exception cref="OperationCanceledException">Nobody waits for the layout any more.</exception>
    public static LayoutResult Continue(
        LayoutProblem problem,
        LayoutProblem before,
        LayoutResult laid,
        CancellationToken cancellation = default
    )
    {
        ArgumentNullException.ThrowIfNull(problem);
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(laid);
        if (laid.Routed is { } old && LayoutTwins.HaveSameArrangement(before, problem))
        {
            var budget = new LayoutBudget(LayoutBounds.Standard, cancellation);
            var wiring = Wiring.Of(problem);
            var held = HeldPlaces.Of(wiring, old.Lattice.Wiring, laid);
            var labelled = LabelPlacer.Place(PartPlacer.Hold(wiring, problem, held));
            if (!LatticeBuilder.IsTooLarge(labelled))
            {
                var routed = RouterStarts.Continue(LatticeBuilder.Over(labelled, old.Lattice), old, budget);
                if (routed.IsComplete)
                {
                    var finished = LayoutFinisher.Finish(routed);
                    return finished with
                    {
                        Extent = HeldAtTheLeftAndAbove(finished.Extent, laid.Extent),
                        States = budget.Spent,
                    };
                }
            }
        }

        return Lay(problem, LayoutEffort.Quick, cancellation);
    }

    /// <summary>Room that is given up at the left or above would move all the rest on the page.</summary>
    private static Box HeldAtTheLeftAndAbove(Box now, Box before)
    {
        var (x, y) = (Math.Min(now.X, before.X), Math.Min(now.Y, before.Y));
        return new Box(x, y, now.Right - x, now.Bottom - y);
    }

    /// <summary>The layout of a problem whose tags alone differ from those of one that is laid: see <see cref="LayoutTwins.AreButForTheTags"/>.</summary>
    public static LayoutResult Retag(LayoutProblem problem, LayoutResult laid) =>
        LayoutFinisher.Retag(Wiring.Of(problem), laid);

    /// <summary>The start whose places give the best score when all wires are routed quickly, of equals the first; and those places, when they were tried.</summary>
    private static (SlotStart Start, PartPlacement? Unwidened) BestStart(
        Wiring wiring,
        LayoutProblem problem,
        LayoutEffort effort,
        LayoutBudget budget
    )
    {
        var starts = SlotStarts.For(effort);
        if (starts.Length == 1)
        {
            return (starts[0], null);
        }

        var placed = new List<(SlotStart Start, PartPlacement Placement)>();
        foreach (var start in starts)
        {
            var placement = PartPlacer.Place(wiring, problem, start, widening: 0, budget);
            if (!placed.Exists(other => other.Placement.Poses.AsSpan().SequenceEqual(placement.Poses)))
            {
                placed.Add((start, placement));
            }
        }

        return placed.Count == 1 ? placed[0] : placed.MinBy(place => QuickScore(place.Placement, budget));
    }

    private static long QuickScore(PartPlacement placement, LayoutBudget budget)
    {
        var labelled = LabelPlacer.Place(placement);
        return LatticeBuilder.IsTooLarge(labelled)
            ? long.MaxValue
            : RouterStarts.Trial(LatticeBuilder.Build(labelled), budget);
    }
}
