using System.Collections.Immutable;
using WireText.Drawing.Faces;
using WireText.Drawing.Lettering;
using WireText.Geometry;

namespace WireText.Drawing.Pictures;

/// <summary>The tag of a wire that has no room for it: apart from the wire, at the end of a thin line with a dot on the wire.</summary>
/// <param name="From">The dot.</param>
/// <param name="To">The nearest point of the tag.</param>
internal sealed record TagLeader(Box Box, Point From, Point To)
{
    /// <summary>How far from the wire a place is looked for, along and across, and in which steps, in millimetres.</summary>
    private const int Reach = 10;
    private const double Step = 1;

    /// <summary>The line is no longer than this: a longer one is not followed at a glance. Chosen by eye.</summary>
    private const double Longest = 9;

    /// <summary>What of the wire is left at its ends, and from dot to dot, in millimetres.</summary>
    private const double FromEnds = 2.2;
    private const double Along = 1;

    /// <summary>Each other wire that the line crosses is worth so many millimetres of it. Chosen.</summary>
    private const double PerWire = 5;

    /// <summary>A place for the tag of each wire that has none, by the wire's id; taken from now on.</summary>
    public static ImmutableSortedDictionary<string, TagLeader> Of(Scene scene, LabelSpace space)
    {
        var found = ImmutableSortedDictionary.CreateBuilder<string, TagLeader>(StringComparer.Ordinal);
        foreach (var wire in scene.Wires.Where(wire => wire.Route.Tag is null))
        {
            if (WireFaces.TagSize(wire.Wire) is { } size && Find(scene, space, wire, size) is { } leader)
            {
                found[wire.Wire.Id] = leader;
                space.Take(leader.Box);
            }
        }

        return found.ToImmutable();
    }

    private static TagLeader? Find(Scene scene, LabelSpace space, SceneWire wire, Size size)
    {
        ImmutableArray<Box> foreign =
        [
            .. scene
                .Parts.Where(part =>
                    !part.Face.Lugs.Any(lug => wire.Wire.Touches(lug.Lug))
                    && !part.Face.Surfaces.Any(surface => wire.Wire.Touches(surface.Lug))
                )
                .Select(part => part.Bounds),
        ];
        TagLeader? best = null;
        var least = double.PositiveInfinity;
        foreach (var dot in DotsOn(wire).Where(space.IsClear))
        {
            for (var row = -Reach; row <= Reach; row++)
            {
                for (var column = -Reach; column <= Reach; column++)
                {
                    var middle = new Point(dot.X + (column * Step), dot.Y + (row * Step));
                    var box = Box.Around(middle, size.Width, size.Height);
                    var to = box.NearestTo(dot);
                    var length = Point.Distance(dot, to);
                    if (
                        length is > Tokens.WireCore and <= Longest
                        && length < least
                        && space.IsFree(box)
                        && !foreign.Any(box.Overlaps)
                        && space.IsLineFree(dot, to)
                    )
                    {
                        var cost = length + (PerWire * space.WiresAcross(dot, to));
                        (best, least) = cost < least ? (new TagLeader(box, dot, to), cost) : (best, least);
                    }
                }
            }
        }

        return best;
    }

    /// <summary>Places on the wire, away from its ends.</summary>
    private static IEnumerable<Point> DotsOn(SceneWire wire)
    {
        var points = wire.Route.Points;
        for (var i = 1; i < points.Length; i++)
        {
            var (from, to) = (points[i - 1], points[i]);
            var length = Point.Distance(from, to);
            var (first, last) = (i == 1 ? FromEnds : 0, i == points.Length - 1 ? length - FromEnds : length);
            for (var along = first; along <= last; along += Along)
            {
                yield return from.Towards(to, along);
            }
        }
    }
}
