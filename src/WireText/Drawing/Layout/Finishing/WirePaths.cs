using WireText.Drawing.Layout.Routing;
using WireText.Geometry;

namespace WireText.Drawing.Layout.Finishing;

/// <summary>Turns lattice routes into corner points in millimetres, from each wire's first end to its other, nudged, with the last stretch to the lug itself.</summary>
internal sealed class WirePaths
{
    private const double Pitch = LayoutScale.Pitch;

    private readonly Lattice lattice;
    private readonly Dictionary<(int, int), int> stubUse = [];
    private readonly HashSet<int> coresTogether;
    private readonly List<Run> allRuns = [];
    private readonly List<(Run, double)> wishes = [];

    private WirePaths(Lattice lattice)
    {
        this.lattice = lattice;
        var together = lattice.Wiring.Cables.Where(cable => cable.BraidId is not null || cable.Cores.Length == 2);
        coresTogether = [.. together.SelectMany(cable => cable.Cores).Select(lattice.Wiring.ConnectionOf)];
    }

    private sealed record Draft(Route Route, RouteRequest Request, Run[] Runs, bool IsReversed);

    /// <summary>By connection, then by braid tail: its corners; empty when it has no route.</summary>
    public static Point[][] Of(RoutedLattice routed)
    {
        var paths = new WirePaths(routed.Lattice);
        var connections = routed.Lattice.Wiring.Connections;
        var all = routed
            .Routes.Select((route, i) => (route, routed.Requests[i], connections[i].From))
            .Concat(routed.Tails.Select(tail => (tail.Route, tail.Request, -1)))
            .ToArray();
        foreach (var (route, _, _) in all)
        {
            paths.CountStubs(route);
        }

        var drafts = all.Select((wire, i) => paths.DraftOf(i, wire.Item1, wire.Item2, wire.Item3)).ToArray();
        Nudger.Nudge(paths.allRuns, paths.wishes, routed.Lattice.Labelled);
        return [.. drafts.Select(draft => draft is null ? [] : paths.PointsOf(draft))];
    }

    private void CountStubs(Route? route)
    {
        if (route is { IsLugAtStart: true })
        {
            CountStub(route.Nodes[0], route.Nodes[1]);
        }

        if (route is { IsLugAtEnd: true } && (route.Nodes.Length > 2 || !route.IsLugAtStart))
        {
            CountStub(route.Nodes[^1], route.Nodes[^2]);
        }
    }

    private void CountStub(int lug, int beside) =>
        stubUse[(lug, beside)] = stubUse.GetValueOrDefault((lug, beside)) + 1;

    private Draft? DraftOf(int wire, Route? route, RouteRequest? request, int from)
    {
        if (route is null || request is null)
        {
            return null;
        }

        var runs = RunsOf(wire, route.Nodes);
        FixFanned(route, runs);
        FixCore(wire, runs);
        WishAtStart(route, request, runs);
        WishAtEnd(route, request, runs);
        allRuns.AddRange(runs);
        return new Draft(route, request, runs, request.From != from);
    }

    private void FixFanned(Route route, Run[] runs)
    {
        if (route.IsLugAtStart && IsFanned(route.Nodes[0], route.Nodes[1]))
        {
            (runs[0].IsFixed, runs[Math.Min(1, runs.Length - 1)].IsFixed) = (true, true);
        }

        if (route.IsLugAtEnd && IsFanned(route.Nodes[^1], route.Nodes[^2]))
        {
            (runs[^1].IsFixed, runs[Math.Max(0, runs.Length - 2)].IsFixed) = (true, true);
        }
    }

    /// <summary>A core stays where its braid's tails meet it, and beside the core that it is twisted with.</summary>
    private void FixCore(int wire, Run[] runs)
    {
        if (coresTogether.Contains(wire))
        {
            foreach (var run in runs)
            {
                run.IsFixed = true;
            }
        }
    }

    private Run[] RunsOf(int wire, int[] nodes)
    {
        var runs = new List<Run>();
        for (var i = 0; i + 1 < nodes.Length; )
        {
            var last = i + 1;
            while (last + 1 < nodes.Length && nodes[last + 1] - nodes[last] == nodes[i + 1] - nodes[i])
            {
                last++;
            }

            var (a, b) = (lattice.OnPage(nodes[i]), lattice.OnPage(nodes[last]));
            var isHorizontal = Math.Abs(nodes[i + 1] - nodes[i]) == 1;
            var run = new Run
            {
                Wire = wire,
                IsHorizontal = isHorizontal,
                Lane = isHorizontal ? a.Y : a.X,
                At = isHorizontal ? a.Y : a.X,
                FixedStart = isHorizontal ? a.X : a.Y,
                FixedEnd = isHorizontal ? b.X : b.Y,
                Before = runs.Count > 0 ? runs[^1] : null,
            };
            if (run.Before is not null)
            {
                run.Before.After = run;
            }

            runs.Add(run);
            i = last;
        }

        return [.. runs];
    }

    private void WishAtStart(Route route, RouteRequest request, Run[] runs)
    {
        if (route.IsLugAtStart && (runs.Length > 1 || !route.IsLugAtEnd || HaveOneLine(request, runs[0])))
        {
            AddWish(runs[0], request.From);
        }
    }

    private void WishAtEnd(Route route, RouteRequest request, Run[] runs)
    {
        if (route.IsLugAtEnd && runs.Length > 1)
        {
            AddWish(runs[^1], request.To);
        }
    }

    private bool HaveOneLine(RouteRequest request, Run run) =>
        Math.Abs(LineOf(run, request.From) - LineOf(run, request.To)) < 1e-6;

    private double LineOf(Run run, int terminal)
    {
        var lug = lattice.Placement.OnPage(terminal);
        return run.IsHorizontal ? lug.Y : lug.X;
    }

    private void AddWish(Run run, int terminal)
    {
        var line = LineOf(run, terminal);
        if (!run.IsFixed && Math.Abs(line - run.At) > 1e-6)
        {
            wishes.Add((run, line));
        }
    }

    private Point[] PointsOf(Draft draft)
    {
        var points = new List<Point> { draft.Runs[0].StartPoint };
        points.AddRange(draft.Runs.Select(run => run.EndPoint));
        if (draft.Route.IsLugAtStart)
        {
            ReachLug(points, draft.Request.From, IsFanned(draft.Route.Nodes[0], draft.Route.Nodes[1]));
        }

        if (draft.Route.IsLugAtEnd)
        {
            points.Reverse();
            ReachLug(points, draft.Request.To, IsFanned(draft.Route.Nodes[^1], draft.Route.Nodes[^2]));
            points.Reverse();
        }

        if (draft.IsReversed)
        {
            points.Reverse();
        }

        return [.. points.Where((point, i) => i == 0 || Point.Distance(point, points[i - 1]) > 1e-6)];
    }

    private bool IsFanned(int lug, int beside) => stubUse[(lug, beside)] > 1;

    /// <summary>Leads the first stretch to the lug itself: straight on when it is on the lug's line, else slanted for its first pitch.</summary>
    private void ReachLug(List<Point> points, int terminal, bool isFanned)
    {
        var lug = lattice.Placement.OnPage(terminal);
        var next = points[1];
        var isShort = Point.Distance(points[0], next) < Pitch + 0.1;
        if (isFanned && isShort && points.Count > 2)
        {
            // Wires that share the last step to a lug fan out to it instead: this one cuts its corner.
            points.RemoveAt(0);
            points[0] = Along(points[0], points[1], Pitch);
            points.Insert(0, lug);
            return;
        }

        var isOnLine = Math.Abs(lug.X - next.X) < 1e-6 || Math.Abs(lug.Y - next.Y) < 1e-6;
        if (!isOnLine && !isShort)
        {
            points.Insert(1, Along(points[0], next, Pitch));
        }

        points[0] = lug;
    }

    /// <summary>The point so far from one towards another, at most the other itself.</summary>
    private static Point Along(Point from, Point to, double distance) =>
        from.Towards(to, Math.Min(distance, Point.Distance(from, to)));
}
