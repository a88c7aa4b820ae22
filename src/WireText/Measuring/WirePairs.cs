namespace WireText.Measuring;

/// <summary>What two different wires do to each other: cross, overlap, crowd.</summary>
internal sealed class WirePairs
{
    /// <summary>Directions within this sine of each other are parallel.</summary>
    private const double ParallelSine = 0.1;

    private readonly StrandMap map;
    private readonly Excuses excuses;
    private readonly Dictionary<(int, int), List<Spot>> crossings = [];
    private readonly HashSet<OffendingPair> overlaps = [];
    private readonly HashSet<OffendingPair> crowding = [];

    private WirePairs(StrandMap map, Excuses excuses)
    {
        this.map = map;
        this.excuses = excuses;
    }

    public IEnumerable<OffendingPair> Overlaps => overlaps;

    public IEnumerable<OffendingPair> Crowding => crowding.Except(overlaps);

    /// <summary>The two wires of each crossing point.</summary>
    public IEnumerable<(string First, string Second)> Crossings =>
        from entry in crossings
        from spot in entry.Value
        select (map.Strands[entry.Key.Item1].Wire, map.Strands[entry.Key.Item2].Wire);

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

    /// <summary>Measures how far one strand runs beside each other strand.</summary>
    private void FindCompany(int strand)
    {
        var (near, on) = (new SortedDictionary<int, double>(), new SortedDictionary<int, double>());
        foreach (var segment in map.Strands[strand].Segments)
        {
            var others = map.Near(segment, Pitch.Crowding).Where(other => AreDifferent(strand, other.Strand));
            foreach (var company in others.GroupBy(other => other.Strand))
            {
                AddCompany(strand, segment, company.Key, [.. company.Select(other => other.Line)], near, on);
            }
        }

        Report(strand, on, overlaps);
        Report(strand, near, crowding);
    }

    private void AddCompany(
        int strand,
        Segment segment,
        int other,
        List<Segment> lines,
        SortedDictionary<int, double> near,
        SortedDictionary<int, double> on
    )
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

        on[other] = on.GetValueOrDefault(other) + upon.LengthWithout(excused);

        var key = strand < other ? (strand, other) : (other, strand);
        var crossed = crossings.GetValueOrDefault(key, []);
        map.Work.Spend(crossed.Count * lines.Count);
        foreach (var crossing in crossed)
        {
            excused.Add(Clipping.InsideDisc(segment, crossing, Pitch.Crossing));
        }

        near[other] = near.GetValueOrDefault(other) + nearby.LengthWithout(excused);
    }

    private void Report(int strand, SortedDictionary<int, double> lengths, HashSet<OffendingPair> reported)
    {
        foreach (var (other, length) in lengths)
        {
            if (length > Pitch.Together)
            {
                reported.Add(Pairs.Of(Pairs.Wire(map.Strands[strand].Wire), Pairs.Wire(map.Strands[other].Wire)));
            }
        }
    }
}
