namespace WireText.Geometry;

/// <summary>A point or an offset on a face or a page, in millimetres: x to the right, y down, as seen from behind.</summary>
public readonly record struct Point(double X, double Y)
{
    public static Point operator +(Point a, Point b) => new(a.X + b.X, a.Y + b.Y);

    public static Point operator -(Point a, Point b) => new(a.X - b.X, a.Y - b.Y);
}
