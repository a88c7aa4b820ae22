using WireText.Geometry;

namespace WireText.Drawing.Layout.Finishing;

/// <summary>
/// Decides at each crossing which wire goes over: the less important one, of equals the horizontal one. A wire with a corner or
/// an end too near leaves it to the other, and so does one whose hop would meet a corner of the other. When neither has room,
/// the one that would have hopped goes straight over a gap in the other, unless the other is about to end: it should be seen to reach its lug.
/// </summary>
internal static class HopPlacer
{
    /// <summary>How far a wire goes straight on under a hop, in millimetres: the hop's bulge and half a wire.</summary>
    private const double UnderRoom = 1.85;

    /// <summary>A wire with a gap in it as near to its lug as this is not seen to end there, in millimetres: the bared end and half the gap.</summary>
    private const double EndInSight = 4.5;

    /// <returns>By wire: its hops and its gaps, each in the order along the wire.</returns>
    public static (List<Point>[] Hops, List<Point>[] Gaps) Place(Point[][] paths, WireRank[] ranks)
    {
        var hops = paths.Select(_ => new List<Point>()).ToArray();
        var gaps = paths.Select(_ => new List<Point>()).ToArray();
        var stretches = new Stretches(paths);
        foreach (var flat in stretches.All.Where(s => s.IsHorizontal))
        {
            foreach (var upright in stretches.Near(flat.Bounds).Where(s => s.IsVertical && s.Wire != flat.Wire))
            {
                if (CrossingOf(flat, upright) is { } at)
                {
                    Decide(flat, upright, at, paths, ranks, hops, gaps);
                }
            }
        }

        for (var wire = 0; wire < paths.Length; wire++)
        {
            SortAlong(paths[wire], hops[wire]);
            SortAlong(paths[wire], gaps[wire]);
        }

        return (hops, gaps);
    }

    /// <summary>Where two pieces cross, both going through; null when one only touches the other.</summary>
    public static Point? CrossingOf(Stretch flat, Stretch upright)
    {
        const double Through = 1e-6;
        var (wide, tall) = (flat.Bounds, upright.Bounds);
        var (x, y) = (tall.X, wide.Y);
        return x > wide.X + Through && x < wide.Right - Through && y > tall.Y + Through && y < tall.Bottom - Through
            ? new Point(x, y)
            : null;
    }

    private static void Decide(
        Stretch flat,
        Stretch upright,
        Point at,
        Point[][] paths,
        WireRank[] ranks,
        List<Point>[] hops,
        List<Point>[] gaps
    )
    {
        var (first, second) = ranks[upright.Wire] < ranks[flat.Wire] ? (upright, flat) : (flat, upright);
        if (CanHop(first, second, at))
        {
            hops[first.Wire].Add(at);
        }
        else if (CanHop(second, first, at))
        {
            hops[second.Wire].Add(at);
        }
        else
        {
            var left = EndFrom(paths[second.Wire], at);
            var isOther = left < EndInSight && left < EndFrom(paths[first.Wire], at);
            gaps[isOther ? second.Wire : first.Wire].Add(at);
        }
    }

    private static double EndFrom(Point[] path, Point at) =>
        Math.Min(Point.Distance(path[0], at), Point.Distance(path[^1], at));

    /// <summary>The one over has no corner near, and the one under goes straight on past the hop's bulge.</summary>
    private static bool CanHop(Stretch over, Stretch under, Point at) =>
        HasRoom(over, at, LayoutScale.HopRoom) && HasRoom(under, at, UnderRoom);

    private static bool HasRoom(Stretch stretch, Point at, double room) =>
        Point.Distance(stretch.From, at) >= room - 1e-6 && Point.Distance(stretch.To, at) >= room - 1e-6;

    private static void SortAlong(Point[] path, List<Point> points)
    {
        if (points.Count > 1)
        {
            var ordered = points.OrderBy(point => Polyline.PositionOf(path, point)).ToArray();
            points.Clear();
            points.AddRange(ordered);
        }
    }
}
