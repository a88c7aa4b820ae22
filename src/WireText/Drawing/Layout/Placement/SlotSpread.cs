namespace WireText.Drawing.Layout.Placement;

/// <summary>
/// Arranges more parts than <see cref="SlotSearch"/> can look at. Parts are laid out in the order in which wires lead from one to
/// the next, row by row and back, then any two change places, and a part moves to an empty cell, as long as that shortens the way
/// between joined cells. A trial costs no more than the wires of the two parts.
/// </summary>
internal sealed class SlotSpread
{
    /// <summary>Trials at most, for each part: enough for some twenty rounds over the two hundred parts of a benchmark.</summary>
    internal const int TrialsAPart = 4_000;

    private readonly int[] parts;
    private readonly int[][] joined;
    private readonly int[] cells;
    private readonly int[] cellOf;
    private readonly int columns;

    private SlotSpread(int[] parts, IReadOnlyList<(int A, int B)> links, int partCount)
    {
        this.parts = parts;
        columns = Math.Max(1, (int)Math.Ceiling(Math.Sqrt(parts.Length)));
        cells = new int[columns * ((parts.Length + columns - 1) / columns)];
        cellOf = new int[partCount];
        var others = new List<int>[partCount];
        foreach (var (a, b) in links)
        {
            (others[a] ??= []).Add(b);
            (others[b] ??= []).Add(a);
        }

        joined = [.. others.Select(some => some is null ? [] : some.ToArray())];
    }

    /// <param name="parts">The parts to arrange, in their usual order.</param>
    /// <param name="links">Pairs of them that a wire joins, once for each wire.</param>
    /// <param name="trialsAPart">See <see cref="TrialsAPart"/>.</param>
    /// <returns>Part indices by row and column; -1 for an empty cell.</returns>
    public static int[][] Arrange(int[] parts, IReadOnlyList<(int A, int B)> links, int partCount, int trialsAPart)
    {
        var spread = new SlotSpread(parts, links, partCount);
        spread.LayInOrder();
        spread.Shorten((long)trialsAPart * parts.Length);
        return [.. spread.cells.Chunk(spread.columns)];
    }

    private void LayInOrder()
    {
        Array.Fill(cells, -1);
        var next = 0;
        foreach (var part in InWireOrder())
        {
            var (row, column) = (next / columns, next % columns);
            Put(part, (row * columns) + (row % 2 == 0 ? column : columns - 1 - column));
            next++;
        }
    }

    /// <summary>Breadth first along the wires, from the first part of each piece.</summary>
    private IEnumerable<int> InWireOrder()
    {
        var isKnown = new bool[cellOf.Length];
        foreach (var first in parts.Where(part => !isKnown[part]))
        {
            var waiting = new Queue<int>([first]);
            isKnown[first] = true;
            while (waiting.TryDequeue(out var part))
            {
                yield return part;
                foreach (var other in joined[part].Where(other => !isKnown[other]))
                {
                    isKnown[other] = true;
                    waiting.Enqueue(other);
                }
            }
        }
    }

    private void Put(int part, int cell)
    {
        cells[cell] = part;
        if (part >= 0)
        {
            cellOf[part] = cell;
        }
    }

    private void Shorten(long trialsLeft)
    {
        bool hasGained;
        do
        {
            hasGained = false;
            for (var a = 0; a < cells.Length; a++)
            {
                for (var b = a + 1; b < cells.Length && trialsLeft > 0; b++, trialsLeft--)
                {
                    hasGained |= TryExchange(a, b);
                }
            }
        } while (hasGained && trialsLeft > 0);
    }

    private bool TryExchange(int a, int b)
    {
        var (partA, partB) = (cells[a], cells[b]);
        var before = LengthAt(partA) + LengthAt(partB);
        Put(partA, b);
        Put(partB, a);
        if (LengthAt(partA) + LengthAt(partB) < before)
        {
            return true;
        }

        Put(partA, a);
        Put(partB, b);
        return false;
    }

    private int LengthAt(int part)
    {
        var length = 0;
        if (part >= 0)
        {
            var (x, y) = (cellOf[part] % columns, cellOf[part] / columns);
            foreach (var other in joined[part])
            {
                length += Math.Abs(x - (cellOf[other] % columns)) + Math.Abs(y - (cellOf[other] / columns));
            }
        }

        return length;
    }
}
