namespace WireText.Measuring;

/// <summary>Where a wire is crossed so near to its end that the eye cannot tell which of the two ends there.</summary>
internal static class ShortEnds
{
    /// <summary>The way along a wire, from its end to the middle of a crossing, that must be free, in millimetres.</summary>
    private const double Free = 3;

    public static IEnumerable<PictureDoubt> Doubts(StrandMap map, WirePairs pairs) =>
        from crossing in pairs.Spots
        from end in new[]
        {
            (Strand: crossing.First, Other: crossing.Second),
            (Strand: crossing.Second, Other: crossing.First),
        }
        let strand = map.Strands[end.Strand]
        let along = AlongOf(strand, crossing.At)
        where along < Free || strand.Length - along < Free
        select new PictureDoubt(
            DoubtKind.ShortEnd,
            new DrawnThing(ThingKind.Wire, strand.Wire),
            new DrawnThing(ThingKind.Wire, map.Strands[end.Other].Wire)
        );

    private static double AlongOf(Strand strand, Spot spot)
    {
        var before = 0.0;
        foreach (var segment in strand.Segments)
        {
            if (segment.DistanceTo(spot) <= Tolerance.Touch)
            {
                return before + segment.A.DistanceTo(spot);
            }

            before += segment.Length;
        }

        return strand.Length / 2;
    }
}
