using System.Runtime.InteropServices;

namespace WireText.Geometry;

/// <summary>Boxes found by place: a grid of square cells, each with the boxes that touch it. A box is known by its number, in the order of adding.</summary>
internal sealed class BoxGrid
{
    /// <summary>The side of a cell, in millimetres: a few lanes.</summary>
    private const double Cell = 16;

    private readonly Dictionary<(int, int), List<int>> cells = [];
    private readonly List<Box> boxes = [];
    private readonly List<int> seenIn = [];
    private readonly List<int> found = [];
    private int query;

    public void Add(Box box)
    {
        var (x1, y1, x2, y2) = CellsOf(box);
        for (var y = y1; y <= y2; y++)
        {
            for (var x = x1; x <= x2; x++)
            {
                if (!cells.TryGetValue((x, y), out var here))
                {
                    cells[(x, y)] = here = [];
                }

                here.Add(boxes.Count);
            }
        }

        boxes.Add(box);
        seenIn.Add(0);
    }

    /// <summary>The numbers of the boxes that touch a box or share some area with it, ascending.</summary>
    public List<int> Near(Box box)
    {
        var near = new List<int>();
        Find(box, near);
        near.Sort();
        return near;
    }

    /// <summary>The same in no order and without a list of its own: good until the next question.</summary>
    public ReadOnlySpan<int> NearForNow(Box box)
    {
        found.Clear();
        Find(box, found);
        return CollectionsMarshal.AsSpan(found);
    }

    /// <summary>True when the box shares some area with one in the grid.</summary>
    public bool IsHit(Box box) => CountHits(box) > 0;

    /// <summary>How many boxes share some area with this one.</summary>
    public int CountHits(Box box)
    {
        var count = 0;
        foreach (var number in NearForNow(box))
        {
            count += boxes[number].Overlaps(box) ? 1 : 0;
        }

        return count;
    }

    private void Find(Box box, List<int> found)
    {
        var (x1, y1, x2, y2) = CellsOf(box);
        query++;
        for (var y = y1; y <= y2; y++)
        {
            for (var x = x1; x <= x2; x++)
            {
                if (cells.TryGetValue((x, y), out var here))
                {
                    AddNew(here, box, found);
                }
            }
        }
    }

    private void AddNew(List<int> here, Box box, List<int> found)
    {
        foreach (var number in here)
        {
            if (seenIn[number] != query)
            {
                seenIn[number] = query;
                var other = boxes[number];
                if (other.X <= box.Right && other.Right >= box.X && other.Y <= box.Bottom && other.Bottom >= box.Y)
                {
                    found.Add(number);
                }
            }
        }
    }

    private static (int X1, int Y1, int X2, int Y2) CellsOf(Box box) =>
        (
            (int)Math.Floor(box.X / Cell),
            (int)Math.Floor(box.Y / Cell),
            (int)Math.Floor(box.Right / Cell),
            (int)Math.Floor(box.Bottom / Cell)
        );
}
