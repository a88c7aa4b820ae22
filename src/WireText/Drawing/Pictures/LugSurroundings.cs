using System.Collections.Immutable;
using WireText.Drawing.Faces;
using WireText.Drawing.Lettering;
using WireText.Geometry;

namespace WireText.Drawing.Pictures;

/// <summary>All on which the places for the name of one lug depend. On the page, in millimetres.</summary>
/// <param name="Name">The size of its name.</param>
/// <param name="Stem">What the name belongs to: the lug, or a lead or tab from the edge of the body on; on a pot's board the lug alone.</param>
/// <param name="Outward">The side that it points to.</param>
/// <param name="Reached">What lies outside is in the way of no place for the name.</param>
/// <param name="Space">What is taken there.</param>
/// <param name="Liked">The side of the lug on which its name stands on a part alike, if it can; null for none.</param>
/// <param name="Others">What the name could be taken to belong to: the other lugs of its part, then those of other parts.</param>
/// <param name="Joints">Joints on cases, which it could be taken to belong to too.</param>
internal sealed record LugSurroundings(
    FaceLug Lug,
    Size Name,
    Point At,
    Box Stem,
    Side Outward,
    Box Reached,
    LabelSpace Space,
    Side? Liked,
    ImmutableArray<Box> Others,
    ImmutableArray<Point> Joints
)
{
    /// <summary>For each lug of a part.</summary>
    public static ImmutableArray<LugSurroundings> Of(Scene scene, PlacedFace part, LabelSpace space, NameSides sides)
    {
        const double Around = 30;
        var near = space.Near(part.Bounds.Grown(Around));
        Point[] at = [.. part.Face.Lugs.Select(lug => part.OnPage(lug.At))];
        Box[] stems = [.. part.Face.Lugs.Select(lug => StemOf(part, lug))];
        Box[] foreign =
        [
            .. scene
                .Parts.Where(other => other != part && Box.Distance(other.Bounds, part.Bounds) < Around)
                .SelectMany(other => other.Face.Lugs.Select(lug => other.OnPage(lug.At)))
                .Where(lug => at.Any(own => Point.Distance(own, lug) < 4 * LugLabels.Reach))
                .Select(lug => Box.Spanning(lug, lug)),
        ];
        Point[] joints =
        [
            .. scene
                .Parts.Where(other => Box.Distance(other.Bounds, part.Bounds) < Around)
                .SelectMany(other => other.Face.Surfaces.SelectMany(scene.JointsOn))
                .Select(joint => joint.At),
        ];
        var descent = LugLabels.DescentOf(part);
        return
        [
            .. part.Face.Lugs.Select(
                (lug, i) => Of(part, lug, stems[i], stems.Where((_, other) => other != i).Concat(foreign))
            ),
        ];

        LugSurroundings Of(PlacedFace part, FaceLug lug, Box stem, IEnumerable<Box> others)
        {
            var name = new Size(
                DrawnText.Width(lug.Label, TextWeight.Medium, Tokens.LugLabelSize),
                (Tokens.LugLabelSize * DrawnText.CapHeight) + descent
            );
            var places = stem.Grown(LugLabels.Reach);
            var (width, height) = (places.Width + name.Width, places.Height + name.Height);
            var named = Box.Around(places.Centre, width + name.Width, height + name.Height);
            var reached = named.Grown(Tokens.WireCore + Tokens.Casing + Tokens.LabelGap);
            return new LugSurroundings(
                lug,
                name,
                part.OnPage(lug.At),
                stem,
                part.OnPage(lug.Outward),
                reached,
                near.Near(reached),
                sides.LikedFor(scene, part, lug),
                [.. others.Where(other => Box.Distance(named, other) < LugLabels.Unseen)],
                [.. joints.Where(joint => named.DistanceTo(joint) < LugLabels.Unseen)]
            );
        }
    }

    /// <summary>True when all of it is the same: then the name has the same places.</summary>
    public bool IsSame(LugSurroundings other) =>
        (Lug.Label, Lug.At, Lug.Outward) == (other.Lug.Label, other.Lug.At, other.Lug.Outward)
        && (Name, At, Stem, Outward, Liked) == (other.Name, other.At, other.Stem, other.Outward, other.Liked)
        && Others.AsSpan().SequenceEqual(other.Others.AsSpan())
        && Joints.AsSpan().SequenceEqual(other.Joints.AsSpan())
        && Space.IsSame(other.Space, Reached);

    private static Box StemOf(PlacedFace part, FaceLug lug)
    {
        var tip = part.OnPage(lug.At);
        var isOnBoard = lug.Look == LugLook.Tab && part.Face.Layout.Body.Length > 1;
        return lug.Look == LugLook.Riveted || isOnBoard
            ? Box.Spanning(tip, tip)
            : Box.Spanning(part.OnPage(part.RootOf(lug).Towards(lug.At, Tokens.EyeletDiameter)), tip);
    }
}
