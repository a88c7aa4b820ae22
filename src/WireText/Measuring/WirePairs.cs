namespace WireText.Measuring;

/// <summary>What two different wires do to each other: cross, overlap, crowd.</summary>
internal sealed class WirePairs
{
    /// <summary>Directions within this sine of each other are parallel.</summary>
    private const double ParallelSine = 0.1;

    private readonly StrandMap map;
    private readonly Excuses excuses;
    private readonly Dictionary<(int, int), List<Spot>> crossings = [];
    private readonly Dictionary<(int, int), double> lengthNear = [];
    private readonly Dictionary<(int, int), double> lengthOn = [];

    private WirePairs(StrandMap map, Excuses excuses)
    {
        this.map = map;
        this.excuses = excuses;
    }

    public IEnumerable<PictureFault> Overlaps => Together(lengthOn, FaultKind.Overlap);

    /// <summary>Those that overlap are not told again.</summary>
    public IEnumerable<PictureFault> Crowding =>
        Together(lengthNear, FaultKind.Crowding).Except(Together(lengthOn, FaultKind.Crowding));

    /// <summary>The two wires of each crossing point.</summary>
    public IEnumerable<(string First, string Second)> Crossings =>
        from entry in crossings
        from spot in entry.Value
        select (map.Strands[entry.Key.Item1].Wire, map.Strands[entry.Key.Item2].Wire);

    /// <summary>Every crossing point, with the numbers of the two strands.</summary>
    public IEnumerable<(int First, int Second, Spot At)> Spots =>
        from entry in crossings
        from spot in entry.Value
        select (entry.Key.Item1, entry.Key.Item2, spot);

    public static WirePairs Measure(StrandMap map, Excuses excuses)
    {
        var pairs = new WirePairs(map, excuses);
        foreach (var segment in map.Segments)
        {
            pairs.FindCrossings(segment);
        }

        for (var strand = 0; strand < map.Strands.Length; strand++)
        {
            pairs.FindCompany(strand);
        }

        return pairs;
    }

    private bool AreDifferent(int a, int b) =>
        !string.Equals(map.Strands[a].Wire, map.Strands[b].Wire, StringComparison.Ordinal);

    private void FindCrossings(PlacedSegment segment)
    {
        foreach (var other in map.Near(segment.Line, Tolerance.Touch))
        {
            if (
                other.Strand > segment.Strand
                && AreDifferent(segment.Strand, other.Strand)
                && CrossingPoint.Find(map, segment, other) is { } spot
            )
            {
                AddCrossing(segment.Strand, other.Strand, spot);
            }
        }
    }

    private void AddCrossing(int first, int second, Spot spot)
    {
        if (excuses.Between(first, second).Any(shared => shared.DistanceTo(spot) < Pitch.SharedEnd))
        {
            return;
        }

        if (!crossings.TryGetValue((first, second), out var spots))
        {
            crossings[(first, second)] = spots = [];
        }

        map.Work.Spend(spots.Count);
        // A crossing at a corner is found by both of the corner's segments.
        if (!spots.Exists(known => known.DistanceTo(spot) < Tolerance.Touch))
        {
            spots.Add(spot);
        }
    }

    /// <summary>Measures, along one strand, how far it runs beside each other strand.</summary>
    private void FindCompany(int strand)
    {
        foreach (var segment in map.Strands[strand].Segments)
        {
            var others = map.Near(segment, Pitch.Crowding).Where(other => AreDifferent(strand, other.Strand));
            foreach (var company in others.GroupBy(other => other.Strand))
            {
                AddCompany(strand, segment, company.Key, [.. company.Select(other => other.Line)]);
            }
        }
    }

    private void AddCompany(int strand, Segment segment, int other, List<Segment> lines)
    {
        var (nearby, upon, excused) = (new IntervalSet(), new IntervalSet(), new IntervalSet());
        foreach (var line in lines)
        {
            nearby.Add(Clipping.Near(segment, line, Pitch.Crowding));
            if (Math.Abs(segment.Direction.Cross(line.Direction)) < ParallelSine)
            {
                upon.Add(Clipping.Near(segment, line, Pitch.Overlap));
            }
        }

        foreach (var shared in excuses.Between(strand, other))
        {
            excused.Add(Clipping.InsideDisc(segment, shared, Pitch.SharedEnd));
        }

        Grow(lengthOn, strand, other, upon.LengthWithout(excused));

        var key = strand < other ? (strand, other) : (other, strand);
        var crossed = crossings.GetValueOrDefault(key, []);
        map.Work.Spend(crossed.Count * lines.Count);
        foreach (var crossing in crossed)
        {
            excused.Add(Clipping.InsideDisc(segment, crossing, Pitch.Crossing));
        }

        Grow(lengthNear, strand, other, nearby.LengthWithout(excused));
    }

    private static void Grow(Dictionary<(int, int), double> lengths, int along, int other, double length) =>
        lengths[(along, other)] = lengths.GetValueOrDefault((along, other)) + length;

    /// <summary>The pairs that run together for too long, whichever of the two one measures along.</summary>
    private IEnumerable<PictureFault> Together(Dictionary<(int, int), double> lengths, FaultKind kind) =>
        from entry in lengths
        let back = lengths.GetValueOrDefault((entry.Key.Item2, entry.Key.Item1))
        where entry.Key.Item1 < entry.Key.Item2 && Math.Min(entry.Value, back) > Pitch.Together
        select PictureFault.OfPair(kind, WireOf(entry.Key.Item1), WireOf(entry.Key.Item2));

    private DrawnThing WireOf(int strand) => new(ThingKind.Wire, map.Strands[strand].Wire);
}
