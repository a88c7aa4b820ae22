using System.Collections.Immutable;
using WireText.Drawing.Lettering;
using WireText.Drawing.Shapes;
using WireText.Geometry;

namespace WireText.Drawing.Pictures;

/// <summary>Turns the corners of a route into a drawn path: rounded corners, and half circles where it hops over another wire.</summary>
public static class WirePath
{
    private const double Near = 1e-6;

    /// <param name="points">The corners of a route, at least one stretch.</param>
    /// <param name="hops">Points on its straight stretches; one too near to an end is left out: there the wire passes over with a gap alone.</param>
    public static WirePathResult Draw(ImmutableArray<Point> points, ImmutableArray<WireHop> hops)
    {
        var corners = WithoutRepeats(points);
        var steps = ImmutableArray.CreateBuilder<PathStep>();
        var gaps = ImmutableArray.CreateBuilder<ImmutableArray<PathStep>>();
        steps.Add(new PathStep.Move(corners[0]));
        var used = 0.0;
        for (var i = 1; i < corners.Length; i++)
        {
            var (from, to) = (corners[i - 1], corners[i]);
            var onStretch = HopsOn(from, to, hops);
            var radius = i + 1 < corners.Length ? RadiusAt(corners, i, hops) : 0;
            AddHops(steps, gaps, from, to, onStretch, used, radius);
            used = radius;
            if (radius > Near)
            {
                steps.Add(new PathStep.Line(to.Towards(from, radius)));
                steps.Add(new PathStep.Turn(to, to.Towards(corners[i + 1], radius)));
            }
            else
            {
                steps.Add(new PathStep.Line(to));
            }
        }

        return new WirePathResult(steps.ToImmutable(), gaps.ToImmutable());
    }

    /// <summary>A drawn path without so much of its two ends; it is cut in its lines and between its turns, and never into a hop.</summary>
    public static ImmutableArray<PathStep> Trimmed(ImmutableArray<PathStep> steps, double start, double end)
    {
        var (first, from) = CutAt(steps, start, 1, 1);
        var (last, to) = CutAt(steps, end, steps.Length - 1, -1);
        return first > last
            ? steps
            : [new PathStep.Move(from), .. steps.Skip(first).Take(last - first), Ending(steps[last], to)];
    }

    /// <summary>The step, from one end of the path on, in which a cut falls, and where it falls.</summary>
    private static (int Step, Point At) CutAt(ImmutableArray<PathStep> steps, double cut, int first, int way)
    {
        var step = first;
        while (true)
        {
            var (near, far) = way > 0 ? (steps[step - 1].To, steps[step].To) : (steps[step].To, steps[step - 1].To);
            var isLine = steps[step] is PathStep.Line;
            var length = Point.Distance(near, far);
            var isLast = way > 0 ? step == steps.Length - 1 : step == 1;
            if (isLine && cut < length)
            {
                return (step, near.Towards(far, cut));
            }

            if (isLast || (!isLine && (steps[step] is not PathStep.Turn || cut < length)))
            {
                return (step, near);
            }

            cut -= length;
            step += way;
        }
    }

    private static PathStep Ending(PathStep step, Point to) => step is PathStep.Line ? new PathStep.Line(to) : step;

    /// <summary>The paper round a wire where it goes over another: on both sides of a straight stretch, on the outer side of a hop.</summary>
    /// <param name="over">One of <see cref="WirePathResult.Gaps"/>.</param>
    /// <param name="wire">The wire's width with its casing.</param>
    public static PathShape Air(ImmutableArray<PathStep> over, double wire, Colour paper)
    {
        if (over is not [PathStep.Move { To: var first }, PathStep.Hop hop])
        {
            return new PathShape("gap", over, Paint.Stroked(paper, wire + (2 * Tokens.Gap)));
        }

        var middle = first.Towards(hop.To, Point.Distance(first, hop.To) / 2);
        var radius = hop.Radius + (Tokens.Gap / 2);
        var arc = new PathStep.Hop(radius, hop.IsClockwise, middle.Towards(hop.To, radius));
        return new PathShape(
            "gap",
            [new PathStep.Move(middle.Towards(first, radius)), arc],
            Paint.Stroked(paper, wire + Tokens.Gap)
        );
    }

    private static ImmutableArray<Point> WithoutRepeats(ImmutableArray<Point> points)
    {
        var kept = ImmutableArray.CreateBuilder<Point>(points.Length);
        foreach (var point in points)
        {
            if (kept.Count == 0 || Point.Distance(kept[^1], point) > Near)
            {
                kept.Add(point);
            }
        }

        return kept.ToImmutable();
    }

    /// <summary>The radius of a corner: half of the shorter leg at most, and never up to a hop.</summary>
    private static double RadiusAt(ImmutableArray<Point> corners, int i, ImmutableArray<WireHop> hops)
    {
        var (before, corner, after) = (corners[i - 1], corners[i], corners[i + 1]);
        var radius = Math.Min(
            Tokens.CornerRadius,
            Math.Min(Point.Distance(before, corner), Point.Distance(corner, after)) / 2
        );
        foreach (var hop in HopsOn(before, corner, hops).Concat(HopsOn(corner, after, hops)))
        {
            radius = Math.Min(radius, Math.Max(0, Point.Distance(hop.At, corner) - Tokens.HopRadius));
        }

        return radius;
    }

    private static ImmutableArray<WireHop> HopsOn(Point from, Point to, ImmutableArray<WireHop> hops) =>
        [.. hops.Where(hop => new Segment(from, to).Contains(hop.At)).OrderBy(hop => Point.Distance(from, hop.At))];

    private static void AddHops(
        ImmutableArray<PathStep>.Builder steps,
        ImmutableArray<ImmutableArray<PathStep>>.Builder gaps,
        Point from,
        Point to,
        ImmutableArray<WireHop> hops,
        double usedAtStart,
        double usedAtEnd
    )
    {
        var length = Point.Distance(from, to);
        var free = usedAtStart;
        foreach (var hop in hops)
        {
            var middle = Point.Distance(from, hop.At);
            var (start, end) = (middle - Tokens.HopRadius, middle + Tokens.HopRadius);
            var (first, last) = (from.Towards(to, start), from.Towards(to, end));
            if (hop.Bulge == HopBulge.None || start < free - Near || end > length - usedAtEnd + Near)
            {
                var (gapStart, gapEnd) = (Math.Max(free, start), Math.Min(length - usedAtEnd, end));
                gaps.Add([
                    new PathStep.Move(from.Towards(to, gapStart)),
                    new PathStep.Line(from.Towards(to, Math.Max(gapStart, gapEnd))),
                ]);
                continue;
            }

            var arc = new PathStep.Hop(Tokens.HopRadius, hop.Bulge == HopBulge.Left, last);
            if (Point.Distance(steps[^1].To, first) > Near)
            {
                steps.Add(new PathStep.Line(first));
            }

            steps.Add(arc);
            gaps.Add([new PathStep.Move(first), arc]);
            free = end;
        }
    }
}

/// <summary>To which side of its direction a wire bulges where it hops.</summary>
public enum HopBulge
{
    Left,
    Right,

    /// <summary>There is no room: the wire goes straight over, with paper on both sides.</summary>
    None,
}

public readonly record struct WireHop(Point At, HopBulge Bulge);

/// <param name="Steps">The whole path.</param>
/// <param name="Gaps">The stretches where it goes over another wire.</param>
public sealed record WirePathResult(ImmutableArray<PathStep> Steps, ImmutableArray<ImmutableArray<PathStep>> Gaps);
