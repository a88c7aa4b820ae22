namespace WireText.Drawing.Layout.Placement;

/// <summary>
/// Arranges more parts than <see cref="SlotSearch"/> can look at. Parts are laid out in the order in which wires lead from one to
/// the next, row by row and back, then any two change places, and a part moves to an empty cell, as long as that shortens the way
/// between joined cells. A trial costs no more than the wires of the two parts.
/// </summary>
internal sealed class SlotSpread
{
    /// <summary>Trials at most, for each part: enough for some twenty rounds over the two hundred parts of a benchmark.</summary>
    private const int TrialsAPart = 4_000;

    private readonly int[] _parts;
    private readonly int[][] _joined;
    private readonly int[] _cells;
    private readonly int[] _cellOf;
    private readonly int _columns;

    private SlotSpread(int[] parts, IReadOnlyList<(int A, int B)> links, int partCount)
    {
        _parts = parts;
        _columns = Math.Max(1, (int)Math.Ceiling(Math.Sqrt(parts.Length)));
        _cells = new int[_columns * ((parts.Length + _columns - 1) / _columns)];
        _cellOf = new int[partCount];
        var joined = new List<int>[partCount];
        foreach (var (a, b) in links)
        {
            (joined[a] ??= []).Add(b);
            (joined[b] ??= []).Add(a);
        }

        _joined = [.. joined.Select(others => others is null ? [] : others.ToArray())];
    }

    /// <param name="parts">The parts to arrange, in their usual order.</param>
    /// <param name="links">Pairs of them that a wire joins, once for each wire.</param>
    /// <returns>Part indices by row and column; -1 for an empty cell.</returns>
    public static int[][] Arrange(int[] parts, IReadOnlyList<(int A, int B)> links, int partCount)
    {
        var spread = new SlotSpread(parts, links, partCount);
        spread.LayInOrder();
        spread.Shorten();
        return [.. spread._cells.Chunk(spread._columns)];
    }

    private void LayInOrder()
    {
        Array.Fill(_cells, -1);
        var next = 0;
        foreach (var part in InWireOrder())
        {
            var (row, column) = (next / _columns, next % _columns);
            Put(part, (row * _columns) + (row % 2 == 0 ? column : _columns - 1 - column));
            next++;
        }
    }

    /// <summary>Breadth first along the wires, from the first part of each piece.</summary>
    private IEnumerable<int> InWireOrder()
    {
        var isKnown = new bool[_cellOf.Length];
        foreach (var first in _parts.Where(part => !isKnown[part]))
        {
            var waiting = new Queue<int>([first]);
            isKnown[first] = true;
            while (waiting.TryDequeue(out var part))
            {
                yield return part;
                foreach (var other in _joined[part].Where(other => !isKnown[other]))
                {
                    isKnown[other] = true;
                    waiting.Enqueue(other);
                }
            }
        }
    }

    private void Put(int part, int cell)
    {
        _cells[cell] = part;
        if (part >= 0)
        {
            _cellOf[part] = cell;
        }
    }

    private void Shorten()
    {
        var trialsLeft = (long)TrialsAPart * _parts.Length;
        bool hasGained;
        do
        {
            hasGained = false;
            for (var a = 0; a < _cells.Length; a++)
            {
                for (var b = a + 1; b < _cells.Length && trialsLeft > 0; b++, trialsLeft--)
                {
                    hasGained |= TryExchange(a, b);
                }
            }
        } while (hasGained && trialsLeft > 0);
    }

    private bool TryExchange(int a, int b)
    {
        var (partA, partB) = (_cells[a], _cells[b]);
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
            var (x, y) = (_cellOf[part] % _columns, _cellOf[part] / _columns);
            foreach (var other in _joined[part])
            {
                length += Math.Abs(x - (_cellOf[other] % _columns)) + Math.Abs(y - (_cellOf[other] / _columns));
            }
        }

        return length;
    }
}
