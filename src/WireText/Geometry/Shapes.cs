namespace WireText.Geometry;

/// <summary>Quarter turns, boxes and distances. Everything turns clockwise as seen on the page.</summary>
internal static class Shapes
{
    /// <summary>A point of a part's own frame after the part was turned in place.</summary>
    public static Point Turned(Point own, int turn) =>
        turn switch
        {
            90 => new Point(-own.Y, own.X),
            180 => new Point(-own.X, -own.Y),
            270 => new Point(own.Y, -own.X),
            _ => own,
        };

    public static Box Turned(Box own, int turn) =>
        Spanning(Turned(new Point(own.X, own.Y), turn), Turned(new Point(own.Right, own.Bottom), turn));

    public static Side Turned(Side side, int turn) => (Side)(((int)side + (turn / 90)) % 4);

    /// <summary>So many millimetres to a side of the page.</summary>
    public static Point Towards(Side side, double by) =>
        side switch
        {
            Side.North => new Point(0, -by),
            Side.East => new Point(by, 0),
            Side.South => new Point(0, by),
            _ => new Point(-by, 0),
        };

    public static Outline OnPage(Outline outline, Point at, int turn) =>
        outline switch
        {
            Outline.Circle circle => new Outline.Circle(at + Turned(circle.Centre, turn), circle.Radius),
            Outline.Rectangle rectangle => new Outline.Rectangle(Shifted(Turned(rectangle.Box, turn), at)),
            _ => throw new NotSupportedException($"no such outline: {outline.GetType().Name}"),
        };

    public static Box Shifted(Box box, Point by) => new(box.X + by.X, box.Y + by.Y, box.Width, box.Height);

    public static Box Spanning(Point a, Point b) =>
        new(Math.Min(a.X, b.X), Math.Min(a.Y, b.Y), Math.Abs(a.X - b.X), Math.Abs(a.Y - b.Y));

    public static Box Union(Box a, Box b)
    {
        var (left, top) = (Math.Min(a.X, b.X), Math.Min(a.Y, b.Y));
        return new Box(left, top, Math.Max(a.Right, b.Right) - left, Math.Max(a.Bottom, b.Bottom) - top);
    }

    public static Box Inflated(Box box, double by) =>
        new(box.X - by, box.Y - by, box.Width + (2 * by), box.Height + (2 * by));

    /// <summary>True when the two boxes share some area; a shared edge alone does not count.</summary>
    public static bool Overlap(Box a, Box b) => a.X < b.Right && b.X < a.Right && a.Y < b.Bottom && b.Y < a.Bottom;

    public static bool Contains(Box box, Point point) =>
        point.X >= box.X && point.X <= box.Right && point.Y >= box.Y && point.Y <= box.Bottom;

    public static Box BoundsOf(Outline outline) =>
        outline switch
        {
            Outline.Circle circle => Box.Around(circle.Centre, 2 * circle.Radius, 2 * circle.Radius),
            Outline.Rectangle rectangle => rectangle.Box,
            _ => throw new NotSupportedException($"no such outline: {outline.GetType().Name}"),
        };

    /// <summary>How deep a point lies inside an outline, in millimetres; negative outside.</summary>
    public static double Depth(Outline outline, Point point) =>
        outline switch
        {
            Outline.Circle circle => circle.Radius - Distance(circle.Centre, point),
            Outline.Rectangle rectangle => Depth(rectangle.Box, point),
            _ => throw new NotSupportedException($"no such outline: {outline.GetType().Name}"),
        };

    public static double Depth(Box box, Point point) =>
        Math.Min(Math.Min(point.X - box.X, box.Right - point.X), Math.Min(point.Y - box.Y, box.Bottom - point.Y));

    public static double Distance(Point a, Point b)
    {
        var (dx, dy) = (a.X - b.X, a.Y - b.Y);
        return Math.Sqrt((dx * dx) + (dy * dy));
    }

    /// <summary>The air between two boxes; 0 when they touch.</summary>
    public static double Distance(Box a, Box b)
    {
        var dx = Math.Max(0, Math.Max(a.X - b.Right, b.X - a.Right));
        var dy = Math.Max(0, Math.Max(a.Y - b.Bottom, b.Y - a.Bottom));
        return Math.Sqrt((dx * dx) + (dy * dy));
    }

    /// <summary>The distance of a point from a stretch that runs along an axis.</summary>
    public static double DistanceToStretch(Point point, Point from, Point to)
    {
        var box = Spanning(from, to);
        return Distance(
            point,
            new Point(Math.Clamp(point.X, box.X, box.Right), Math.Clamp(point.Y, box.Y, box.Bottom))
        );
    }
}
