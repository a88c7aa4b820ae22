using System.Collections.Immutable;

namespace WireText.Geometry;

/// <summary>Lines of straight stretches through points, measured along them in millimetres.</summary>
public static class Polyline
{
    /// <summary>Nearer than this, a point is on a line.</summary>
    private const double Near = 1e-6;

    /// <summary>The stretches from point to point.</summary>
    public static IEnumerable<Segment> Segments(ImmutableArray<Point> path) =>
        path.Skip(1).Select((to, i) => new Segment(path[i], to));

    public static double Length(ReadOnlySpan<Point> path)
    {
        var length = 0.0;
        for (var i = 0; i + 1 < path.Length; i++)
        {
            length += Point.Distance(path[i], path[i + 1]);
        }

        return length;
    }

    /// <summary>The point after so much of a path; its end when it is shorter.</summary>
    public static Point At(ReadOnlySpan<Point> path, double walked)
    {
        for (var i = 0; i + 1 < path.Length; i++)
        {
            var length = Point.Distance(path[i], path[i + 1]);
            if (walked <= length)
            {
                return Point.Between(path[i], path[i + 1], walked / length);
            }

            walked -= length;
        }

        return path[^1];
    }

    /// <summary>How far along a path a point lies on it, whose stretches run along the axes; the length of all when it does not.</summary>
    public static double PositionOf(ReadOnlySpan<Point> path, Point at)
    {
        var walked = 0.0;
        for (var i = 0; i + 1 < path.Length; i++)
        {
            if (Box.Spanning(path[i], path[i + 1]).DistanceTo(at) < Near)
            {
                return walked + Point.Distance(path[i], at);
            }

            walked += Point.Distance(path[i], path[i + 1]);
        }

        return walked;
    }

    /// <summary>The piece of a path from one place along it to another; empty when the second is not past the first.</summary>
    public static ImmutableArray<Point> Piece(ReadOnlySpan<Point> path, double from, double to)
    {
        var points = ImmutableArray.CreateBuilder<Point>();
        var walked = 0.0;
        for (var i = 0; i + 1 < path.Length; i++)
        {
            var length = Point.Distance(path[i], path[i + 1]);
            var (start, end) = (Math.Max(from, walked), Math.Min(to, walked + length));
            if (start < end)
            {
                if (points.Count == 0)
                {
                    points.Add(Point.Between(path[i], path[i + 1], (start - walked) / length));
                }

                points.Add(Point.Between(path[i], path[i + 1], (end - walked) / length));
            }

            walked += length;
        }

        return points.ToImmutable();
    }
}
