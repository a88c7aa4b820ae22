namespace WireText.Geometry;

/// <summary>Small geometry of upright boxes and straight stretches.</summary>
internal static class Boxes
{
    public static Box Grown(Box box, double by) =>
        new(box.X - by, box.Y - by, box.Width + (2 * by), box.Height + (2 * by));

    public static Box Widened(Box box, double by) => box with { X = box.X - by, Width = box.Width + (2 * by) };

    public static bool Touch(Box a, Box b) => a.X < b.Right && b.X < a.Right && a.Y < b.Bottom && b.Y < a.Bottom;

    public static Box Union(Box a, Box b)
    {
        var (x, y) = (Math.Min(a.X, b.X), Math.Min(a.Y, b.Y));
        return new Box(x, y, Math.Max(a.Right, b.Right) - x, Math.Max(a.Bottom, b.Bottom) - y);
    }

    public static Box Around(Point a, Point b)
    {
        var (x, y) = (Math.Min(a.X, b.X), Math.Min(a.Y, b.Y));
        return new Box(x, y, Math.Abs(a.X - b.X), Math.Abs(a.Y - b.Y));
    }

    /// <summary>From a point to the nearest point of a box; 0 inside it.</summary>
    public static double Distance(Box box, Point at) => Shapes.Distance(box, Around(at, at));

    /// <summary>True when a stretch comes into a box: the parts of the stretch inside each side's half plane have something in common.</summary>
    public static bool Meets(Box box, Point from, Point to)
    {
        var (enter, leave) = (0.0, 1.0);
        var (dx, dy) = (to.X - from.X, to.Y - from.Y);
        return Clip(-dx, from.X - box.X, ref enter, ref leave)
            && Clip(dx, box.Right - from.X, ref enter, ref leave)
            && Clip(-dy, from.Y - box.Y, ref enter, ref leave)
            && Clip(dy, box.Bottom - from.Y, ref enter, ref leave)
            && leave > enter;
    }

    /// <summary>True when two stretches cross, each going through the other.</summary>
    public static bool Cross((Point From, Point To) a, (Point From, Point To) b) =>
        Turn(a, b.From) * Turn(a, b.To) < 0 && Turn(b, a.From) * Turn(b, a.To) < 0;

    private static double Turn((Point From, Point To) line, Point at) =>
        ((line.To.X - line.From.X) * (at.Y - line.From.Y)) - ((line.To.Y - line.From.Y) * (at.X - line.From.X));

    private static bool Clip(double towards, double room, ref double enter, ref double leave)
    {
        if (towards == 0)
        {
            return room > 0;
        }

        var share = room / towards;
        if (towards < 0)
        {
            enter = Math.Max(enter, share);
        }
        else
        {
            leave = Math.Min(leave, share);
        }

        return enter <= leave;
    }
}
