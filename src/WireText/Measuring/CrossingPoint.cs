namespace WireText.Measuring;

/// <summary>Tells a crossing from a touch: after it, each line goes on upon the other side of the other.</summary>
internal static class CrossingPoint
{
    /// <summary>Rays nearer in direction than this, in radians, run on one another.</summary>
    private const double SameRay = 0.02;

    /// <summary>The point where two segments of different strands cross, or null.</summary>
    public static Spot? Find(StrandMap map, PlacedSegment one, PlacedSegment two)
    {
        if (Meet(one.Line, two.Line) is not { } spot)
        {
            return null;
        }

        return
            RaysAt(map.Strands[one.Strand], one, spot) is { } first
            && RaysAt(map.Strands[two.Strand], two, spot) is { } second
            && AreSeparated(first, second)
            ? spot
            : null;
    }

    /// <summary>Whether two segments have a point in common that is no running side by side.</summary>
    public static bool DoMeet(Segment one, Segment two) => Meet(one, two) is not null;

    private static Spot? Meet(Segment one, Segment two)
    {
        var sine = one.Direction.Cross(two.Direction);
        if (Math.Abs(sine) < 1e-9)
        {
            return null;
        }

        var between = two.A - one.A;
        var alongOne = between.Cross(two.Direction) / sine;
        var alongTwo = between.Cross(one.Direction) / sine;
        return IsOn(one, alongOne) && IsOn(two, alongTwo) ? one.At(alongOne) : null;
    }

    private static bool IsOn(Segment segment, double along) =>
        along >= -Tolerance.SamePoint && along <= segment.Length + Tolerance.SamePoint;

    /// <summary>The directions in which the strand leaves the spot; null when it ends there.</summary>
    private static (Spot Back, Spot Forward)? RaysAt(Strand strand, PlacedSegment segment, Spot spot)
    {
        var back = segment.Line.Direction * -1;
        var forward = segment.Line.Direction;
        if (spot.DistanceTo(segment.Line.A) <= Tolerance.SamePoint)
        {
            if (segment.Place == 0)
            {
                return null;
            }

            back = strand.Segments[segment.Place - 1].Direction * -1;
        }
        else if (spot.DistanceTo(segment.Line.B) <= Tolerance.SamePoint)
        {
            if (segment.Place == strand.Segments.Length - 1)
            {
                return null;
            }

            forward = strand.Segments[segment.Place + 1].Direction;
        }

        return (back, forward);
    }

    private static bool AreSeparated((Spot Back, Spot Forward) one, (Spot Back, Spot Forward) two)
    {
        var forward = AngleFrom(one.Back, one.Forward);
        var (first, second) = (AngleFrom(one.Back, two.Back), AngleFrom(one.Back, two.Forward));
        return !IsSameRay(first, forward)
            && !IsSameRay(second, forward)
            && !IsSameRay(first, 0)
            && !IsSameRay(second, 0)
            && first < forward != second < forward;
    }

    private static double AngleFrom(Spot reference, Spot direction)
    {
        var angle = Math.Atan2(reference.Cross(direction), reference.Dot(direction));
        return angle < 0 ? angle + (2 * Math.PI) : angle;
    }

    private static bool IsSameRay(double a, double b)
    {
        var difference = Math.Abs(a - b);
        return difference < SameRay || difference > (2 * Math.PI) - SameRay;
    }
}
