using WireText.Drawing.Layout.Routing;
using WireText.Parts;

namespace WireText.Drawing.Layout.Finishing;

/// <summary>Turns lattice routes into corner points in millimetres, from each wire's first end to its other, with the last stretch to the lug itself.</summary>
internal static class WirePaths
{
    /// <summary>By connection, then by braid tail: its corners; empty when it has no route.</summary>
    public static Point[][] Of(RoutedLattice routed)
    {
        var connections = routed.Lattice.Wiring.Connections;
        var paths = new List<Point[]>();
        for (var i = 0; i < connections.Length; i++)
        {
            paths.Add(PathOf(routed.Lattice, routed.Routes[i], routed.Requests[i], connections[i].From));
        }

        foreach (var tail in routed.Tails)
        {
            paths.Add(PathOf(routed.Lattice, tail.Route, tail.Request, from: -1));
        }

        return [.. paths];
    }

    private static Point[] PathOf(Lattice lattice, Route? route, RouteRequest? request, int from)
    {
        if (route is null || request is null)
        {
            return [];
        }

        var points = new List<Point>();
        for (var i = 0; i < route.Nodes.Length; i++)
        {
            points.Add(lattice.OnPage(route.Nodes[i]));
        }

        if (route.IsLugAtStart)
        {
            points[0] = lattice.Placement.OnPage(request.From);
        }

        if (route.IsLugAtEnd)
        {
            points[^1] = lattice.Placement.OnPage(request.To);
        }

        if (request.From != from)
        {
            points.Reverse();
        }

        return [.. Corners(points)];
    }

    private static List<Point> Corners(List<Point> points)
    {
        var corners = new List<Point>();
        foreach (var point in points)
        {
            if (corners.Count >= 2 && IsBetween(corners[^2], corners[^1], point))
            {
                corners[^1] = point;
            }
            else
            {
                corners.Add(point);
            }
        }

        return corners;
    }

    private static bool IsBetween(Point a, Point middle, Point b) =>
        (Math.Abs(a.X - middle.X) < 1e-9 && Math.Abs(middle.X - b.X) < 1e-9)
        || (Math.Abs(a.Y - middle.Y) < 1e-9 && Math.Abs(middle.Y - b.Y) < 1e-9);
}
