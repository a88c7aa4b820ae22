namespace WireText.Drawing.Layout.Routing;

/// <summary>A box of lattice nodes, both ends included.</summary>
internal readonly record struct LatticeBox(int X1, int Y1, int X2, int Y2)
{
    /// <summary>The box around no node, which no box is smaller than.</summary>
    public static readonly LatticeBox Nothing = new(int.MaxValue, int.MaxValue, int.MinValue, int.MinValue);

    public static LatticeBox Of(int x, int y) => new(x, y, x, y);

    public LatticeBox Union(LatticeBox other) =>
        new(Math.Min(X1, other.X1), Math.Min(Y1, other.Y1), Math.Max(X2, other.X2), Math.Max(Y2, other.Y2));

    public LatticeBox Grown(int by, int width, int height) =>
        new(Math.Max(1, X1 - by), Math.Max(1, Y1 - by), Math.Min(width - 2, X2 + by), Math.Min(height - 2, Y2 + by));

    /// <summary>The least number of lane steps between two boxes.</summary>
    public int DistanceTo(LatticeBox other) =>
        Math.Max(0, Math.Max(X1 - other.X2, other.X1 - X2)) + Math.Max(0, Math.Max(Y1 - other.Y2, other.Y1 - Y2));
}
