using System.Collections.Immutable;
using WireText.Drawing.Faces;
using WireText.Drawing.Lettering;
using WireText.Geometry;

namespace WireText.Drawing.Pictures;

/// <summary>What is taken on the page by wires, lugs and words, and the free places that are left for small labels.</summary>
internal sealed class LabelSpace
{
    private const int Touching = 1000;
    private const int OnOutline = 120;

    private readonly List<Box> _taken = [];
    private readonly List<(Point From, Point To)> _wires = [];
    private readonly List<Outline> _outlines = [];
    private readonly Box _page;

    private LabelSpace(Box page) => _page = page;

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

            foreach (var hop in route.Hops.Concat(route.Gaps))
            {
                Take(Box.Around(hop, 2 * Tokens.HopRadius, 2 * Tokens.HopRadius));
            }
        }

        foreach (var part in scene.Parts)
        {
            _outlines.AddRange(part.DrawnOutlines());
            foreach (var word in PartText.Inside(part, scene.Theme))
            {
                Take(word.Ink);
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

    /// <summary>What of it comes into a box; nothing else can be in the way of labels there.</summary>
    public LabelSpace Near(Box box)
    {
        var near = new LabelSpace(_page);
        near._taken.AddRange(_taken.Where(taken => Boxes.Touch(taken, box)));
        near._wires.AddRange(_wires.Where(wire => Boxes.Meets(box, wire.From, wire.To)));
        near._outlines.AddRange(_outlines.Where(outline => Boxes.Touch(ScenePart.BoundsOf(outline), box)));
        return near;
    }

    /// <summary>How bad it is to put a lug's label there: 1000 for each thing that it would lie on, less for what it comes too near.</summary>
    public double CostOfLabel(Box label)
    {
        const double Cramped = 4;
        var cost = IsInside(_page, label) ? 0.0 : 100 * Touching;
        cost += (Hits(Boxes.Grown(label, Tokens.LabelTouch)) * (double)Touching);
        if (cost < Touching)
        {
            cost += Hits(Boxes.Grown(label, Tokens.LabelGap)) * Cramped;
        }

        var line = Boxes.Grown(label, Tokens.LabelTouch + (Tokens.PartLine / 2));
        foreach (var outline in _outlines)
        {
            cost += IsOnLine(outline, line) ? OnOutline / 2 : 0;
        }

        return cost;
    }

    private int Hits(Box box)
    {
        var reach = Boxes.Grown(box, (Tokens.WireCore / 2) + Tokens.Casing);
        var count = 0;
        foreach (var taken in _taken)
        {
            count += Boxes.Touch(taken, box) ? 1 : 0;
        }

        foreach (var (from, to) in _wires)
        {
            count += Boxes.Meets(reach, from, to) ? 1 : 0;
        }

        return count;
    }

    /// <summary>True when a wire that does not end there runs between a label and its lug.</summary>
    public bool IsWireBetween(Box label, Point lug)
    {
        var between = (From: label.Centre, To: WirePath.Along(lug, label.Centre, Tokens.JointDiameter / 2));
        return _wires.Any(wire =>
            WirePath.Distance(wire.From, lug) > Tokens.EyeletDiameter
            && WirePath.Distance(wire.To, lug) > Tokens.EyeletDiameter
            && Boxes.Cross(wire, between)
        );
    }

    /// <summary>A place for the word that a row of lugs has in common, taken from now on.</summary>
    public LugLabels.Spot PlaceSection(ScenePart part, ImmutableArray<FaceLug> lugs, Size size)
    {
        var row = lugs.Select(lug => Box.Around(part.OnPage(lug.At), 0, 0)).Aggregate(Boxes.Union);
        var outward = TextSpot.Unit(part.OnPage(lugs[0].Outward));
        var candidates =
            from away in new[] { 4.2, 5.0, 5.8, 6.6, 3.4, 7.4, -3.4, -4.2 }
            from aside in new[] { 0.0, 2, -2, 4, -4, 6, -6, 8, -8, 10, -10, 12, -12 }
            select Box.Around(
                new Point(
                    row.Centre.X - (outward.X * away) + (outward.Y * aside),
                    row.Centre.Y - (outward.Y * away) + (outward.X * aside)
                ),
                size.Width,
                size.Height
            );
        var best = Best(candidates);
        var isClear = Cost(best) < Touching;
        Take(best);
        return new LugLabels.Spot(best, isClear);
    }

    /// <summary>The first of the cheapest; earlier candidates are liked better.</summary>
    public Box Best(IEnumerable<Box> candidates)
    {
        Box? best = null;
        var least = int.MaxValue;
        var order = 0;
        foreach (var box in candidates)
        {
            if (order >= least)
            {
                break;
            }

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
        cost += _outlines.Count(outline => IsOnLine(outline, box)) * OnOutline;
        return cost + (IsInside(_page, label) ? 0 : 100 * Touching);
    }

    private static bool IsInside(Box outer, Box inner) =>
        inner.X >= outer.X && inner.Y >= outer.Y && inner.Right <= outer.Right && inner.Bottom <= outer.Bottom;

    /// <summary>True when the line itself runs through a box, which lies neither wholly inside nor wholly outside.</summary>
    private static bool IsOnLine(Outline outline, Box box)
    {
        if (outline is not Outline.Circle circle)
        {
            var bounds = ScenePart.BoundsOf(outline);
            return Boxes.Touch(bounds, box) && !IsInside(bounds, box);
        }

        var far = Math.Max(
            Math.Max(
                WirePath.Distance(circle.Centre, new Point(box.X, box.Y)),
                WirePath.Distance(circle.Centre, new Point(box.Right, box.Y))
            ),
            Math.Max(
                WirePath.Distance(circle.Centre, new Point(box.X, box.Bottom)),
                WirePath.Distance(circle.Centre, new Point(box.Right, box.Bottom))
            )
        );
        return Boxes.Distance(box, circle.Centre) < circle.Radius && far > circle.Radius;
    }
}
