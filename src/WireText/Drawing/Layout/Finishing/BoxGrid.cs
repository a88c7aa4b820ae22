namespace WireText.Drawing.Layout.Finishing;

/// <summary>Boxes found by place.</summary>
internal sealed class BoxGrid
{
    private const double Cell = 16;

    private readonly Dictionary<(int, int), List<Box>> _cells = [];

    public void Add(Box box)
    {
        foreach (var cell in CellsOf(box))
        {
            if (!_cells.TryGetValue(cell, out var here))
            {
                _cells[cell] = here = [];
            }

            here.Add(box);
        }
    }

    /// <summary>True when the box shares some area with one in the grid.</summary>
    public bool IsHit(Box box)
    {
        foreach (var cell in CellsOf(box))
        {
            if (_cells.TryGetValue(cell, out var here) && here.Exists(other => Geometry.Overlap(other, box)))
            {
                return true;
            }
        }

        return false;
    }

    private static IEnumerable<(int, int)> CellsOf(Box box)
    {
        for (var y = (int)Math.Floor(box.Y / Cell); y <= (int)Math.Floor(box.Bottom / Cell); y++)
        {
            for (var x = (int)Math.Floor(box.X / Cell); x <= (int)Math.Floor(box.Right / Cell); x++)
            {
                yield return (x, y);
            }
        }
    }
}
