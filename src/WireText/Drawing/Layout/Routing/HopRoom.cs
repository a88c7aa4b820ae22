namespace WireText.Drawing.Layout.Routing;

/// <summary>Crossings at which neither wire could hop, because each has a corner or an end on the next node.</summary>
internal static class HopRoom
{
    /// <summary>Leads wires off such crossings, where another legal way exists.</summary>
    public static void Make(RoutingTable table)
    {
        foreach (var wire in table.Order)
        {
            if (
                table.Routes[wire] is { } old
                && FirstWithout(table.Lattice, table.Congestion, old) is >= 0 and var node
            )
            {
                table.TakeOut(wire);
                var found = table.FindNear(wire, table.Settled with { ClosedNode = node });
                var isBetter = found is not null && FirstWithout(table.Lattice, table.Congestion, found) < 0;
                table.Place(wire, isBetter ? found : old);
            }
        }
    }

    /// <summary>The first node of the route at which it crosses another wire and neither has room, or -1.</summary>
    private static int FirstWithout(Lattice lattice, Congestion congestion, Route route)
    {
        var nodes = route.Nodes;
        for (var i = 1; i + 1 < nodes.Length; i++)
        {
            var step = nodes[i] - nodes[i - 1];
            if (step != nodes[i + 1] - nodes[i])
            {
                continue;
            }

            var isFlat = Math.Abs(step) == 1;
            var isCrossed = (isFlat ? congestion.Nodes[nodes[i]].Vertical : congestion.Nodes[nodes[i]].Horizontal) > 0;
            if (isCrossed && IsCramped(nodes, i) && HasCornerBeside(lattice, congestion, nodes[i], isFlat))
            {
                return nodes[i];
            }
        }

        return -1;
    }

    private static bool IsCramped(int[] nodes, int i)
    {
        var step = nodes[i] - nodes[i - 1];
        var isCornerBefore = i == 1 || nodes[i - 1] - nodes[i - 2] != step;
        var isCornerAfter = i == nodes.Length - 2 || nodes[i + 2] - nodes[i + 1] != step;
        return isCornerBefore || isCornerAfter;
    }

    private static bool HasCornerBeside(Lattice lattice, Congestion congestion, int node, bool isFlat)
    {
        var across = isFlat ? lattice.Width : 1;
        return IsCorner(lattice, congestion, node - across) || IsCorner(lattice, congestion, node + across);
    }

    private static bool IsCorner(Lattice lattice, Congestion congestion, int node) =>
        congestion.Nodes[node].Bends > 0 || lattice.Nodes[node].Zone > lattice.Wiring.Parts.Length;
}
