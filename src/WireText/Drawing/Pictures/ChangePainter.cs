using System.Collections.Immutable;
using WireText.Comparing;
using WireText.Drawing.Faces;
using WireText.Drawing.Layout;
using WireText.Drawing.Shapes;
using WireText.Geometry;

namespace WireText.Drawing.Pictures;

/// <summary>Paints how a circuit differs from an earlier one: what goes is dashed and cut or crossed out, and each change has its number.</summary>
internal sealed class ChangePainter(Scene scene, LabelSpace space, Overlay overlay)
{
    /// <summary>Dash and gap of a wire that goes, in millimetres. Chosen by eye.</summary>
    private static readonly ImmutableArray<double> Dashes = [2.2, 1.6];

    /// <summary>Half the length of the strokes of a cut mark, and half the way between them, in millimetres. Chosen by eye.</summary>
    private static readonly Point CutStroke = new(0.9, 1.8);
    private const double CutGap = 0.8;
    private const double CutLine = 0.35;

    /// <summary>How far a cut mark keeps off what lies on its wire, in millimetres. Chosen by eye.</summary>
    private const double CutClearance = 2;

    /// <summary>Where along a wire its cut mark may stand, liked best first.</summary>
    private static readonly ImmutableArray<double> CutShares = [0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8];

    /// <summary>Where along a wire its number stands: off the middle, where its tag is.</summary>
    private const double NumberShare = 1.0 / 3;

    /// <summary>Where the number of a part may stand, liked best first.</summary>
    private static readonly ImmutableArray<(int X, int Y)> Sides =
    [
        (1, -1),
        (-1, -1),
        (1, 1),
        (-1, 1),
        (0, -1),
        (1, 0),
        (-1, 0),
        (0, 1),
    ];

    /// <summary>Nearer to the end of a wire, in millimetres, a part's number would be read as the wire's. Chosen by eye.</summary>
    private const double ClearOfEnds = 6;

    /// <summary>Nearer to a joint than this, where the colour of a wire begins, its number stands off the part's outline by so much.</summary>
    private const double LeastFromEnds = 4.5;
    private const double OffRim = 2;

    public PictureItem Apply(PictureItem item) =>
        item switch
        {
            PictureGroup group when WireOf(group) is { } route => group with
            {
                Items = [.. group.Items.Select(Dashed), .. CutMark(route)],
            },
            PictureGroup group when PartOf(group) is { } part => group with
            {
                Items = [.. group.Items, .. Cross(part)],
            },
            _ => item,
        };

    /// <summary>A number at each part that changes, and in the middle of each wire that does.</summary>
    public IEnumerable<PictureItem> Numbers() =>
        from change in overlay.Changes
        from at in PlacesOf(change)
        select NumberTag.Paint(scene, space, "change", change.Number, at);

    private IEnumerable<Point> PlacesOf(ListedChange change)
    {
        if (overlay.PartOf(change) is { } part)
        {
            return scene.FindPart(part.Index) is { } placed ? [PlaceOf(placed)] : [];
        }

        var wires = overlay.WiresOf(change).Select(wire => wire.Id).ToHashSet(StringComparer.Ordinal);
        return scene
            .Wires.Where(wire => wires.Contains(wire.Wire.Id))
            .Select(wire => wire.Route.Points)
            .Concat(
                scene
                    .Layout.Braids.Where(braid => braid.Cable.BraidId is { } id && wires.Contains(id))
                    .SelectMany(braid => braid.Sheath.Take(1))
            )
            .Select(path => PlaceOn(path, NumberShare));
    }

    private static Point PlaceOn(ImmutableArray<Point> path, double share) =>
        Polyline.At(path.AsSpan(), Polyline.Length(path.AsSpan()) * share);

    /// <summary>On the line of its body: at a corner or a side where no wire ends beside the number, else where the nearest is farthest.</summary>
    private Point PlaceOf(PlacedFace part)
    {
        var places = Sides.Select(side => part.RimAt(side.X, side.Y)).ToList();
        Point[] ends =
        [
            .. scene.Wires.SelectMany(wire => new[] { wire.Route.Points[0], wire.Route.Points[^1] }),
            .. part.Face.Lugs.Select(lug => part.OnPage(lug.At)),
        ];
        var best = FarthestFromEnds(places);
        var apart = places.Zip(Sides, (place, side) => place + new Point(side.X * OffRim, side.Y * OffRim));
        return FromNearest(best) < LeastFromEnds ? FarthestFromEnds(apart) : best;

        Point FarthestFromEnds(IEnumerable<Point> some) =>
            some.OrderByDescending(place => Math.Min(ClearOfEnds, FromNearest(place))).First();

        double FromNearest(Point place) =>
            ends.Select(end => Point.Distance(end, place)).DefaultIfEmpty(ClearOfEnds).Min();
    }

    private RoutedWire? WireOf(PictureGroup group) =>
        scene.Wires.FirstOrDefault(wire => group.Shows.Contains(("wire", wire.Wire.Id))) is { } wire
        && overlay.Wires[wire.Wire.Index] == Standing.Goes
            ? wire.Route
            : null;

    private PlacedFace? PartOf(PictureGroup group) =>
        scene.Parts.FirstOrDefault(part =>
            overlay.Parts[part.Index] == Standing.Goes && group.Shows.Contains(("part", scene.PartOf(part).Name))
        );

    private static PictureItem Dashed(PictureItem item) =>
        item switch
        {
            PictureGroup group => group with { Items = [.. group.Items.Select(Dashed)] },
            PathShape path when path.Paint.Line is not null => path with
            {
                Paint = path.Paint with { Dashes = Dashes, HasRoundEnds = false },
            },
            _ => item,
        };

    /// <summary>Two strokes across the wire, with paper between them.</summary>
    private IEnumerable<PictureItem> CutMark(RoutedWire route)
    {
        var (at, along) = CutOn(route);
        Point Place(double ahead, double aside) =>
            new(at.X + (along.X * ahead) - (along.Y * aside), at.Y + (along.Y * ahead) + (along.X * aside));
        yield return PathShape.Through(
            "cut-gap",
            Paint.Stroked(scene.Theme.Paper, CutGap * 2),
            Place(-CutStroke.X, -CutStroke.Y),
            Place(CutStroke.X, CutStroke.Y)
        );
        foreach (var side in new[] { -CutGap, CutGap })
        {
            yield return PathShape.Through(
                "cut",
                Paint.Stroked(scene.Theme.Ink, CutLine),
                Place(side - CutStroke.X, -CutStroke.Y),
                Place(side + CutStroke.X, CutStroke.Y)
            );
        }
    }

    /// <summary>Where a wire is cut, and which way it runs there: clear of its corners, its tag and what it crosses, where it can be.</summary>
    private static (Point At, Point Along) CutOn(RoutedWire route)
    {
        var places = CutShares.Select(share => PlaceOn(route.Points, share)).ToList();
        var at = places.Find(place => IsClear(route, place));
        at = at == default ? places[0] : at;
        var stretch = Polyline.Segments(route.Points).FirstOrDefault(segment => segment.Contains(at));
        return (at, default(Point).Towards(stretch.To - stretch.From, 1));
    }

    private static bool IsClear(RoutedWire route, Point at) =>
        route
            .Points.Concat(route.Hops)
            .Concat(route.Gaps)
            .All(point => Point.Distance(point, at) > CutClearance + CutGap)
        && !(route.Tag is { } tag && tag.Grown(CutClearance).Contains(at));

    private IEnumerable<PictureItem> Cross(PlacedFace part)
    {
        var (box, paint) = (part.Bounds, Paint.Stroked(scene.Theme.Ink, CutLine));
        yield return PathShape.Through("cross", paint, new Point(box.X, box.Y), new Point(box.Right, box.Bottom));
        yield return PathShape.Through("cross", paint, new Point(box.Right, box.Y), new Point(box.X, box.Bottom));
    }
}
