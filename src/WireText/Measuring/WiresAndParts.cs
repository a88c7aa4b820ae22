namespace WireText.Measuring;

/// <summary>What wires do to the parts: run through a body, pass a lug so near that they seem soldered to it.</summary>
internal static class WiresAndParts
{
    public static IEnumerable<PictureFault> ThroughBodies(DrawnPicture picture, StrandMap map)
    {
        var bodies = picture.Bodies.GroupBy(body => body.Part, StringComparer.Ordinal).ToList();
        return bodies
            .SelectMany(body => ThroughBody(picture, map, body.Key, [.. body.Select(shape => shape.Shape)]))
            .Distinct();
    }

    public static IEnumerable<PictureFault> FalseJoints(DrawnPicture picture, StrandMap map)
    {
        foreach (var lug in picture.Lugs)
        {
            foreach (var segment in map.Near(lug.Eyelet.Bounds.Grown(Pitch.FalseJoint)))
            {
                var strand = map.Strands[segment.Strand];
                if (
                    !strand.EndsOn(lug.Name)
                    && segment.Line.DistanceTo(lug.Eyelet.Centre) < Pitch.FalseJoint - Tolerance.SamePoint
                )
                {
                    yield return new PictureFault(
                        FaultKind.FalseJoint,
                        new DrawnThing(ThingKind.Wire, strand.Wire),
                        new DrawnThing(ThingKind.Lug, lug.Name)
                    );
                }
            }
        }
    }

    private static IEnumerable<PictureFault> ThroughBody(
        DrawnPicture picture,
        StrandMap map,
        string part,
        List<Shape> shapes
    )
    {
        var ownEnds = InnerEnds(picture, map, part, shapes);
        var own = picture
            .Lugs.Where(lug => lug.Part == part || picture.Seats.Contains((lug.Part, part)))
            .Select(lug => lug.Name)
            .ToHashSet(StringComparer.Ordinal);
        var near = shapes.SelectMany(shape => map.Near(shape.Bounds)).Select(segment => segment.Strand).Distinct();
        foreach (var strand in near.Select(number => map.Strands[number]).Where(strand => !IsJumper(strand, own)))
        {
            map.Work.Spend((long)strand.Segments.Length * shapes.Count);
            if (LengthInside(strand, shapes, ownEnds) > Pitch.InsideBody)
            {
                yield return new PictureFault(
                    FaultKind.ThroughBody,
                    new DrawnThing(ThingKind.Wire, strand.Wire),
                    new DrawnThing(ThingKind.Part, part)
                );
            }
        }
    }

    /// <summary>A wire from lug to lug of one part, or of what lies on it, lies on that part, as on the bench.</summary>
    private static bool IsJumper(Strand strand, HashSet<string> lugs) =>
        strand.Lugs.Length > 1 && strand.Lugs.All(lugs.Contains);

    /// <summary>The part's surfaces, and those of its lugs that lie inside its own outline.</summary>
    private static HashSet<string> InnerEnds(DrawnPicture picture, StrandMap map, string part, List<Shape> shapes)
    {
        map.Work.Spend(picture.Lugs.Length + picture.Surfaces.Length);
        var inner = picture
            .Lugs.Where(lug => lug.Part == part && shapes.Exists(shape => shape.Holds(lug.Eyelet.Centre, 0)))
            .Select(lug => lug.Name);
        var surfaces = picture.Surfaces.Where(surface => surface.Part == part).Select(surface => surface.Name);
        return inner.Concat(surfaces).ToHashSet(StringComparer.Ordinal);
    }

    /// <summary>The way from the outline to a wire's own inner lug or surface is not counted; coming in once more is.</summary>
    private static double LengthInside(Strand strand, List<Shape> shapes, HashSet<string> ownEnds)
    {
        var inside = new IntervalSet();
        var start = 0.0;
        foreach (var segment in strand.Segments)
        {
            foreach (var shape in shapes)
            {
                inside.Add(shape.Inside(segment).Shifted(start));
            }

            start += segment.Length;
        }

        var mayEndInside = strand.Lugs.Any(ownEnds.Contains);
        return inside
            .Merged()
            .Where(interval => !(mayEndInside && ReachesAnEnd(interval, start)))
            .Sum(interval => interval.Length);
    }

    private static bool ReachesAnEnd(Interval interval, double length) =>
        interval.From < Tolerance.Touch || interval.To > length - Tolerance.Touch;
}
