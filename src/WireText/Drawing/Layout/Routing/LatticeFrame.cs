using WireText.Geometry;

namespace WireText.Drawing.Layout.Routing;

/// <summary>Where a lattice lies on the page: nodes one pitch apart, numbered row by row.</summary>
/// <param name="Left">The x of column 0 in whole pitches on the page.</param>
/// <param name="Top">The y of row 0 in whole pitches on the page.</param>
internal sealed record LatticeFrame(int Left, int Top, int Width, int Height)
{
    private const double Pitch = LayoutScale.Pitch;

    /// <summary>An edge of a box this near to a row or column of nodes lies on it.</summary>
    private const double Near = 1e-9;

    public int NodeCount => Width * Height;

    /// <summary>The frame around a box.</summary>
    /// <param name="margin">How many more nodes on every side.</param>
    public static LatticeFrame Around(Box extent, int margin)
    {
        var left = (int)Math.Floor(extent.X / Pitch) - margin;
        var top = (int)Math.Floor(extent.Y / Pitch) - margin;
        var right = (int)Math.Ceiling(extent.Right / Pitch) + margin;
        var bottom = (int)Math.Ceiling(extent.Bottom / Pitch) + margin;
        return new LatticeFrame(left, top, right - left + 1, bottom - top + 1);
    }

    public Point OnPage(int x, int y) => new((x + Left) * Pitch, (y + Top) * Pitch);

    /// <summary>The node at a place on the page, which is given in whole pitches.</summary>
    public int NodeAt((int X, int Y) inPitches) => ((inPitches.Y - Top) * Width) + inPitches.X - Left;

    /// <summary>The node that lies where a node of another frame does; -1 where this frame has none, or only one of its border.</summary>
    public int NodeAt(int node, LatticeFrame other)
    {
        var (x, y) = ((node % other.Width) + other.Left - Left, (node / other.Width) + other.Top - Top);
        return x > 0 && y > 0 && x < Width - 1 && y < Height - 1 ? (y * Width) + x : -1;
    }

    /// <summary>The index step from a node to its neighbour in direction 0 east, 1 south, 2 west, 3 north.</summary>
    public int Step(int direction) =>
        direction switch
        {
            0 => 1,
            1 => Width,
            2 => -1,
            _ => -Width,
        };

    /// <summary>The nodes in a box, its edges included.</summary>
    public LatticeBox NodesIn(Box box) =>
        new(
            Math.Max(0, (int)Math.Ceiling((box.X / Pitch) - Near) - Left),
            Math.Max(0, (int)Math.Ceiling((box.Y / Pitch) - Near) - Top),
            Math.Min(Width - 1, (int)Math.Floor((box.Right / Pitch) + Near) - Left),
            Math.Min(Height - 1, (int)Math.Floor((box.Bottom / Pitch) + Near) - Top)
        );

    public LatticeBox BoxAround(ReadOnlySpan<int> nodes)
    {
        var box = LatticeBox.Nothing;
        foreach (var node in nodes)
        {
            box = box.Union(LatticeBox.Of(node % Width, node / Width));
        }

        return box;
    }

    /// <summary>Visits the nodes in a box row by row, each with its place on the page.</summary>
    public void Visit(Box box, Action<int, Point> visit)
    {
        var nodes = NodesIn(box);
        for (var y = nodes.Y1; y <= nodes.Y2; y++)
        {
            for (var x = nodes.X1; x <= nodes.X2; x++)
            {
                visit((y * Width) + x, OnPage(x, y));
            }
        }
    }
}
