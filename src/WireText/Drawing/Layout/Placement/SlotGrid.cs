using WireText.Geometry;

namespace WireText.Drawing.Layout.Placement;

/// <summary>Rows and columns of cells that hold one part each. A column is as wide as its widest part, a row as tall as its tallest, with channels for wires between.</summary>
internal static class SlotGrid
{
    /// <summary>Lanes between two columns and between two rows, at the start.</summary>
    private const int ColumnChannel = 9;
    private const int RowChannel = 11;

    /// <param name="cells">Part indices by row and column; -1 for an empty cell. Rows may differ in length.</param>
    /// <param name="widening">How often the channels were widened, by two lanes each time.</param>
    public static void Place(Wiring wiring, int[][] cells, int[] turns, int widening, Pose[] poses)
    {
        var columns = cells.Length == 0 ? 0 : cells.Max(row => row.Length);
        var xs = Lines(
            columns,
            ColumnChannel + (2 * widening),
            column => Extents(wiring, turns, Column(cells, column), isWidth: true)
        );
        var ys = Lines(
            cells.Length,
            RowChannel + (2 * widening),
            row => Extents(wiring, turns, cells[row], isWidth: false)
        );
        for (var row = 0; row < cells.Length; row++)
        {
            for (var column = 0; column < cells[row].Length; column++)
            {
                var part = cells[row][column];
                if (part >= 0)
                {
                    var at = PartBounds.Snapped(wiring.Parts[part], turns[part], new Point(xs[column], ys[row]));
                    poses[part] = new Pose(at, turns[part]);
                }
            }
        }
    }

    private static IEnumerable<int> Column(int[][] cells, int column) =>
        cells.Select(row => column < row.Length ? row[column] : -1);

    private static (double Before, double After) Extents(
        Wiring wiring,
        int[] turns,
        IEnumerable<int> parts,
        bool isWidth
    )
    {
        var (before, after) = (0.0, 0.0);
        foreach (var part in parts.Where(part => part >= 0))
        {
            var (box, turn) = (PartBounds.Of(wiring.Parts[part], turns[part]), turns[part]);
            var (low, high) = isWidth ? (Side.West, Side.East) : (Side.North, Side.South);
            before = Math.Max(before, (isWidth ? -box.X : -box.Y) + wiring.Parallel.DepthAt(part, turn, low));
            after = Math.Max(after, (isWidth ? box.Right : box.Bottom) + wiring.Parallel.DepthAt(part, turn, high));
        }

        return (before, after);
    }

    private static double[] Lines(int count, int channel, Func<int, (double Before, double After)> extents)
    {
        var lines = new double[count];
        var end = 0.0;
        for (var i = 0; i < count; i++)
        {
            var (before, after) = extents(i);
            lines[i] = end + before;
            end = lines[i] + after + (channel * LayoutScale.Pitch);
        }

        return lines;
    }
}
