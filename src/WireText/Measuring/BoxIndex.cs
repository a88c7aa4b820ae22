namespace WireText.Measuring;

/// <summary>Finds what lies near a place: numbered things in the cells of a grid.</summary>
/// <remarks>Its work is limited, so that a hostile drawing ends in an error and not in a full memory.</remarks>
internal sealed class BoxIndex(WorkLimit work)
{
    /// <summary>Four lane pitches: a few things a cell in an ordinary drawing.</summary>
    private const double Cell = 8;

    /// <summary>Many times what the largest drawing has; a hostile one ends here. Chosen.</summary>
    private const int MostEntries = 400_000;

    private readonly Dictionary<(int X, int Y), List<int>> cells = [];
    private readonly List<int> seen = [];
    private int entries;
    private int query;

    public void Add(int thing, Frame bounds)
    {
        while (seen.Count <= thing)
        {
            seen.Add(0);
        }

        foreach (var cell in CellsOf(bounds))
        {
            if (++entries > MostEntries)
            {
                throw new UnreadablePictureException("the drawing is too large to measure");
            }

            if (!cells.TryGetValue(cell, out var things))
            {
                cells[cell] = things = [];
            }

            if (things.Count == 0 || things[^1] != thing)
            {
                things.Add(thing);
            }
        }
    }

    /// <summary>A long slanting line would fill many cells that it does not touch; so it goes in piece by piece.</summary>
    public void Add(int thing, Segment segment)
    {
        var pieces = (int)Math.Ceiling(segment.Length / Cell);
        for (var i = 0; i < pieces; i++)
        {
            Add(
                thing,
                Frame.Around(segment.At(segment.Length * i / pieces), segment.At(segment.Length * (i + 1) / pieces))
            );
        }
    }

    /// <summary>Every thing, once, that may have a part within the box; in the order of their numbers.</summary>
    public List<int> Near(Frame bounds)
    {
        query++;
        var found = new List<int>();
        foreach (var cell in CellsOf(bounds))
        {
            work.Spend(1);
            if (!cells.TryGetValue(cell, out var things))
            {
                continue;
            }

            work.Spend(things.Count);
            foreach (var thing in things)
            {
                if (seen[thing] != query)
                {
                    seen[thing] = query;
                    found.Add(thing);
                }
            }
        }

        found.Sort();
        return found;
    }

    /// <summary>As <see cref="Near(Frame)"/>, for what may be within a distance of the segment.</summary>
    public List<int> Near(Segment segment, double distance)
    {
        var pieces = Math.Max(1, (int)Math.Ceiling(segment.Length / (4 * Cell)));
        if (pieces == 1)
        {
            return Near(segment.Bounds.Grown(distance));
        }

        var found = new SortedSet<int>();
        for (var i = 0; i < pieces; i++)
        {
            var piece = Frame.Around(
                segment.At(segment.Length * i / pieces),
                segment.At(segment.Length * (i + 1) / pieces)
            );
            found.UnionWith(Near(piece.Grown(distance)));
        }

        return [.. found];
    }

    private static IEnumerable<(int X, int Y)> CellsOf(Frame bounds)
    {
        for (var y = CellOf(bounds.Top); y <= CellOf(bounds.Bottom); y++)
        {
            for (var x = CellOf(bounds.Left); x <= CellOf(bounds.Right); x++)
            {
                yield return (x, y);
            }
        }
    }

    private static int CellOf(double value) => (int)Math.Floor(value / Cell);
}
