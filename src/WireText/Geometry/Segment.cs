namespace WireText.Geometry;

/// <summary>A straight stretch between two points, in millimetres.</summary>
public readonly record struct Segment(Point From, Point To)
{
    /// <summary>A point that makes the way from end to end no longer than this is on the stretch.</summary>
    private const double Near = 1e-6;

    /// <summary>The box that it is a diagonal or a side of.</summary>
    public Box Bounds => Box.Spanning(From, To);

    /// <summary>True for a point on it.</summary>
    public bool Contains(Point at) =>
        Math.Abs(Point.Distance(From, at) + Point.Distance(at, To) - Point.Distance(From, To)) < Near;

    /// <summary>True when two stretches cross, each going through the other.</summary>
    public static bool Cross(Segment a, Segment b) =>
        a.Turn(b.From) * a.Turn(b.To) < 0 && b.Turn(a.From) * b.Turn(a.To) < 0;

    /// <summary>True when it comes into a box: its parts inside each side's half plane have something in common.</summary>
    public bool Meets(Box box)
    {
        if (IsBeside(From.X, To.X, box.X, box.Right) || IsBeside(From.Y, To.Y, box.Y, box.Bottom))
        {
            return false;
        }

        var (enter, leave) = (0.0, 1.0);
        var (dx, dy) = (To.X - From.X, To.Y - From.Y);
        return Clip(-dx, From.X - box.X, ref enter, ref leave)
            && Clip(dx, box.Right - From.X, ref enter, ref leave)
            && Clip(-dy, From.Y - box.Y, ref enter, ref leave)
            && Clip(dy, box.Bottom - From.Y, ref enter, ref leave)
            && leave > enter;
    }

    /// <summary>Positive for a point on one side of the line, negative on the other, 0 on it.</summary>
    private double Turn(Point at) => ((To.X - From.X) * (at.Y - From.Y)) - ((To.Y - From.Y) * (at.X - From.X));

    /// <summary>True where, seen along one axis, no more than an edge can be common: most stretches are told by that.</summary>
    private static bool IsBeside(double from, double to, double low, double high) =>
        Math.Max(from, to) <= low || Math.Min(from, to) >= high;

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
