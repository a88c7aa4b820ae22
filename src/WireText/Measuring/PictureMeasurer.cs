using System.Collections.Immutable;

namespace WireText.Measuring;

/// <summary>Measures a finished drawing from its SVG alone; it shares no code with what places parts and routes wires.</summary>
public static class PictureMeasurer
{
    /// <summary>What the own lead of a small part reaches without a wire, in millimetres: <c>common practice</c>.</summary>
    private const double LongestLead = 35;

    /// <summary>Measures the drawing. Text that is no such drawing gives a measure with an <see cref="PictureMeasure.Error"/>; nothing is thrown.</summary>
    /// <param name="source">The circuit's wires, to count the picture's against; null to leave that out.</param>
    public static PictureMeasure Measure(string svg, IReadOnlyList<ExpectedWire>? source)
    {
        try
        {
            return Measure(SvgPictureReader.Read(svg), source);
        }
        catch (UnreadablePictureException problem)
        {
            return new PictureMeasure { Error = problem.Message };
        }
    }

    private static PictureMeasure Measure(DrawnPicture picture, IReadOnlyList<ExpectedWire>? source)
    {
        var roll = WireRoll.Call(picture, source);
        var work = new WorkLimit();
        var ends = WireEnds.Measure(picture, work);
        var map = new StrandMap(ends.Strands, work);
        var pairs = WirePairs.Measure(map, new Excuses(picture, map));
        var crossingsOf = CountByWire(pairs);
        var extent = ExtentOf(picture);
        var wanted = picture.Wires.Where(wire => wire.WantsTag).Select(wire => wire.Id).ToImmutableArray();
        var tagged = picture.Labels.Select(label => label.Wire).OfType<string>().ToHashSet(StringComparer.Ordinal);
        return new PictureMeasure
        {
            WiresInSource = source?.Count,
            WiresInPicture = roll.Drawn.Length,
            Faults = InOrder([
                .. OfWires(FaultKind.MissingWire, roll.Missing),
                .. OfWires(FaultKind.ExtraWire, roll.Extra),
                .. OfWires(FaultKind.WrongEnd, ends.Wrong.Union(roll.Rerouted, StringComparer.Ordinal)),
                .. pairs.Overlaps,
                .. pairs.Crowding,
                .. WiresAndParts.ThroughBodies(picture, map),
                .. WiresAndParts.FalseJoints(picture, map).Distinct(),
                .. Obstacles.Overlaps(picture, map),
                .. StrayTags(picture, map),
                .. OutsidePage(picture, map),
                .. OfWires(FaultKind.CrampedHop, map.Strands.SelectMany(HopsAndCorners.Cramped)),
            ]),
            Doubts = InOrder([
                .. LugNames.Doubts(picture, map),
                .. PartNames.Doubts(picture, map),
                .. ShortEnds.Doubts(map, pairs),
                .. LongLeads(map, picture),
                .. CutTexts(picture),
            ]),
            TagsWanted = wanted.Length,
            TagsPlaced = wanted.Count(tagged.Contains),
            Crossings = pairs.Crossings.Count(),
            MostCrossingsOnOneWire = crossingsOf.Values.DefaultIfEmpty(0).Max(),
            ShareWithoutCrossing =
                roll.Drawn.Length == 0
                    ? 1
                    : roll.Drawn.Count(wire => !crossingsOf.ContainsKey(wire)) / (double)roll.Drawn.Length,
            Bends = map.Strands.Sum(strand => strand.Turns.Sum()) / (Math.PI / 2),
            Length = map.Strands.Sum(strand => strand.Length),
            LowerBound = map.Strands.Sum(strand => strand.LowerBound),
            Width = extent.Right - extent.Left,
            Height = extent.Bottom - extent.Top,
            PageArea = (picture.Page.Right - picture.Page.Left) * (picture.Page.Bottom - picture.Page.Top),
        };
    }

    private static Dictionary<string, int> CountByWire(WirePairs pairs)
    {
        var counts = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var (first, second) in pairs.Crossings)
        {
            counts[first] = counts.GetValueOrDefault(first) + 1;
            counts[second] = counts.GetValueOrDefault(second) + 1;
        }

        return counts;
    }

    private static IEnumerable<PictureFault> OfWires(FaultKind kind, IEnumerable<string> wires) =>
        wires.Select(wire => new PictureFault(kind, new DrawnThing(ThingKind.Wire, wire)));

    private static IEnumerable<PictureFault> StrayTags(DrawnPicture picture, StrandMap map)
    {
        foreach (var label in picture.Labels.Where(label => label.Wire is not null))
        {
            var isOnWire = map.Near(label.Bounds)
                .Any(segment =>
                    map.Strands[segment.Strand].Wire == label.Wire
                    && !Clipping.InsideFrame(segment.Line, label.Bounds).IsEmpty
                );
            var isLed =
                picture.Led.TryGetValue(label.Wire!, out var dot)
                && map.Strands.Any(strand => strand.Wire == label.Wire && strand.DistanceTo(dot) <= Tolerance.Touch);
            if (!isOnWire && !isLed)
            {
                yield return new PictureFault(FaultKind.StrayTag, label.Thing);
            }
        }
    }

    private static IEnumerable<PictureFault> OutsidePage(DrawnPicture picture, StrandMap map)
    {
        var labels = picture.Labels.Select(label => (label.Thing, label.Bounds));
        var parts = picture.Bodies.Select(body =>
            (Thing: new DrawnThing(ThingKind.Part, body.Part), body.Shape.Bounds)
        );
        var lugs = picture.Lugs.Select(lug => (Thing: new DrawnThing(ThingKind.Lug, lug.Name), lug.Eyelet.Bounds));
        var wires = map.Segments.Select(segment =>
            (Thing: new DrawnThing(ThingKind.Wire, map.Strands[segment.Strand].Wire), segment.Line.Bounds)
        );
        return labels
            .Concat(parts)
            .Concat(lugs)
            .Concat(wires)
            .Where(thing => !picture.Page.Contains(thing.Bounds, Tolerance.Touch))
            .Select(thing => new PictureFault(FaultKind.OutsidePage, thing.Thing))
            .Distinct();
    }

    private static IEnumerable<PictureDoubt> LongLeads(StrandMap map, DrawnPicture picture)
    {
        var leads = picture.Wires.Where(wire => wire.Kind == "part-lead").Select(wire => wire.Id);
        var known = leads.ToHashSet(StringComparer.Ordinal);
        return map
            .Strands.Where(strand => known.Contains(strand.Wire) && strand.Length > LongestLead)
            .Select(strand => new PictureDoubt(DoubtKind.LongLead, new DrawnThing(ThingKind.Wire, strand.Wire)));
    }

    private static IEnumerable<PictureDoubt> CutTexts(DrawnPicture picture) =>
        picture
            .Labels.Where(label => label.Words.EndsWith('…'))
            .Select(label => new PictureDoubt(DoubtKind.CutText, label.Thing));

    private static ImmutableArray<PictureDoubt> InOrder(IEnumerable<PictureDoubt> doubts) =>
        [
            .. doubts
                .Distinct()
                .OrderBy(doubt => doubt.Kind)
                .ThenBy(doubt => doubt.First.ToString(), StringComparer.Ordinal)
                .ThenBy(doubt => doubt.Second?.ToString(), StringComparer.Ordinal),
        ];

    private static Frame ExtentOf(DrawnPicture picture)
    {
        var wires = picture.Wires.Select(wire => wire.Path).Concat(picture.Braids.SelectMany(braid => braid.Tails));
        var corners = wires
            .OfType<DrawnPath>()
            .SelectMany(path => path.Points)
            .Select(spot => Frame.Around(spot, spot));
        var all = picture
            .Bodies.Select(body => body.Shape.Bounds)
            .Concat(picture.Lugs.Select(lug => lug.Eyelet.Bounds))
            .Concat(corners)
            .ToList();
        return all.Count == 0 ? default : all.Aggregate((a, b) => a.With(b));
    }

    private static ImmutableArray<PictureFault> InOrder(IEnumerable<PictureFault> faults) =>
        [
            .. faults
                .OrderBy(fault => fault.Kind)
                .ThenBy(fault => fault.First.ToString(), StringComparer.Ordinal)
                .ThenBy(fault => fault.Second?.ToString(), StringComparer.Ordinal),
        ];
}
