namespace WireText.Electrical.Networks;

/// <summary>The biconnected blocks of a multigraph: two edges share a block when a simple cycle runs through both.</summary>
/// <remarks>
/// Hopcroft and Tarjan, "Algorithm 447: efficient algorithms for graph manipulation", CACM 16 (1973), with the
/// recursion turned into an explicit stack: a chain of ten thousand parts must not end the program.
/// </remarks>
internal static class BiconnectedBlocks
{
    /// <summary>No block: the edge is a self-loop.</summary>
    public const int None = -1;

    /// <summary>Numbers the block of each edge; edges with equal ends get <see cref="None"/>.</summary>
    /// <param name="edges">Pairs of vertices from 0 to <paramref name="vertexCount"/> - 1; parallel edges are allowed.</param>
    public static int[] Label(int vertexCount, ReadOnlySpan<(int A, int B)> edges)
    {
        var (starts, incident) = Incidence(vertexCount, edges);
        var blockOf = new int[edges.Length];
        Array.Fill(blockOf, None);

        var order = new int[vertexCount];
        var low = new int[vertexCount];
        var cursor = new int[vertexCount];
        var enteredBy = new int[vertexCount];
        var path = new int[vertexCount];
        var open = new int[edges.Length];
        var isStacked = new bool[edges.Length];
        var (openCount, visited, blocks) = (0, 0, 0);

        for (var root = 0; root < vertexCount; root++)
        {
            if (order[root] != 0)
            {
                continue;
            }

            var depth = 0;
            path[0] = root;
            enteredBy[root] = -1;
            order[root] = low[root] = ++visited;
            cursor[root] = starts[root];

            while (depth >= 0)
            {
                var vertex = path[depth];
                if (cursor[vertex] < starts[vertex + 1])
                {
                    var edge = incident[cursor[vertex]++];
                    if (isStacked[edge])
                    {
                        continue;
                    }

                    isStacked[edge] = true;
                    open[openCount++] = edge;
                    var other = edges[edge].A == vertex ? edges[edge].B : edges[edge].A;
                    if (order[other] != 0)
                    {
                        low[vertex] = Math.Min(low[vertex], order[other]);
                        continue;
                    }

                    path[++depth] = other;
                    enteredBy[other] = edge;
                    order[other] = low[other] = ++visited;
                    cursor[other] = starts[other];
                    continue;
                }

                depth--;
                if (depth < 0)
                {
                    break;
                }

                var parent = path[depth];
                low[parent] = Math.Min(low[parent], low[vertex]);
                if (low[vertex] >= order[parent])
                {
                    int closed;
                    do
                    {
                        closed = open[--openCount];
                        blockOf[closed] = blocks;
                    } while (closed != enteredBy[vertex]);

                    blocks++;
                }
            }
        }

        return blockOf;
    }

    /// <summary>The edges at each vertex, self-loops left out: those of v lie from <c>Starts[v]</c> to <c>Starts[v + 1]</c>.</summary>
    private static (int[] Starts, int[] Incident) Incidence(int vertexCount, ReadOnlySpan<(int A, int B)> edges)
    {
        var starts = new int[vertexCount + 1];
        foreach (var (a, b) in edges)
        {
            if (a != b)
            {
                starts[a + 1]++;
                starts[b + 1]++;
            }
        }

        for (var v = 0; v < vertexCount; v++)
        {
            starts[v + 1] += starts[v];
        }

        var next = starts.AsSpan(0, vertexCount).ToArray();
        var incident = new int[starts[vertexCount]];
        for (var e = 0; e < edges.Length; e++)
        {
            var (a, b) = edges[e];
            if (a != b)
            {
                incident[next[a]++] = e;
                incident[next[b]++] = e;
            }
        }

        return (starts, incident);
    }
}
