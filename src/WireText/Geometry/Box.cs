namespace WireText.Geometry;

/// <summary>An upright rectangle: its top left corner and its size, in millimetres.</summary>
public readonly record struct Box(double X, double Y, double Width, double Height)
{
    public double Right => X + Width;

    public double Bottom => Y + Height;

    public Point Centre => new(X + (Width / 2), Y + (Height / 2));

    public static Box Around(Point centre, double width, double height) =>
        new(centre.X - (width / 2), centre.Y - (height / 2), width, height);

    /// <summary>The box with two points in opposite corners.</summary>
    public static Box Spanning(Point a, Point b) =>
        new(Math.Min(a.X, b.X), Math.Min(a.Y, b.Y), Math.Abs(a.X - b.X), Math.Abs(a.Y - b.Y));

    /// <summary>The smallest box that holds both.</summary>
    public static Box Union(Box a, Box b)
    {
        var (left, top) = (Math.Min(a.X, b.X), Math.Min(a.Y, b.Y));
        return new Box(left, top, Math.Max(a.Right, b.Right) - left, Math.Max(a.Bottom, b.Bottom) - top);
    }

    /// <summary>The air between two boxes; 0 when they touch.</summary>
    public static double Distance(Box a, Box b)
    {
        var dx = Math.Max(0, Math.Max(a.X - b.Right, b.X - a.Right));
        var dy = Math.Max(0, Math.Max(a.Y - b.Bottom, b.Y - a.Bottom));
        return Math.Sqrt((dx * dx) + (dy * dy));
    }

    /// <summary>From a point to the nearest point of the box; 0 inside it.</summary>
    public double DistanceTo(Point at) => Distance(this, Spanning(at, at));

    /// <summary>The point of the box that is nearest to another point.</summary>
    public Point NearestTo(Point at) => new(Math.Clamp(at.X, X, Right), Math.Clamp(at.Y, Y, Bottom));

    /// <summary>How deep a point lies inside; negative outside.</summary>
    public double Depth(Point at) => Math.Min(Math.Min(at.X - X, Right - at.X), Math.Min(at.Y - Y, Bottom - at.Y));

    /// <summary>So much larger on every side; smaller when it is negative.</summary>
    public Box Grown(double by) => new(X - by, Y - by, Width + (2 * by), Height + (2 * by));

    /// <summary>So much wider on the left and on the right.</summary>
    public Box Widened(double by) => this with { X = X - by, Width = Width + (2 * by) };

    public Box Shifted(Point by) => new(X + by.X, Y + by.Y, Width, Height);

    /// <summary>Where it comes to when its frame is turned round 0,0.</summary>
    /// <param name="turn">0, 90, 180 or 270 degrees, clockwise.</param>
    public Box Turned(int turn) => Spanning(new Point(X, Y).Turned(turn), new Point(Right, Bottom).Turned(turn));

    /// <summary>True when the two share some area; a shared edge alone does not count.</summary>
    public bool Overlaps(Box other) => X < other.Right && other.X < Right && Y < other.Bottom && other.Y < Bottom;

    /// <summary>True for a point inside or on the edge.</summary>
    public bool Contains(Point at) => at.X >= X && at.X <= Right && at.Y >= Y && at.Y <= Bottom;

    /// <summary>True for a box that lies inside, up to the edge.</summary>
    public bool Contains(Box other) => other.X >= X && other.Y >= Y && other.Right <= Right && other.Bottom <= Bottom;
}
