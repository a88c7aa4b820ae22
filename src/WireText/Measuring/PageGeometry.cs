namespace WireText.Measuring;

// The measure has its own geometry on purpose: a mistake in the layout's must not hide itself here.

/// <summary>A point on the page in millimetres; y grows downwards.</summary>
internal readonly record struct Spot(double X, double Y)
{
    public static Spot operator +(Spot a, Spot b) => new(a.X + b.X, a.Y + b.Y);

    public static Spot operator -(Spot a, Spot b) => new(a.X - b.X, a.Y - b.Y);

    public static Spot operator *(Spot a, double factor) => new(a.X * factor, a.Y * factor);

    public double Length => Math.Sqrt((X * X) + (Y * Y));

    public double Dot(Spot other) => (X * other.X) + (Y * other.Y);

    /// <summary>Positive when <paramref name="other"/> lies clockwise of this direction, as seen on the page.</summary>
    public double Cross(Spot other) => (X * other.Y) - (Y * other.X);

    public double DistanceTo(Spot other) => (other - this).Length;

    public double ManhattanTo(Spot other) => Math.Abs(other.X - X) + Math.Abs(other.Y - Y);
}

/// <summary>An upright box.</summary>
internal readonly record struct Frame(double Left, double Top, double Right, double Bottom)
{
    public static Frame Around(Spot a, Spot b) =>
        new(Math.Min(a.X, b.X), Math.Min(a.Y, b.Y), Math.Max(a.X, b.X), Math.Max(a.Y, b.Y));

    public Frame Grown(double by) => new(Left - by, Top - by, Right + by, Bottom + by);

    public Frame With(Frame other) =>
        new(
            Math.Min(Left, other.Left),
            Math.Min(Top, other.Top),
            Math.Max(Right, other.Right),
            Math.Max(Bottom, other.Bottom)
        );

    /// <summary>True when the two share more than a strip of that width.</summary>
    public bool Overlaps(Frame other, double slack = 0) =>
        Math.Min(Right, other.Right) - Math.Max(Left, other.Left) > slack
        && Math.Min(Bottom, other.Bottom) - Math.Max(Top, other.Top) > slack;

    public bool Contains(Frame other, double slack) =>
        other.Left >= Left - slack
        && other.Top >= Top - slack
        && other.Right <= Right + slack
        && other.Bottom <= Bottom + slack;

    public double DistanceTo(Frame other)
    {
        var x = Math.Max(0, Math.Max(Left - other.Right, other.Left - Right));
        var y = Math.Max(0, Math.Max(Top - other.Bottom, other.Top - Bottom));
        return new Spot(x, y).Length;
    }

    public double DistanceTo(Spot spot)
    {
        var x = Math.Max(0, Math.Max(Left - spot.X, spot.X - Right));
        var y = Math.Max(0, Math.Max(Top - spot.Y, spot.Y - Bottom));
        return new Spot(x, y).Length;
    }
}

/// <summary>A straight stretch of a wire.</summary>
internal readonly record struct Segment(Spot A, Spot B)
{
    public double Length => A.DistanceTo(B);

    /// <summary>Of length 1; no segment has length 0.</summary>
    public Spot Direction => (B - A) * (1 / Length);

    public Frame Bounds => Frame.Around(A, B);

    public Spot At(double distance) => A + (Direction * distance);

    public double DistanceTo(Spot spot)
    {
        var along = Math.Clamp((spot - A).Dot(Direction), 0, Length);
        return At(along).DistanceTo(spot);
    }
}

/// <summary>From one distance along a line to another; nothing when <see cref="To"/> is not beyond <see cref="From"/>.</summary>
internal readonly record struct Interval(double From, double To)
{
    public static Interval Nothing { get; } = new(0, 0);

    public bool IsEmpty => To <= From;

    public double Length => Math.Max(0, To - From);

    public Interval Clip(double from, double to) => new(Math.Max(From, from), Math.Min(To, to));

    public Interval Shifted(double by) => new(From + by, To + by);

    /// <summary>The smallest interval that holds both.</summary>
    public Interval Hull(Interval other)
    {
        if (IsEmpty)
        {
            return other;
        }

        return other.IsEmpty ? this : new(Math.Min(From, other.From), Math.Max(To, other.To));
    }
}

/// <summary>Where a segment runs inside a convex shape, as distances from its start.</summary>
internal static class Clipping
{
    public static Interval InsideDisc(Segment segment, Spot centre, double radius)
    {
        var offset = centre - segment.A;
        var nearest = offset.Dot(segment.Direction);
        var aside = offset.Cross(segment.Direction);
        var square = (radius * radius) - (aside * aside);
        if (square <= 0)
        {
            return Interval.Nothing;
        }

        var half = Math.Sqrt(square);
        return new Interval(nearest - half, nearest + half).Clip(0, segment.Length);
    }

    public static Interval InsideFrame(Segment segment, Frame frame)
    {
        var direction = segment.Direction;
        var interval = new Interval(0, segment.Length);
        interval = InsideSlab(interval, segment.A.X, direction.X, frame.Left, frame.Right);
        return InsideSlab(interval, segment.A.Y, direction.Y, frame.Top, frame.Bottom);
    }

    /// <summary>Where the segment is less than <paramref name="distance"/> from another. That region is convex: a strip with two round ends.</summary>
    public static Interval Near(Segment segment, Segment other, double distance)
    {
        var along = other.Direction;
        var start = segment.A - other.A;
        var direction = segment.Direction;
        var strip = new Interval(0, segment.Length);
        strip = InsideSlab(strip, start.Dot(along), direction.Dot(along), 0, other.Length);
        strip = InsideSlab(strip, along.Cross(start), along.Cross(direction), -distance, distance);
        return strip.Hull(InsideDisc(segment, other.A, distance)).Hull(InsideDisc(segment, other.B, distance));
    }

    private static Interval InsideSlab(Interval interval, double start, double slope, double low, double high)
    {
        if (interval.IsEmpty)
        {
            return Interval.Nothing;
        }

        if (Math.Abs(slope) < 1e-12)
        {
            return start > low && start < high ? interval : Interval.Nothing;
        }

        var (first, second) = ((low - start) / slope, (high - start) / slope);
        var clipped = interval.Clip(Math.Min(first, second), Math.Max(first, second));
        return clipped.IsEmpty ? Interval.Nothing : clipped;
    }
}

/// <summary>A set of distances along a line, built from intervals.</summary>
internal sealed class IntervalSet
{
    /// <summary>Intervals that touch, but for rounding, are one.</summary>
    private const double Gap = 1e-3;

    private readonly List<Interval> intervals = [];

    public void Add(Interval interval)
    {
        if (!interval.IsEmpty)
        {
            intervals.Add(interval);
        }
    }

    /// <summary>The set as intervals that do not touch, in order.</summary>
    public List<Interval> Merged()
    {
        var merged = new List<Interval>();
        foreach (var interval in intervals.OrderBy(interval => interval.From).ThenBy(interval => interval.To))
        {
            if (merged.Count > 0 && interval.From <= merged[^1].To + Gap)
            {
                merged[^1] = merged[^1].Hull(interval);
            }
            else
            {
                merged.Add(interval);
            }
        }

        return merged;
    }

    /// <summary>How much of the set is left when <paramref name="excused"/> is taken away.</summary>
    public double LengthWithout(IntervalSet excused)
    {
        var length = 0.0;
        var holes = excused.Merged();
        foreach (var interval in Merged())
        {
            length += interval.Length - holes.Sum(hole => interval.Clip(hole.From, hole.To).Length);
        }

        return length;
    }
}
