using System.Collections.Immutable;
using WireText.Drawing.Faces;
using WireText.Drawing.Lettering;
using WireText.Geometry;

namespace WireText.Drawing.Pictures;

/// <summary>What is taken on the page by wires, lugs and words, and the free places that are left for small labels.</summary>
internal sealed class LabelSpace
{
    /// <summary>To lie on a wire, a lug or a word costs more than any other fault together.</summary>
    private const int Touching = 1000;

    /// <summary>For a mark: a word under it cannot be read any more, a wire is seen on both sides of it.</summary>
    private const int OnWord = 4 * Touching;

    /// <summary>To lie on the line of a body: read all the same, but ugly.</summary>
    private const int OnOutline = 120;

    private readonly List<Box> taken = [];
    private readonly List<Segment> wires = [];
    private readonly List<Outline> outlines = [];
    private readonly Box page;

    private LabelSpace(Box page) => this.page = page;

    /// <param name="page">Nothing is placed outside it.</param>
    public LabelSpace(Scene scene, Box page)
    {
        this.page = page;
        var routes = scene
            .Wires.Select(wire => wire.Route)
            .Concat(scene.Layout.Braids.SelectMany(braid => braid.Tails));
        foreach (var route in routes)
        {
            for (var i = 1; i < route.Points.Length; i++)
            {
                wires.Add(new Segment(route.Points[i - 1], route.Points[i]));
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
            outlines.AddRange(part.DrawnOutlines());
            foreach (var word in PartText.Inside(part, scene.Theme))
            {
                Take(word.Ink);
            }

            if (part.Placed.Label is { } label)
            {
                Take(label);
            }

            if (scene.HasHeatSign(part))
            {
                Take(HeatSign.BoxOn(part.OnPage(part.MainOutline.Bounds)));
            }

            var look = scene.LookOf(part);
            if (look.HangsByTwoLeads(scene.PartOf(part)))
            {
                Take(part.Bounds);
            }

            wires.AddRange(look.LinesToKeepOff(part));
            outlines.AddRange(look.OutlinesOfArt(part));

            // On a board there is room for a number beside its tab; elsewhere it goes on the body.
            var hasBoard = part.Face.Layout.Body.Length > 1;
            foreach (
                var lug in part.Face.Lugs.Where(lug =>
                    lug.Look == LugLook.Lead || (lug.Look == LugLook.Tab && !hasBoard)
                )
            )
            {
                // From the edge of the body, with the mark of a coil's end on it.
                var root = part.RootOf(lug).Towards(lug.At, Tokens.EyeletDiameter - Tokens.CoilEnd);
                wires.Add(new Segment(part.OnPage(root), part.OnPage(lug.At)));
            }
        }
    }

    public void Take(Box box) => taken.Add(box);

    /// <summary>What of it comes into a box; nothing else can be in the way of labels there.</summary>
    public LabelSpace Near(Box box)
    {
        var near = new LabelSpace(page);
        near.taken.AddRange(taken.Where(other => other.Overlaps(box)));
        near.wires.AddRange(wires.Where(wire => wire.Meets(box)));
        near.outlines.AddRange(outlines.Where(outline => outline.Bounds.Overlaps(box)));
        return near;
    }

    /// <summary>True when in a region the same is taken, and as much of it is page.</summary>
    public bool IsSame(LabelSpace other, Box region) =>
        PageIn(region) == other.PageIn(region)
        && taken.SequenceEqual(other.taken)
        && wires.SequenceEqual(other.wires)
        && outlines.SequenceEqual(other.outlines);

    private (double Left, double Top, double Right, double Bottom) PageIn(Box region) =>
        (
            Math.Max(page.X, region.X),
            Math.Max(page.Y, region.Y),
            Math.Min(page.Right, region.Right),
            Math.Min(page.Bottom, region.Bottom)
        );

    /// <summary>How bad it is to put a lug's label there: 1000 for each thing that it would lie on, less for what it comes too near.</summary>
    public double CostOfLabel(Box label)
    {
        const double Cramped = 4;
        const double AtTheEdge = 8;
        var cost = page.Contains(label) ? 0.0 : 100 * Touching;
        cost += (Hits(label.Grown(Tokens.LabelTouch)) * (double)Touching);
        if (cost < Touching)
        {
            cost += Hits(label.Grown(Tokens.LabelGap)) * Cramped;
        }

        var line = label.Grown(Tokens.LabelTouch + (Tokens.PartLine / 2));
        var ends = line.Widened(Tokens.LabelToEdge - Tokens.LabelTouch);
        foreach (var outline in outlines)
        {
            cost +=
                IsOnLine(outline, line) ? OnOutline / 2
                : IsOnLine(outline, ends) ? AtTheEdge
                : 0;
        }

        return cost;
    }

    /// <summary>True when a label there would lie on nothing, and on no line of a body.</summary>
    public bool IsFree(Box label) => CostOfLabel(label) < OnOutline / 2;

    /// <summary>True when a thin line there meets no joint, tag or word.</summary>
    public bool IsLineFree(Point from, Point to) => !taken.Exists(new Segment(from, to).Meets);

    /// <summary>True for a point on which no joint, tag, word or hop lies.</summary>
    public bool IsClear(Point at) => !taken.Exists(box => box.DistanceTo(at) <= 0);

    /// <summary>How many wires a thin line there crosses.</summary>
    public int WiresAcross(Point from, Point to) => wires.Count(wire => Segment.Cross(wire, new Segment(from, to)));

    private int Hits(Box box)
    {
        var reach = box.Grown((Tokens.WireCore / 2) + Tokens.Casing);
        var count = 0;
        foreach (var other in taken)
        {
            count += other.Overlaps(box) ? 1 : 0;
        }

        foreach (var wire in wires)
        {
            count += wire.Meets(reach) ? 1 : 0;
        }

        return count;
    }

    /// <summary>True when a wire that does not end there runs between a label and its lug.</summary>
    public bool IsWireBetween(Box label, Point lug)
    {
        var between = new Segment(label.Centre, lug.Towards(label.Centre, Tokens.JointDiameter / 2));
        return wires.Any(wire =>
            Point.Distance(wire.From, lug) > Tokens.EyeletDiameter
            && Point.Distance(wire.To, lug) > Tokens.EyeletDiameter
            && Segment.Cross(wire, between)
        );
    }

    /// <summary>A place for the word that a row of lugs has in common, taken from now on.</summary>
    public LugLabels.Spot PlaceSection(PlacedFace part, ImmutableArray<FaceLug> lugs, Size size)
    {
        var row = lugs.Select(lug => Box.Around(part.OnPage(lug.At), 0, 0)).Aggregate(Box.Union);
        var outward = part.OnPage(lugs[0].Outward).Towards(1);
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
        var box = label.Grown(Tokens.LabelGap / 2);
        var cost = taken.Count(other => other.Overlaps(box)) * OnWord;
        var reach = box.Grown((Tokens.WireCore / 2) + Tokens.Casing);
        cost += wires.Count(wire => wire.Meets(reach)) * Touching;
        cost += outlines.Count(outline => IsOnLine(outline, box)) * OnOutline;
        return cost + (page.Contains(label) ? 0 : 100 * Touching);
    }

    /// <summary>True when the line itself runs through a box, which lies neither wholly inside nor wholly outside.</summary>
    private static bool IsOnLine(Outline outline, Box box)
    {
        if (outline is not Outline.Circle circle)
        {
            var bounds = outline.Bounds;
            return bounds.Overlaps(box) && !bounds.Contains(box);
        }

        var far = Math.Max(
            Math.Max(
                Point.Distance(circle.Centre, new Point(box.X, box.Y)),
                Point.Distance(circle.Centre, new Point(box.Right, box.Y))
            ),
            Math.Max(
                Point.Distance(circle.Centre, new Point(box.X, box.Bottom)),
                Point.Distance(circle.Centre, new Point(box.Right, box.Bottom))
            )
        );
        return box.DistanceTo(circle.Centre) < circle.Radius && far > circle.Radius;
    }
}
