using System.Collections.Immutable;

namespace WireText.Measuring;

/// <summary>Looks whether each name of a lug can be taken for that lug's alone.</summary>
internal sealed class LugNames
{
    /// <summary>A name must be nearer to its own lug than to any other by more than this, in millimetres.</summary>
    private const double Nearer = 0.4;

    /// <summary>What a name keeps from joints on a case, in millimetres.</summary>
    private const double FromJoints = 3;

    /// <summary>Lugs of a part that are no more than this out of line, in millimetres, are a row.</summary>
    private const double InLine = 0.5;

    /// <summary>Two lugs, such as tip and sleeve, have their names apart with good reason.</summary>
    private const int LeastInARow = 3;

    private readonly DrawnPicture picture;
    private readonly StrandMap map;
    private readonly ImmutableArray<Named> names;
    private readonly ImmutableArray<Obstacle> metal;

    private sealed record Named(DrawnLug Lug, Frame Name)
    {
        public DrawnThing Thing => new(ThingKind.LugLabel, Lug.Name);

        /// <summary>From the lug, or from the tab that leads to it out of the body.</summary>
        public double Distance { get; init; } = Name.DistanceTo(Lug.Eyelet.Centre);
    }

    private sealed record Obstacle(DrawnThing Thing, string Lug, Shape.Disc Disc, bool IsOnSurface);

    private LugNames(DrawnPicture picture, StrandMap map)
    {
        (this.picture, this.map) = (picture, map);
        var lugs = picture.Lugs.ToDictionary(lug => lug.Name, StringComparer.Ordinal);
        var surfaces = picture.Surfaces.Select(surface => surface.Name).Except(lugs.Keys, StringComparer.Ordinal);
        var onSurfaces = surfaces.ToHashSet(StringComparer.Ordinal);
        names =
        [
            .. picture
                .Labels.Where(label => label.Thing.Kind == ThingKind.LugLabel && lugs.ContainsKey(label.Thing.Id))
                .Where(label => !picture.Led.ContainsKey(label.Thing.Id))
                .Select(label => NamedBy(lugs[label.Thing.Id], label.Bounds)),
        ];
        metal =
        [
            .. picture.Lugs.Select(lug => new Obstacle(
                new DrawnThing(ThingKind.Lug, lug.Name),
                lug.Name,
                lug.Eyelet,
                IsOnSurface: false
            )),
            .. picture
                .Joints.Where(joint => onSurfaces.Contains(joint.Lug))
                .Select(joint => new Obstacle(
                    new DrawnThing(ThingKind.Joint, $"{joint.Lug}:{joint.Wire}"),
                    joint.Lug,
                    joint.Blob,
                    IsOnSurface: true
                )),
        ];
    }

    private Named NamedBy(DrawnLug lug, Frame name)
    {
        var at = lug.Eyelet.Centre;
        var tabs = picture
            .Bodies.Where(body => body.Part == lug.Part)
            .Select(body => body.Shape.Bounds)
            .Select(body => new Spot(Math.Clamp(at.X, body.Left, body.Right), Math.Clamp(at.Y, body.Top, body.Bottom)))
            .Select(root => Frame.Around(at, root));
        var named = new Named(lug, name);
        return named with { Distance = tabs.Select(name.DistanceTo).Append(named.Distance).Min() };
    }

    public static IEnumerable<PictureDoubt> Doubts(DrawnPicture picture, StrandMap map)
    {
        var reading = new LugNames(picture, map);
        return reading
            .Unnamed()
            .Concat(reading.names.SelectMany(reading.NearOthers))
            .Concat(reading.names.SelectMany(reading.BehindWires))
            .Concat(reading.OutOfRow());
    }

    private IEnumerable<PictureDoubt> Unnamed()
    {
        var named = names.Select(name => name.Lug.Name).Concat(picture.Led.Keys).ToHashSet(StringComparer.Ordinal);
        var wired = picture
            .Wires.SelectMany(wire => new[] { wire.From, wire.To })
            .Concat(picture.Braids.SelectMany(braid => new[] { braid.From, braid.To }))
            .ToHashSet(StringComparer.Ordinal);
        var withTwoLeads = picture
            .Bodies.Where(body => body.Kind is "cap" or "resistor" or "inductor")
            .Select(body => body.Part)
            .ToHashSet(StringComparer.Ordinal);
        return from part in picture.Lugs.GroupBy(lug => lug.Part, StringComparer.Ordinal)
            where part.Count() + picture.Surfaces.Count(surface => surface.Part == part.Key) > 1
            where !withTwoLeads.Contains(part.Key) || part.Any(lug => named.Contains(lug.Name))
            from lug in part
            where wired.Contains(lug.Name) && !named.Contains(lug.Name)
            select new PictureDoubt(DoubtKind.UnnamedLug, new DrawnThing(ThingKind.Lug, lug.Name));
    }

    private IEnumerable<PictureDoubt> NearOthers(Named name)
    {
        map.Work.Spend(metal.Length);
        foreach (var other in metal.Where(other => other.Lug != name.Lug.Name))
        {
            var distance = name.Name.DistanceTo(other.Disc.Centre);
            if (distance < name.Distance + Nearer)
            {
                yield return new PictureDoubt(DoubtKind.NameNearAnother, name.Thing, other.Thing);
            }
            else if (other.IsOnSurface && distance - other.Disc.Radius < FromJoints)
            {
                yield return new PictureDoubt(DoubtKind.JointNearName, name.Thing, other.Thing);
            }
        }
    }

    private IEnumerable<PictureDoubt> BehindWires(Named name)
    {
        var at = name.Lug.Eyelet.Centre;
        var nearest = new Spot(
            Math.Clamp(at.X, name.Name.Left, name.Name.Right),
            Math.Clamp(at.Y, name.Name.Top, name.Name.Bottom)
        );
        if (nearest.DistanceTo(at) <= Tolerance.SamePoint)
        {
            yield break;
        }

        var way = new Segment(at, nearest);
        var wires = map.Near(way, 0)
            .Where(other => !map.Strands[other.Strand].EndsOn(name.Lug.Name) && CrossingPoint.DoMeet(way, other.Line))
            .Select(other => map.Strands[other.Strand].Wire)
            .Distinct(StringComparer.Ordinal);
        foreach (var wire in wires)
        {
            yield return new PictureDoubt(DoubtKind.NameBehindAWire, name.Thing, new DrawnThing(ThingKind.Wire, wire));
        }
    }

    private IEnumerable<PictureDoubt> OutOfRow() =>
        from part in names.GroupBy(name => (name.Lug.Part, IsOnBody(name.Lug)))
        from row in RowsOf([.. part])
        where row.Length >= LeastInARow
        let most = row.GroupBy(SideOf).MaxBy(side => side.Count())!.Key
        from name in row
        where SideOf(name) != most
        select new PictureDoubt(DoubtKind.NameOutOfRow, new DrawnThing(ThingKind.Lug, name.Lug.Name));

    /// <summary>The lugs on a body and those that reach out of it stand in rows of their own.</summary>
    private bool IsOnBody(DrawnLug lug) =>
        picture.Bodies.Any(body => body.Part == lug.Part && body.Shape.Holds(lug.Eyelet.Centre, 0));

    /// <summary>Rows run the long way of a part's lugs.</summary>
    private static IEnumerable<ImmutableArray<Named>> RowsOf(ImmutableArray<Named> part)
    {
        var centres = part.Select(name => name.Lug.Eyelet.Centre).ToList();
        var isWide =
            centres.Max(at => at.X) - centres.Min(at => at.X) >= centres.Max(at => at.Y) - centres.Min(at => at.Y);
        var row = ImmutableArray.CreateBuilder<Named>();
        foreach (var name in part.OrderBy(Across))
        {
            if (row.Count > 0 && Across(name) - Across(row[0]) > InLine)
            {
                yield return row.ToImmutable();
                row.Clear();
            }

            row.Add(name);
        }

        yield return row.ToImmutable();

        double Across(Named name) => isWide ? name.Lug.Eyelet.Centre.Y : name.Lug.Eyelet.Centre.X;
    }

    /// <summary>Where the name stands as seen from its lug: the side on which most of it lies.</summary>
    private static (int X, int Y) SideOf(Named name)
    {
        var at = name.Lug.Eyelet.Centre;
        var left = at.X - name.Name.Right;
        var right = name.Name.Left - at.X;
        var above = at.Y - name.Name.Bottom;
        var below = name.Name.Top - at.Y;
        var most = Math.Max(Math.Max(left, right), Math.Max(above, below));
        return most == above ? (0, -1)
            : most == below ? (0, 1)
            : most == left ? (-1, 0)
            : (1, 0);
    }
}
