namespace WireText.Electrical.Solving;

/// <summary>
/// How a symmetric nodal matrix is factored into L·D·Lᵀ without pivoting: the order of the nodes, where entries appear, and
/// every multiply-add. Made once per network; per frequency only numbers move.
/// </summary>
/// <remarks>
/// Minimum degree, ties by number; the tip goes last, so that a current into the tip needs no forward substitution. Rows
/// and columns are places in that order. Entries 0 to <see cref="Size"/> - 1 are the diagonal, the others lie below it.
/// Without pivoting is safe: every principal part of a passive network with a resistance in each loop is regular.
/// </remarks>
internal sealed class Elimination
{
    /// <summary>Multiply-adds beyond which a network is not solved: seconds per sweep. No guitar comes near. Chosen.</summary>
    internal const int MaxUpdates = 4_000_000;

    private readonly int[] placeOf;
    private readonly Dictionary<(int Row, int Column), int> entryOf = [];

    private Elimination(int size, int[] placeOf)
    {
        Size = size;
        this.placeOf = placeOf;
    }

    /// <summary>The number of unknowns: the nodes but the sleeve.</summary>
    public int Size { get; }

    /// <summary>How many entries there are, diagonal and below.</summary>
    public int EntryCount => Size + Rows.Length;

    /// <summary>The entries of column k below the diagonal lie from <c>Starts[k]</c> to <c>Starts[k + 1]</c>, counted after the diagonal.</summary>
    public int[] Starts { get; private set; } = [];

    /// <summary>The row of each entry below the diagonal.</summary>
    public int[] Rows { get; private set; } = [];

    /// <summary>For each column in turn, for each pair of its entries i ≥ j, the entry that their product is taken from.</summary>
    public int[] Targets { get; private set; } = [];

    /// <summary>The plan for a graph; null when it would take too long.</summary>
    /// <param name="nodeCount">With the sleeve, which is node 0; node 1 is the tip.</param>
    public static Elimination? Plan(int nodeCount, IReadOnlyList<(int A, int B)> edges)
    {
        var neighbours = Neighbours(nodeCount, edges);
        var places = new int[nodeCount];
        places[LiveNetwork.Sleeve] = -1;
        var columns = new List<int[]>();
        var updates = 0L;
        var isDone = new bool[nodeCount];
        for (var place = 0; place < nodeCount - 1; place++)
        {
            var node = Next(neighbours, isDone, isLast: place == nodeCount - 2);
            isDone[node] = true;
            places[node] = place;
            int[] column = [.. neighbours[node]];
            columns.Add(column);
            updates += (long)column.Length * (column.Length + 1) / 2;
            if (updates > MaxUpdates)
            {
                return null;
            }

            JoinInto(neighbours, node, column);
        }

        var plan = new Elimination(nodeCount - 1, places);
        plan.Index(columns);
        return plan;
    }

    /// <summary>Where a node stands in the order.</summary>
    public int PlaceOf(int node) => placeOf[node];

    /// <summary>The entry of two nodes of an edge, neither the sleeve; equal nodes give the diagonal.</summary>
    public int EntryOf(int node, int other)
    {
        var (a, b) = (placeOf[node], placeOf[other]);
        return a == b ? a : entryOf[(Math.Max(a, b), Math.Min(a, b))];
    }

    private static SortedSet<int>[] Neighbours(int nodeCount, IReadOnlyList<(int A, int B)> edges)
    {
        var neighbours = new SortedSet<int>[nodeCount];
        for (var node = 0; node < nodeCount; node++)
        {
            neighbours[node] = [];
        }

        foreach (var (a, b) in edges)
        {
            if (a != b && a != LiveNetwork.Sleeve && b != LiveNetwork.Sleeve)
            {
                neighbours[a].Add(b);
                neighbours[b].Add(a);
            }
        }

        return neighbours;
    }

    private static int Next(SortedSet<int>[] neighbours, bool[] isDone, bool isLast)
    {
        if (isLast)
        {
            return LiveNetwork.Tip;
        }

        var best = -1;
        for (var node = LiveNetwork.Tip + 1; node < neighbours.Length; node++)
        {
            if (!isDone[node] && (best < 0 || neighbours[node].Count < neighbours[best].Count))
            {
                best = node;
            }
        }

        return best;
    }

    private static void JoinInto(SortedSet<int>[] neighbours, int node, int[] column)
    {
        foreach (var a in column)
        {
            neighbours[a].Remove(node);
            foreach (var b in column)
            {
                if (a != b)
                {
                    neighbours[a].Add(b);
                }
            }
        }
    }

    private void Index(List<int[]> columns)
    {
        Starts = new int[Size + 1];
        var rows = new List<int>();
        for (var k = 0; k < Size; k++)
        {
            Starts[k] = rows.Count;
            foreach (var row in columns[k].Select(PlaceOf).Order())
            {
                entryOf.Add((row, k), Size + rows.Count);
                rows.Add(row);
            }
        }

        Starts[Size] = rows.Count;
        Rows = [.. rows];
        var targets = new List<int>();
        for (var k = 0; k < Size; k++)
        {
            for (var i = Starts[k]; i < Starts[k + 1]; i++)
            {
                for (var j = Starts[k]; j <= i; j++)
                {
                    targets.Add(i == j ? Rows[i] : entryOf[(Rows[i], Rows[j])]);
                }
            }
        }

        Targets = [.. targets];
    }
}
