using WireText.Geometry;

namespace WireText.Drawing.Layout.Routing;

/// <summary>Gives each lug its node of the lattice, the nodes beside it, and the edges that pass it too closely.</summary>
internal static class LugClaims
{
    private const double Pitch = LayoutScale.Pitch;

    /// <summary>How many nodes from a lug on an edge may still pass it too closely: one pitch away it cannot.</summary>
    private const int Reach = 2;

    /// <returns>By terminal: its node; -1 for a surface.</returns>
    public static int[] Claim(LatticeDraft draft, (int X, int Y)[] lugNodes)
    {
        var nodes = new int[lugNodes.Length];
        for (var t = 0; t < nodes.Length; t++)
        {
            nodes[t] = -1;
            if (!draft.Wiring.Terminals[t].IsSurface)
            {
                nodes[t] = draft.Frame.NodeAt(lugNodes[t]);
                ref var node = ref draft.Nodes[nodes[t]];
                node.Zone = 1 + draft.Wiring.Parts.Length + t;
                node.Access = ZoneAccess.Free;
                node.StepCost = RouteCosts.Step;
            }
        }

        for (var t = 0; t < nodes.Length; t++)
        {
            if (nodes[t] >= 0)
            {
                ClaimNeighbours(draft, t, nodes[t]);
                ClaimEdges(draft, t);
            }
        }

        return nodes;
    }

    private static void ClaimNeighbours(LatticeDraft draft, int terminal, int node)
    {
        for (var direction = 0; direction < 4; direction++)
        {
            draft.Nodes[node + draft.Frame.Step(direction)].NearLug = terminal + 1;
        }
    }

    /// <summary>Keeps edges that pass a lug's true place too closely for that lug's own wires.</summary>
    private static void ClaimEdges(LatticeDraft draft, int terminal)
    {
        var (frame, at) = (draft.Frame, draft.Labelled.Placement.OnPage(terminal));
        var (x0, y0) = ((int)Math.Round(at.X / Pitch) - frame.Left, (int)Math.Round(at.Y / Pitch) - frame.Top);
        for (var y = Math.Max(0, y0 - Reach); y <= Math.Min(frame.Height - 2, y0 + Reach); y++)
        {
            for (var x = Math.Max(0, x0 - Reach); x <= Math.Min(frame.Width - 2, x0 + Reach); x++)
            {
                ref var node = ref draft.Nodes[(y * frame.Width) + x];
                ClaimEdge(ref node.EastEdgeLug, terminal, at, frame.OnPage(x, y), frame.OnPage(x + 1, y));
                ClaimEdge(ref node.SouthEdgeLug, terminal, at, frame.OnPage(x, y), frame.OnPage(x, y + 1));
            }
        }
    }

    private static void ClaimEdge(ref int owner, int terminal, Point lug, Point from, Point to)
    {
        if (Box.Spanning(from, to).DistanceTo(lug) < LayoutScale.LugClearance)
        {
            owner = owner == 0 ? terminal + 1 : -1;
        }
    }
}
