using System.Collections.Immutable;

namespace WireText.Measuring;

/// <summary>Finds labels, bodies, lugs, wires and hops that lie on one another. Two wires, a wire and a body, a wire and a lug have measures of their own.</summary>
internal sealed class Obstacles
{
    private readonly StrandMap map;
    private readonly List<Obstacle> all = [];
    private readonly BoxIndex index;
    private readonly Dictionary<string, string> partOfLug;
    private readonly HashSet<(string Part, string On)> seats;
    private readonly Dictionary<string, HashSet<string>> partsOfWire = new(StringComparer.Ordinal);

    private enum Kind
    {
        Label,
        Body,
        Lug,
        Hop,
    }

    private Obstacles(DrawnPicture picture, StrandMap map)
    {
        this.map = map;
        index = new BoxIndex(map.Work);
        seats = picture.Seats;
        partOfLug = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var (name, part) in picture.Lugs.Select(lug => (lug.Name, lug.Part)))
        {
            partOfLug[name] = part;
        }

        foreach (var surface in picture.Surfaces)
        {
            partOfLug[surface.Name] = surface.Part;
        }

        foreach (var strand in map.Strands)
        {
            partsOfWire[strand.Wire] = [.. strand.Lugs.Select(lug => partOfLug.GetValueOrDefault(lug, ""))];
        }
    }

    public static IEnumerable<PictureFault> Overlaps(DrawnPicture picture, StrandMap map)
    {
        var obstacles = new Obstacles(picture, map);
        obstacles.Collect(picture);
        return obstacles.Pairs().Distinct();
    }

    private void Collect(DrawnPicture picture)
    {
        foreach (var label in picture.Labels)
        {
            Add(new Obstacle(Kind.Label, label.Thing, label.Part, label.Wire, new Shape.Rectangle(label.Bounds)));
        }

        foreach (var body in picture.Bodies)
        {
            Add(new Obstacle(Kind.Body, new DrawnThing(ThingKind.Part, body.Part), body.Part, null, body.Shape));
        }

        foreach (var lug in picture.Lugs)
        {
            Add(new Obstacle(Kind.Lug, new DrawnThing(ThingKind.Lug, lug.Name), lug.Part, null, lug.Eyelet));
        }

        var onSurfaces = picture
            .Surfaces.Select(surface => surface.Name)
            .Except(picture.Lugs.Select(lug => lug.Name), StringComparer.Ordinal)
            .ToHashSet(StringComparer.Ordinal);
        foreach (var joint in picture.Joints.Where(joint => onSurfaces.Contains(joint.Lug)))
        {
            var thing = new DrawnThing(ThingKind.Joint, $"{joint.Lug}:{joint.Wire}");
            Add(new Obstacle(Kind.Lug, thing, partOfLug[joint.Lug], joint.Wire, joint.Blob));
        }

        foreach (var strand in map.Strands)
        {
            foreach (var hop in strand.Path.Hops)
            {
                var shape = new Shape.Rectangle(hop.Bounds);
                Add(new Obstacle(Kind.Hop, new DrawnThing(ThingKind.Hop, strand.Wire), null, strand.Wire, shape));
            }
        }
    }

    private void Add(Obstacle obstacle)
    {
        index.Add(all.Count, obstacle.Shape.Bounds);
        all.Add(obstacle);
    }

    private IEnumerable<PictureFault> Pairs()
    {
        for (var i = 0; i < all.Count; i++)
        {
            foreach (var j in index.Near(all[i].Shape.Bounds).Where(j => j > i))
            {
                if (MustKeepApart(all[i], all[j]) && Touching.Overlap(all[i].Shape, all[j].Shape))
                {
                    yield return Overlap(all[i].Thing, all[j].Thing);
                }
            }

            foreach (var wire in WiresUnder(all[i]))
            {
                yield return Overlap(all[i].Thing, new DrawnThing(ThingKind.Wire, wire));
            }
        }
    }

    private static PictureFault Overlap(DrawnThing one, DrawnThing two) =>
        PictureFault.OfPair(FaultKind.LabelOverlap, one, two);

    private bool MustKeepApart(Obstacle one, Obstacle two)
    {
        if (one.Kind > two.Kind)
        {
            return MustKeepApart(two, one);
        }

        return (one.Kind, two.Kind) switch
        {
            (Kind.Label, Kind.Body) => one.Thing.Kind != ThingKind.Finding // its number may lie on the body that it marks
                && one.Part != two.Part
                && !EndsOn(one.Wire, two.Part)
                && !LiesOn(one, two),
            (Kind.Body, Kind.Body) => one.Part != two.Part && !LiesOn(one, two) && !LiesOn(two, one),
            (Kind.Body, Kind.Lug) => one.Part != two.Part && !LiesOn(two, one),
            (Kind.Body, Kind.Hop) => !partsOfWire[two.Wire!].Contains(one.Part!),
            (Kind.Lug, Kind.Lug) => one.Thing != two.Thing,
            (Kind.Hop, Kind.Hop) => one.Wire != two.Wire,
            _ => true,
        };
    }

    private bool LiesOn(Obstacle one, Obstacle two) =>
        one.Part is { } part && two.Part is { } host && seats.Contains((part, host));

    /// <summary>A wire may carry its tag over a part on which it ends.</summary>
    private bool EndsOn(string? wire, string? part) =>
        wire is not null && partsOfWire.TryGetValue(wire, out var parts) && parts.Contains(part ?? "");

    private IEnumerable<string> WiresUnder(Obstacle obstacle)
    {
        if (obstacle.Kind is Kind.Body or Kind.Lug)
        {
            yield break;
        }

        var bounds = obstacle.Shape.Bounds;
        foreach (var segment in map.Near(bounds.Grown(Pitch.One)))
        {
            var strand = map.Strands[segment.Strand];
            if (strand.Wire == obstacle.Wire || (obstacle.Kind == Kind.Hop && IsUnder(segment.Line, bounds)))
            {
                continue;
            }

            var room = (strand.CoreWidth / 2) - Tolerance.Touch;
            if (!Clipping.InsideFrame(segment.Line, bounds.Grown(room)).IsEmpty)
            {
                yield return strand.Wire;
            }
        }
    }

    /// <summary>True for the wire that the hop goes over: it runs through the middle of the hop.</summary>
    private static bool IsUnder(Segment line, Frame hop)
    {
        var middle = new Frame(
            hop.Left + ((hop.Right - hop.Left) / 3),
            hop.Top + ((hop.Bottom - hop.Top) / 3),
            hop.Right - ((hop.Right - hop.Left) / 3),
            hop.Bottom - ((hop.Bottom - hop.Top) / 3)
        );
        return !Clipping.InsideFrame(line, middle).IsEmpty;
    }

    /// <param name="Part">The part that it belongs to, or null.</param>
    /// <param name="Wire">The wire that it belongs to, or null.</param>
    private sealed record Obstacle(Kind Kind, DrawnThing Thing, string? Part, string? Wire, Shape Shape);
}

/// <summary>Whether two shapes share more than a hair of the page.</summary>
internal static class Touching
{
    public static bool Overlap(Shape one, Shape two) =>
        (one, two) switch
        {
            (Shape.Disc a, Shape.Disc b) => a.Centre.DistanceTo(b.Centre) < a.Radius + b.Radius - Tolerance.Touch,
            (Shape.Disc a, Shape.Rectangle b) => b.Frame.DistanceTo(a.Centre) < a.Radius - Tolerance.Touch,
            (Shape.Rectangle a, Shape.Disc b) => a.Frame.DistanceTo(b.Centre) < b.Radius - Tolerance.Touch,
            _ => one.Bounds.Overlaps(two.Bounds, Tolerance.Touch),
        };
}
