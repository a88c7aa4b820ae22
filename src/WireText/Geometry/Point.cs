namespace WireText.Geometry;

/// <summary>A point or an offset on a face or a page, in millimetres: x to the right, y down, as seen from behind.</summary>
public readonly record struct Point(double X, double Y)
{
    /// <summary>Nearer than this, two points are one.</summary>
    private const double Near = 1e-6;

    public static Point operator +(Point a, Point b) => new(a.X + b.X, a.Y + b.Y);

    public static Point operator -(Point a, Point b) => new(a.X - b.X, a.Y - b.Y);

    public static double Distance(Point a, Point b)
    {
        var (dx, dy) = (a.X - b.X, a.Y - b.Y);
        return Math.Sqrt((dx * dx) + (dy * dy));
    }

    /// <summary>The point so far from this one towards another, on past it where that is farther; this one where the two are one.</summary>
    public Point Towards(Point other, double distance)
    {
        var length = Distance(this, other);
        return Between(this, other, length < Near ? 0 : distance / length);
    }

    /// <param name="share">Of the way: 0 at <paramref name="from"/>, 1 at <paramref name="to"/>.</param>
    public static Point Between(Point from, Point to, double share) =>
        new(from.X + ((to.X - from.X) * share), from.Y + ((to.Y - from.Y) * share));

    /// <summary>Where it comes to when its frame is turned round 0,0.</summary>
    /// <param name="turn">0, 90, 180 or 270 degrees, clockwise.</param>
    public Point Turned(int turn) =>
        turn switch
        {
            90 => new Point(-Y, X),
            180 => new Point(-X, -Y),
            270 => new Point(Y, -X),
            _ => this,
        };
}
