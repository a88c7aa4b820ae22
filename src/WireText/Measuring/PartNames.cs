namespace WireText.Measuring;

/// <summary>Looks for names of parts that a wire of another part cuts off from them.</summary>
internal static class PartNames
{
    public static IEnumerable<PictureDoubt> Doubts(DrawnPicture picture, StrandMap map)
    {
        var bodies = picture.Bodies.ToLookup(body => body.Part, body => body.Shape.Bounds, StringComparer.Ordinal);
        var lugs = picture
            .Lugs.Select(lug => (lug.Part, lug.Name))
            .Concat(picture.Surfaces.Select(surface => (surface.Part, surface.Name)))
            .ToLookup(lug => lug.Part, lug => lug.Name, StringComparer.Ordinal);
        return from name in picture.Labels
            where name.Thing.Kind == ThingKind.PartName && bodies.Contains(name.Thing.Id)
            let way = Between(bodies[name.Thing.Id].MinBy(name.Bounds.DistanceTo), name.Bounds)
            where way.Length > Tolerance.SamePoint
            from wire in map.Near(way, 0)
                .Where(other => CrossingPoint.DoMeet(way, other.Line))
                .Select(other => map.Strands[other.Strand])
                .Where(strand => !lugs[name.Thing.Id].Any(strand.EndsOn))
                .Select(strand => strand.Wire)
                .Distinct(StringComparer.Ordinal)
            select new PictureDoubt(DoubtKind.PartNameApart, name.Thing, new DrawnThing(ThingKind.Wire, wire));
    }

    /// <summary>The shortest way from a body to a name; of several the one in the middle.</summary>
    private static Segment Between(Frame body, Frame name)
    {
        var (ax, bx) = Nearest(body.Left, body.Right, name.Left, name.Right);
        var (ay, by) = Nearest(body.Top, body.Bottom, name.Top, name.Bottom);
        return new Segment(new Spot(ax, ay), new Spot(bx, by));
    }

    private static (double Own, double Other) Nearest(double low, double high, double otherLow, double otherHigh)
    {
        if (high < otherLow)
        {
            return (high, otherLow);
        }

        var middle = (Math.Max(low, otherLow) + Math.Min(high, otherHigh)) / 2;
        return otherHigh < low ? (low, otherHigh) : (middle, middle);
    }
}
