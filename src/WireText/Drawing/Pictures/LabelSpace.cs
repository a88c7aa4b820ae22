using System.Collections.Immutable;
using WireText.Drawing.Faces;
using WireText.Drawing.Layout;
using WireText.Parts;

namespace WireText.Drawing.Pictures;

/// <summary>What is taken on the page by wires, lugs and words, and the free places that are left for small labels.</summary>
internal sealed class LabelSpace
{
    private const int Touching = 1000;
    private const int OnOutline = 120;

    private readonly List<Box> _taken = [];
    private readonly List<(Point From, Point To)> _wires = [];
    private readonly List<Box> _outlines = [];
    private readonly Box _page;

    /// <param name="page">Nothing is placed outside it.</param>
    public LabelSpace(Scene scene, Box page)
    {
        _page = page;
        var routes = scene
            .Wires.Select(wire => wire.Route)
            .Concat(scene.Layout.Braids.SelectMany(braid => braid.Tails));
        foreach (var route in routes)
        {
            for (var i = 1; i < route.Points.Length; i++)
            {
                _wires.Add((route.Points[i - 1], route.Points[i]));
            }

            if (route.Tag is { } tag)
            {
                Take(tag);
            }

            foreach (var hop in route.Hops)
            {
                Take(Box.Around(hop, 2 * Tokens.HopRadius, 2 * Tokens.HopRadius));
            }
        }

        foreach (var part in scene.Parts)
        {
            _outlines.AddRange(part.Face.Layout.Body.Select(body => ScenePart.BoundsOf(part.OnPage(body))));
            if (part.Face.Layout.TextBox is { } text)
            {
                Take(Boxes.Grown(part.OnPage(text), -Tokens.LabelGap));
            }

            if (part.Placed.Label is { } label)
            {
                Take(label);
            }

            if (FaceSizes.IsTwoLead(scene.Circuit.Parts[part.Index]))
            {
                Take(part.Bounds);
            }

            if (scene.Circuit.Parts[part.Index].Kind == "jack")
            {
                _wires.AddRange(part.Springs());
            }

            // On a board there is room for a number beside its tab; elsewhere it goes on the body.
            var hasBoard = part.Face.Layout.Body.Length > 1;
            foreach (
                var lug in part.Face.Lugs.Where(lug =>
                    lug.Look == LugLook.Lead || (lug.Look == LugLook.Tab && !hasBoard)
                )
            )
            {
                // From the edge of the body, with the mark of a coil's end on it.
                var root = WirePath.Along(part.RootOf(lug), lug.At, Tokens.EyeletDiameter - Tokens.CoilEnd);
                _wires.Add((part.OnPage(root), part.OnPage(lug.At)));
            }
        }
    }

    public void Take(Box box) => _taken.Add(box);

    /// <summary>The best place for a lug's label, taken from now on; null for a part that names its only lug.</summary>
    public Box? Place(ScenePart part, FaceLug lug)
    {
        if (part.Face.Lugs.Length + part.Face.Surfaces.Length < 2)
        {
            return null;
        }

        var size = new Size(
            DrawnText.Width(lug.Label, TextWeight.Medium, Tokens.LugLabelSize),
            Tokens.LugLabelSize * DrawnText.CapHeight
        );
        var best = Best(Candidates(part, lug, size));
        Take(best);
        return best;
    }

    /// <summary>A place for the word that a row of lugs has in common, taken from now on.</summary>
    public Box PlaceSection(ScenePart part, ImmutableArray<FaceLug> lugs, Size size)
    {
        var row = lugs.Select(lug => Box.Around(part.OnPage(lug.At), 0, 0)).Aggregate(Boxes.Union);
        var outward = TextSpot.Unit(part.OnPage(lugs[0].Outward));
        var candidates =
            from away in new[] { 4.2, 5.0, 5.8, 6.6, 3.4, 7.4 }
            from aside in new[] { 0.0, 2, -2, 4, -4, 6, -6, 8, -8 }
            select Box.Around(
                new Point(
                    row.Centre.X - (outward.X * away) + (outward.Y * aside),
                    row.Centre.Y - (outward.Y * away) + (outward.X * aside)
                ),
                size.Width,
                size.Height
            );
        var best = Best(candidates);
        Take(best);
        return best;
    }

    /// <summary>The first of the cheapest; earlier candidates are liked better.</summary>
    public Box Best(IEnumerable<Box> candidates)
    {
        Box? best = null;
        var least = int.MaxValue;
        var order = 0;
        foreach (var box in candidates)
        {
            var cost = Cost(box) + order++;
            if (cost < least)
            {
                (best, least) = (box, cost);
            }
        }

        return best ?? default;
    }

    private int Cost(Box label)
    {
        var box = Boxes.Grown(label, Tokens.LabelGap / 2);
        var cost = _taken.Count(taken => Boxes.Touch(taken, box)) * Touching;
        var reach = Boxes.Grown(box, (Tokens.WireCore / 2) + Tokens.Casing);
        cost += _wires.Count(wire => Boxes.Meets(reach, wire.From, wire.To)) * Touching;
        cost += _outlines.Count(outline => Boxes.Touch(outline, box) && !IsInside(outline, box)) * OnOutline;
        return cost + (IsInside(_page, label) ? 0 : 100 * Touching);
    }

    private static bool IsInside(Box outer, Box inner) =>
        inner.X >= outer.X && inner.Y >= outer.Y && inner.Right <= outer.Right && inner.Bottom <= outer.Bottom;

    /// <summary>Away from where its wires leave first; then beside it, at its corners, and beyond it.</summary>
    private static IEnumerable<Box> Candidates(ScenePart part, FaceLug lug, Size size)
    {
        var at = part.OnPage(lug.At);
        var outward = TextSpot.Unit(part.OnPage(lug.Outward));
        var inward = new Point(-outward.X, -outward.Y);
        var across = new Point(outward.Y, -outward.X);
        var radius = (Tokens.JointDiameter / 2) + Tokens.LabelGap;
        var (halfWidth, halfHeight) = (size.Width / 2, size.Height / 2);
        foreach (var further in new[] { 0.0, 0.6, 1.2, 1.8, 2.4, 3.0, 3.6 })
        {
            yield return At(inward, further);
        }

        for (var ring = 0.0; ring <= 3.0; ring += 0.75)
        {
            yield return At(across, ring);
            yield return At(new Point(-across.X, -across.Y), ring);
            yield return At(new Point(inward.X + across.X, inward.Y + across.Y), ring);
            yield return At(new Point(inward.X - across.X, inward.Y - across.Y), ring);
            yield return At(new Point(outward.X + across.X, outward.Y + across.Y), ring);
            yield return At(new Point(outward.X - across.X, outward.Y - across.Y), ring);
            yield return At(outward, ring);
            yield return At(inward, ring);
        }

        Box At(Point way, double further)
        {
            var isDiagonal = way.X != 0 && way.Y != 0;
            var reach = (isDiagonal ? radius * 0.75 : radius) + further;
            var x = at.X + (way.X * (reach + halfWidth));
            var y = at.Y + (way.Y * (reach + halfHeight));
            return Box.Around(new Point(x, y), size.Width, size.Height);
        }
    }
}
