namespace WireText.Electrical.Forms;

/// <summary>An edge of a graph that is being reduced: what it stands for, from its low to its high vertex.</summary>
internal sealed record JoinEdge(int Low, int High, JoinTree Tree)
{
    /// <summary>What it stands for when walked from a vertex to the other.</summary>
    public JoinTree From(int vertex) => vertex == Low ? Tree : Tree.Reversed();

    public int Beside(int vertex) => vertex == Low ? High : Low;
}

/// <summary>Series-parallel reduction between two vertices.</summary>
/// <remarks>
/// Duffin 1965; Valdes, Tarjan and Lawler 1982. Reductions commute, so the flattened tree does not depend on their order.
/// </remarks>
internal static class SeriesParallel
{
    /// <summary>What is left: one edge from low to high when the graph is series-parallel, else the edges of its kernel.</summary>
    public static List<JoinEdge> Reduce(int vertexCount, IEnumerable<JoinEdge> edges, int low, int high)
    {
        var at = new SortedDictionary<int, JoinEdge>[vertexCount];
        for (var vertex = 0; vertex < vertexCount; vertex++)
        {
            at[vertex] = [];
        }

        foreach (var edge in edges)
        {
            Add(at, edge);
        }

        var open = new Queue<int>(Enumerable.Range(0, vertexCount));
        while (open.TryDequeue(out var vertex))
        {
            if (vertex == low || vertex == high || at[vertex].Count is not (1 or 2))
            {
                continue;
            }

            var (first, last) = (at[vertex].First().Value, at[vertex].Last().Value);
            var (a, b) = (first.Beside(vertex), last.Beside(vertex));
            Remove(at, first);
            if (first != last)
            {
                Remove(at, last);
                Add(at, new JoinEdge(a, b, JoinTree.InSeries(first.From(a), last.From(vertex))));
            }

            open.Enqueue(a);
            open.Enqueue(b);
        }

        return
        [
            .. at.SelectMany((edgesAt, vertex) => edgesAt.Values.Where(edge => edge.Low == vertex))
                .Select(edge => edge.Low == high ? new JoinEdge(edge.High, edge.Low, edge.Tree.Reversed()) : edge),
        ];
    }

    private static void Add(SortedDictionary<int, JoinEdge>[] at, JoinEdge edge)
    {
        if (edge.Low == edge.High)
        {
            return;
        }

        if (at[edge.Low].TryGetValue(edge.High, out var other))
        {
            Remove(at, other);
            edge = new JoinEdge(other.Low, other.High, JoinTree.InParallel(other.Tree, edge.From(other.Low)));
        }

        at[edge.Low].Add(edge.High, edge);
        at[edge.High].Add(edge.Low, edge);
    }

    private static void Remove(SortedDictionary<int, JoinEdge>[] at, JoinEdge edge)
    {
        at[edge.Low].Remove(edge.High);
        at[edge.High].Remove(edge.Low);
    }
}
