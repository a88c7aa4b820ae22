namespace WireText.Drawing.Layout.Routing;

/// <summary>Finds which wires cross: one goes straight on through a node from side to side, the other from top to bottom.</summary>
internal static class Crossings
{
    /// <summary>Each pair of wires that cross, with the first node at which they do; in the order of the wires.</summary>
    public static List<(int A, int B, int Node)> Of(RoutingTable table)
    {
        var pairs = new SortedDictionary<(int A, int B), int>();
        var straight = new Dictionary<int, int>();
        foreach (var wire in table.Order.Order())
        {
            foreach (var (node, isHorizontal) in StraightNodes(table.Routes[wire]?.Nodes ?? []))
            {
                var key = (2 * node) + (isHorizontal ? 1 : 0);
                straight.TryAdd(key, wire);
                if (straight.TryGetValue(key ^ 1, out var other) && other != wire)
                {
                    pairs.TryAdd((Math.Min(wire, other), Math.Max(wire, other)), node);
                }
            }
        }

        return [.. pairs.Select(pair => (pair.Key.A, pair.Key.B, pair.Value))];
    }

    private static IEnumerable<(int Node, bool IsHorizontal)> StraightNodes(int[] nodes)
    {
        for (var i = 1; i + 1 < nodes.Length; i++)
        {
            var (before, node, after) = (nodes[i - 1], nodes[i], nodes[i + 1]);
            if (node - before == after - node)
            {
                yield return (node, Math.Abs(node - before) == 1);
            }
        }
    }
}
