namespace WireText.Measuring;

/// <summary>A hop needs straight wire around it, or the eye takes it for the corner.</summary>
internal static class HopsAndCorners
{
    /// <summary>A smaller turn, in radians, is the last short stretch to a lug that is off the lanes.</summary>
    private const double LeastTurn = 0.2;

    /// <summary>The strand's wire, once for each cramped hop.</summary>
    public static IEnumerable<string> Cramped(Strand strand) =>
        strand.Path.Hops.Where(hop => IsCramped(strand, hop.Centre)).Select(_ => strand.Wire);

    private static bool IsCramped(Strand strand, Spot hop)
    {
        var segments = strand.Segments;
        var place = Enumerable.Range(0, segments.Length).MinBy(i => segments[i].DistanceTo(hop));
        return (place > 0 && IsCorner(segments[place - 1], segments[place]) && IsNear(segments[place].A))
            || (
                place < segments.Length - 1
                && IsCorner(segments[place], segments[place + 1])
                && IsNear(segments[place].B)
            );

        bool IsNear(Spot corner) => corner.DistanceTo(hop) < Pitch.Hop - Tolerance.SamePoint;
    }

    private static bool IsCorner(Segment before, Segment after) =>
        before.Direction.Dot(after.Direction) < Math.Cos(LeastTurn);
}
