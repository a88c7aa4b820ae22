namespace WireText.Drawing.Layout.Routing;

/// <summary>Where a braid can leave the cores that it covers.</summary>
internal static class BraidCores
{
    /// <summary>How far from its end a core comes out of the braid, in lane steps: at least, and at most.</summary>
    private const int Nearest = 2;
    private const int Farthest = 10;

    /// <summary>The nodes of the first routed core on which the braid may break out at one of its ends, nearest to the end first; empty when no core has a path.</summary>
    public static int[] BreakoutsOf(
        Lattice lattice,
        Route?[] routes,
        RouteRequest?[] requests,
        int cable,
        bool isAtStart
    )
    {
        var core = FirstRoutedCore(lattice.Wiring, routes, cable);
        if (core < 0)
        {
            return [];
        }

        var nodes = FromFirstEnd(lattice.Wiring, routes[core]!, requests[core]!, core);
        if (!isAtStart)
        {
            Array.Reverse(nodes);
        }

        // The two ends share a short core: each takes its own half.
        var last = Math.Min(Farthest, (nodes.Length - 1) / 2);
        var found = new List<int>();
        for (var i = Math.Min(Nearest, last); i <= last && i > 0; i++)
        {
            if (nodes[i] - nodes[i - 1] == nodes[i + 1] - nodes[i])
            {
                found.Add(nodes[i]);
            }
        }

        return [.. found];
    }

    /// <summary>The connection of the cable's first core that has a path, or -1.</summary>
    public static int FirstRoutedCore(Wiring wiring, Route?[] routes, int cable)
    {
        foreach (var id in wiring.Cables[cable].Cores)
        {
            var core = wiring.ConnectionOf(id);
            if (core >= 0 && routes[core] is not null)
            {
                return core;
            }
        }

        return -1;
    }

    private static int[] FromFirstEnd(Wiring wiring, Route route, RouteRequest request, int core)
    {
        int[] nodes = [.. route.Nodes];
        if (request.From != wiring.Connections[core].From)
        {
            Array.Reverse(nodes);
        }

        return nodes;
    }
}
