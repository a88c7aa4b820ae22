namespace WireText.Drawing.Layout.Routing;

/// <summary>The paths that a picture takes over from an earlier one, of what both join alike and where they are still legal.</summary>
internal sealed class KeptRoutes
{
    private readonly RoutingTable table;
    private readonly Route?[] routes;
    private readonly List<BraidTail> tails = [];

    private KeptRoutes(RoutingTable table) => (this.table, routes) = (table, new Route?[table.Routes.Length]);

    /// <summary>Puts what is kept into a table that is empty.</summary>
    public static KeptRoutes Place(RoutingTable table, RoutedLattice before)
    {
        var kept = new KeptRoutes(table);
        var paths = new PathsBefore(before);
        foreach (var wire in table.Order)
        {
            var request = table.RequestOf(wire);
            if (
                paths.Take(table.Lattice.Wiring.Connections[wire].Wire) is { } path
                && kept.Moved(path, before.Lattice.Frame) is { } route
                && kept.IsLegal(request, route)
            )
            {
                table.Place(wire, route);
                kept.routes[wire] = route;
            }
        }

        kept.PlaceTails(before);
        return kept;
    }

    /// <summary>True for a wire whose path is not the one that it had.</summary>
    public bool IsAnother(int wire) => !ReferenceEquals(table.Routes[wire], routes[wire]);

    public bool HasAnotherCore(LayoutCable cable) =>
        cable.Cores.Select(table.Lattice.Wiring.ConnectionOf).Any(core => core >= 0 && IsAnother(core));

    /// <summary>An end of a braid that lies where it did; null for one that is to be routed.</summary>
    public BraidTail? TailOf(int cable, bool isAtStart) =>
        tails.Find(tail => tail.Cable == cable && tail.IsAtStart == isAtStart);

    /// <summary>Takes out the ends of braids whose cores have moved since.</summary>
    public void DropLooseTails()
    {
        foreach (var tail in tails.Where(IsLoose))
        {
            table.Congestion.Remove(tail.Route!);
        }

        tails.RemoveAll(IsLoose);
    }

    private bool IsLoose(BraidTail tail) => HasAnotherCore(table.Lattice.Wiring.Cables[tail.Cable]);

    private void PlaceTails(RoutedLattice before)
    {
        var wiring = table.Lattice.Wiring;
        foreach (var tail in before.Tails)
        {
            var old = before.Lattice.Wiring.Cables[tail.Cable];
            var cable = Array.FindIndex(wiring.Cables, one => HasSameEnds(one, old));
            if (cable < 0 || tail.Route is null || !HasAllCores(wiring.Cables[cable]))
            {
                continue;
            }

            var end = wiring.TerminalOf((tail.IsAtStart ? old.BraidFrom : old.BraidTo) ?? "");
            if (end >= 0 && Moved(tail.Route, before.Lattice.Frame) is { } route)
            {
                var request = new RouteRequest(table.Requests.Length + cable, -1, end, [route.Nodes[0]], 0);
                if (IsLegal(request, route))
                {
                    table.Congestion.Add(route);
                    tails.Add(new BraidTail(cable, tail.IsAtStart, route, request));
                }
            }
        }
    }

    private bool HasAllCores(LayoutCable cable) =>
        cable.Cores.Select(table.Lattice.Wiring.ConnectionOf).All(core => core >= 0 && routes[core] is not null);

    private static bool HasSameEnds(LayoutCable one, LayoutCable other) =>
        (one.BraidId, one.BraidFrom, one.BraidTo) == (other.BraidId, other.BraidFrom, other.BraidTo)
        && one.Cores.SequenceEqual(other.Cores);

    /// <summary>The same path over this lattice; null where it leaves it.</summary>
    private Route? Moved(Route route, LatticeFrame from)
    {
        var frame = table.Lattice.Frame;
        if (frame == from)
        {
            return route;
        }

        int[] nodes = [.. route.Nodes.Select(node => frame.NodeAt(node, from))];
        return nodes.Contains(-1) ? null : route with { Nodes = nodes };
    }

    private bool IsLegal(RouteRequest request, Route route) =>
        (request.From < 0 || IsAt(request.From, route.Nodes[0], route.Start))
        && IsAt(request.To, route.Nodes[^1], route.End)
        && table.CostOf(request, route, table.Settled) != RouteCosts.Impossible;

    private bool IsAt(int terminal, int node, RouteEnd end) =>
        end == RouteEnd.Lug ? table.Lattice.LugNode[terminal] == node : table.Lattice.Landings[terminal].Contains(node);

    /// <summary>The paths of the earlier picture by what they join: of several between the same two ends each is taken once.</summary>
    private sealed class PathsBefore(RoutedLattice before)
    {
        private readonly ILookup<(string, string), Route> paths = before
            .Lattice.Wiring.Connections.Zip(before.Routes)
            .Where(wire => wire.Second is not null)
            .ToLookup(wire => (wire.First.Wire.From, wire.First.Wire.To), wire => wire.Second!);

        private readonly Dictionary<(string, string), int> taken = [];

        public Route? Take(LayoutWire wire)
        {
            var ends = (wire.From, wire.To);
            var number = taken.GetValueOrDefault(ends);
            taken[ends] = number + 1;
            return paths[ends].ElementAtOrDefault(number);
        }
    }
}
