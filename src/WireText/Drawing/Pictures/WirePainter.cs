using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Drawing.Faces;
using WireText.Drawing.Layout;
using WireText.Drawing.Lettering;
using WireText.Drawing.Shapes;
using WireText.Geometry;
using WireText.Quantities;

namespace WireText.Drawing.Pictures;

/// <summary>Paints wires: ground first, then signal, and a wire that hops over another after it.</summary>
internal sealed class WirePainter(Scene scene)
{
    private readonly Theme theme = scene.Theme;
    private readonly List<Strand> strands = [];
    private readonly List<(Strand Over, Segment Way)> twists = [];
    private readonly SegmentGrid stretches = new();
    private readonly BoxGrid joints = new();
    private readonly BoxGrid tags = new();
    private readonly BoxGrid bulges = new();

    /// <summary>Which signs for a crossing stand in a drawing, for its legend.</summary>
    public static CrossingSigns SignsIn(Scene scene)
    {
        var painter = new WirePainter(scene);
        painter.Collect();
        var crossings = painter.strands.SelectMany(strand => strand.Hops).Select(hop => hop.Hop.Bulge).ToArray();
        return new CrossingSigns(
            Array.Exists(crossings, bulge => bulge != HopBulge.None),
            Array.Exists(crossings, bulge => bulge == HopBulge.None),
            painter.strands.Exists(painter.IsSleevedSomewhere),
            painter.twists.Count > 0
        );
    }

    private bool IsSleevedSomewhere(Strand strand) =>
        strand.Braid is null
        && (
            strand.Wire.IsSleeved
            || (
                (strand.IsTail || !WireStyle.Of(theme, strand.Wire).IsInsulated)
                && WirePath
                    .Draw(strand.Route!.Points, [.. strand.Hops.Select(hop => hop.Hop)])
                    .Gaps.Any(gap => IsOverBare(strand, gap))
            )
        );

    public IEnumerable<PictureItem> Paint()
    {
        Collect();
        var order = Ordered();
        var placeOf = order.Index().ToDictionary(pair => pair.Item, pair => pair.Index);
        foreach (var strand in order)
        {
            yield return PaintStrand(strand);
        }

        // Where two wires each hop over the other, one of the hops is painted once more on top.
        for (var i = 0; i < order.Count; i++)
        {
            foreach (var hop in order[i].Hops.Where(hop => placeOf[hop.Under] > i))
            {
                yield return PaintHopAgain(order[i], hop);
            }
        }

        foreach (var (over, way) in twists)
        {
            yield return PaintTwist(over, way);
        }
    }

    private void Collect()
    {
        foreach (var wire in scene.Wires)
        {
            strands.Add(new Strand(strands.Count, wire.Wire, wire.Route, IsTail: false));
        }

        foreach (var pair in TwistedPairs.In(scene))
        {
            Twist(pair);
        }

        foreach (var braid in scene.Layout.Braids)
        {
            if (scene.Circuit.Wires.FirstOrDefault(wire => wire.Id == braid.Cable.BraidId) is { } wire)
            {
                strands.Add(new Strand(strands.Count, wire, null, IsTail: false) { Braid = braid });
                strands.AddRange(braid.Tails.Select(tail => new Strand(strands.Count, wire, tail, IsTail: true)));
            }
        }

        CollectObstacles();
        foreach (var strand in strands.Where(strand => strand.Route is not null))
        {
            foreach (var at in strand.Route!.Hops)
            {
                if (UnderAt(strand, at) is { } under)
                {
                    strand.Hops.Add(new StrandHop(new WireHop(at, BulgeAt(strand, under, at)), under));
                }
            }

            foreach (var at in strand.Route.Gaps)
            {
                if (UnderAt(strand, at) is { } under)
                {
                    strand.Hops.Add(new StrandHop(new WireHop(at, HopBulge.None), under));
                }
            }
        }
    }

    private void Twist(TwistedPairs.Pair pair)
    {
        var (first, second) = (Retrace(pair.First), Retrace(pair.Second));
        twists.AddRange(pair.Twists.Select(twist => twist.IsFirstOver ? (first, twist.First) : (second, twist.Second)));
    }

    private Strand Retrace(RoutedWire route)
    {
        var index = strands.FindIndex(strand => strand.Wire.Id == route.Wire.Id);
        return strands[index] = strands[index] with { Route = route };
    }

    /// <summary>The core that lies on top where two change places, once more over the other.</summary>
    private PictureGroup PaintTwist(Strand over, Segment way)
    {
        var style = WireStyle.Of(theme, over.Wire);
        var air = Shapes.Paint.Stroked(theme.Paper, style.OuterWidth + (2 * Tokens.Gap));
        return new PictureGroup(
            "twist",
            [
                PathShape.Through("gap", air, Between(0.25), Between(0.75)),
                PathShape.Through("casing", style.CasingPaint, way.From, way.To),
                PathShape.Through("core", style.CorePaint, way.From, way.To),
            ]
        )
        {
            Shows = [("wire", over.Wire.Id)],
        };

        Point Between(double share) => way.From.Towards(way.To, share * Point.Distance(way.From, way.To));
    }

    private void CollectObstacles()
    {
        foreach (var strand in strands)
        {
            if (strand.Route is not { Points: var path })
            {
                continue;
            }

            foreach (var stretch in Polyline.Segments(path))
            {
                stretches.Add(stretch, strand.Index);
            }

            // On a case the joints of wires lie where other wires pass.
            AddJoint(path[0], Tokens.SurfaceJointDiameter);
            AddJoint(path[^1], Tokens.SurfaceJointDiameter);
        }

        foreach (var part in scene.Parts)
        {
            foreach (var lug in part.Face.Lugs)
            {
                AddJoint(part.OnPage(lug.At), Tokens.JointDiameter);
            }
        }

        foreach (var wire in scene.Wires)
        {
            if (wire.Route.Tag is { } tag)
            {
                tags.Add(tag);
            }
        }
    }

    private void AddJoint(Point at, double diameter) => joints.Add(Box.Around(at, diameter, diameter));

    private Strand? UnderAt(Strand over, Point at)
    {
        foreach (var (stretch, owner) in stretches.Near(Box.Around(at, 0.01, 0.01)))
        {
            if (owner != over.Index && stretch.Contains(at))
            {
                return strands[owner];
            }
        }

        return null;
    }

    /// <summary>Up or to the left if there is room, else the other way, else not at all.</summary>
    private HopBulge BulgeAt(Strand over, Strand under, Point at)
    {
        var stretch = Polyline.Segments(over.Route!.Points).FirstOrDefault(s => s.Contains(at));
        var direction = default(Point).Towards(stretch.To - stretch.From, 1);
        // Left of a wire that runs to the right is up; left of one that runs up is the left of the page.
        HopBulge[] tries =
            direction.X > 0.5 || direction.Y < -0.5 ? [HopBulge.Left, HopBulge.Right] : [HopBulge.Right, HopBulge.Left];
        foreach (var bulge in tries)
        {
            var sign = bulge == HopBulge.Left ? 1 : -1;
            var aside = new Point(direction.Y * sign, -direction.X * sign);
            if (HasRoom(over, under, at, direction, aside))
            {
                bulges.Add(BulgeOf(at, direction, aside));
                return bulge;
            }
        }

        return HopBulge.None;
    }

    /// <summary>What a hop covers, with the air round it, from the middle of its wire on.</summary>
    private static Box BulgeOf(Point at, Point direction, Point aside)
    {
        var half = Tokens.HopRadius + (Tokens.WireCore / 2);
        var along = new Point(direction.X * half, direction.Y * half);
        var top = at + new Point(aside.X * (half + Tokens.Gap), aside.Y * (half + Tokens.Gap));
        return Box.Spanning(at - along, top + along);
    }

    private bool HasRoom(Strand over, Strand under, Point at, Point direction, Point aside)
    {
        var half = Tokens.HopRadius + Tokens.WireCore;
        var near = Tokens.WireCore;
        var a = new Point(
            at.X - (direction.X * half) + (aside.X * near),
            at.Y - (direction.Y * half) + (aside.Y * near)
        );
        var far = Tokens.HopClearance - (Tokens.WireCore / 2);
        var b = new Point(at.X + (direction.X * half) + (aside.X * far), at.Y + (direction.Y * half) + (aside.Y * far));
        var room = Box.Spanning(a, b);
        return !bulges.IsHit(BulgeOf(at, direction, aside))
            && !stretches.Near(room).Any(s => s.Owner != under.Index && s.Owner != over.Index && s.Segment.Meets(room))
            && !joints.IsHit(room)
            && !tags.IsHit(room);
    }

    /// <summary>A braid after its cores, what hops after what it hops over; otherwise screens, grounds, signals, each in the order of the circuit.</summary>
    private List<Strand> Ordered()
    {
        Strand[] wished = [.. strands.OrderBy(RankOf).ThenBy(strand => strand.Index)];
        var placeOf = wished.Index().ToDictionary(pair => pair.Item, pair => pair.Index);
        var followers = strands.ConvertAll(_ => new List<int>());
        var awaited = new int[wished.Length];
        foreach (var strand in wished)
        {
            foreach (var other in Before(strand).Distinct())
            {
                followers[placeOf[other]].Add(placeOf[strand]);
                awaited[placeOf[strand]]++;
            }
        }

        var left = new SortedSet<int>(Enumerable.Range(0, wished.Length));
        var ready = new SortedSet<int>(left.Where(place => awaited[place] == 0));
        var ordered = new List<Strand>(wished.Length);
        while (left.Count > 0)
        {
            // Where strands wait for each other in a ring, the first of them goes.
            var next = ready.Count > 0 ? ready.Min : left.Min;
            left.Remove(next);
            ready.Remove(next);
            ordered.Add(wished[next]);
            foreach (var follower in followers[next].Where(left.Contains))
            {
                if (--awaited[follower] == 0)
                {
                    ready.Add(follower);
                }
            }
        }

        return ordered;
    }

    /// <summary>The strands that must be painted before this one.</summary>
    private IEnumerable<Strand> Before(Strand strand)
    {
        var hopped = strand.Hops.SelectMany(hop => SheathsOf(hop.Under).Append(hop.Under));
        var cores = strand.Braid is { } braid
            ? strands.Where(other =>
                other.Route is { } route && braid.Cable.Cores.Contains(route.Wire.Id, StringComparer.Ordinal)
            )
            : [];
        return hopped.Concat(cores).Where(other => other != strand);
    }

    /// <summary>The braids that this wire is a core of.</summary>
    private IEnumerable<Strand> SheathsOf(Strand core) =>
        strands.Where(strand =>
            strand.Braid is { } braid && braid.Cable.Cores.Contains(core.Wire.Id, StringComparer.Ordinal)
        );

    private WireRank RankOf(Strand strand) =>
        strand.Braid is null ? WireFaces.RankOf(scene.Circuit, strand.Wire) : WireRank.Signal;

    private PictureGroup PaintStrand(Strand strand)
    {
        if (strand.Braid is { } braid)
        {
            return PaintSheath(strand.Wire, braid);
        }

        var drawn = WirePath.Draw(strand.Route!.Points, [.. strand.Hops.Select(hop => hop.Hop)]);
        var style = strand.IsTail ? WireStyle.Of(theme, InsulationColour.Bare) : WireStyle.Of(theme, strand.Wire);
        var items = ImmutableArray.CreateBuilder<PictureItem>();
        AddGaps(items, drawn, style);
        if (strand.Wire.IsSleeved)
        {
            AddSleeve(items, drawn.Steps);
        }
        else if (!style.IsInsulated)
        {
            // Bare on bare: what crosses is sleeved there, or it would touch.
            foreach (var gap in drawn.Gaps.Where(gap => IsOverBare(strand, gap)))
            {
                AddSleeve(items, gap);
            }
        }

        if (style.IsInsulated && !strand.IsTail)
        {
            AddConductor(items, drawn.Steps);
            AddLeadEnds(items, strand, style);
            AddLine(items, Insulated(strand, drawn.Steps), style);
        }
        else
        {
            AddLine(items, drawn.Steps, style);
        }

        return strand.IsTail
            ? new PictureGroup("braid", items.ToImmutable()) { Shows = BraidShows(strand.Wire) }
            : new PictureGroup("wire", items.ToImmutable())
            {
                Id = ShapeIds.Of("wire", strand.Wire.Id),
                Shows = WireShows(strand.Wire),
            };
    }

    private void AddSleeve(ImmutableArray<PictureItem>.Builder items, ImmutableArray<PathStep> steps)
    {
        var inner = Tokens.SleeveWidth - (2 * Tokens.SleeveLine);
        items.Add(new PathShape("sleeve", steps, Shapes.Paint.Stroked(theme.PartLine, Tokens.SleeveWidth)));
        items.Add(new PathShape("sleeve", steps, Shapes.Paint.Stroked(theme.Paper, inner)));
    }

    private bool IsOverBare(Strand strand, ImmutableArray<PathStep> gap) =>
        strand.Hops.Exists(hop =>
            IsAround(gap, hop.Hop.At)
            && hop.Under.Braid is null
            && !hop.Under.Wire.IsSleeved
            && (hop.Under.IsTail || !WireStyle.Of(theme, hop.Under.Wire).IsInsulated)
        );

    private void AddGaps(ImmutableArray<PictureItem>.Builder items, WirePathResult drawn, WireStyle style)
    {
        items.AddRange(drawn.Gaps.Select(gap => WirePath.Air(gap, style.OuterWidth, theme.Paper)));
    }

    /// <summary>Bare metal from joint to joint; it shows where the insulation ends.</summary>
    private void AddConductor(ImmutableArray<PictureItem>.Builder items, ImmutableArray<PathStep> steps)
    {
        var outer = Tokens.Conductor + (2 * Tokens.Casing);
        items.Add(new PathShape("strip", steps, Shapes.Paint.Stroked(theme.MetalLine, outer)));
        items.Add(new PathShape("conductor", steps, Shapes.Paint.Stroked(theme.Tin, Tokens.Conductor)));
    }

    /// <summary>Where a part's own lead goes on as the wire, whichever way the wire turns there.</summary>
    private void AddLeadEnds(ImmutableArray<PictureItem>.Builder items, Strand strand, WireStyle style)
    {
        var points = strand.Route!.Points;
        foreach (var (lug, at) in new[] { (strand.Wire.From, points[0]), (strand.Wire.To, points[^1]) })
        {
            if (scene.HasLug(lug) && !scene.IsSoldered(lug))
            {
                items.Add(new CircleShape("end", at, style.OuterWidth / 2, Shapes.Paint.Filled(style.Casing)));
            }
        }
    }

    /// <summary>What insulation covers: it ends a little before a joint, so that a wire that ends there looks other than one that passes.</summary>
    private ImmutableArray<PathStep> Insulated(Strand strand, ImmutableArray<PathStep> steps)
    {
        var points = strand.Route!.Points;
        var length = Polyline.Length(points.AsSpan());
        var stripped = Math.Min(Tokens.StrippedEnd, length * Tokens.StrippedShare);
        return WirePath.Trimmed(
            steps,
            scene.IsSoldered(strand.Wire.From) ? stripped : 0,
            scene.IsSoldered(strand.Wire.To) ? stripped : 0
        );
    }

    private static void AddLine(
        ImmutableArray<PictureItem>.Builder items,
        ImmutableArray<PathStep> steps,
        WireStyle style
    )
    {
        items.Add(new PathShape("casing", steps, style.CasingPaint with { HasRoundEnds = !style.IsInsulated }));
        items.Add(new PathShape("core", steps, style.CorePaint with { HasRoundEnds = !style.IsInsulated }));
        if (style.Stripe is { } stripe)
        {
            items.Add(
                new PathShape(
                    "stripe",
                    steps,
                    Shapes.Paint.Stroked(stripe, Tokens.StripeWidth) with
                    {
                        Dashes = [Tokens.StripeOn, Tokens.StripeOff],
                    }
                )
            );
        }
    }

    /// <summary>A woven tube over the cores; they show at both ends of it. Cores side by side are in one tube.</summary>
    private PictureGroup PaintSheath(Wire wire, RoutedBraid braid)
    {
        var covered = new List<(WirePathResult Drawn, Strand? Core)>();
        for (var i = 0; i < braid.Sheath.Length; i++)
        {
            if (braid.Sheath[i].Length >= 2)
            {
                var core =
                    i < braid.Cable.Cores.Length
                        ? strands.Find(s => s.Route is { } route && route.Wire.Id == braid.Cable.Cores[i])
                        : null;
                covered.Add(
                    (WirePath.Draw(braid.Sheath[i], core is null ? [] : [.. core.Hops.Select(hop => hop.Hop)]), core)
                );
            }
        }

        var outer = covered.Count > 1 ? Tokens.LanePitch + (2 * Tokens.SheathCasing) : Tokens.SheathWidth;
        var inner = outer - (2 * Tokens.SheathCasing);
        var items = ImmutableArray.CreateBuilder<PictureItem>();
        foreach (var (drawn, _) in covered)
        {
            AddGaps(items, drawn, new WireStyle(theme.Tin, theme.MetalLine, null, outer - (2 * Tokens.Casing)));
        }

        var weave = Shapes.Paint.Stroked(theme.MetalLine, inner) with { Dashes = [Tokens.WeaveOn, Tokens.WeaveOff] };
        AddAll("sheath", Shapes.Paint.Stroked(theme.MetalLine, outer));
        AddAll("weave", Shapes.Paint.Stroked(theme.Tin, inner));
        AddAll("weave", weave);
        foreach (var (drawn, core) in covered.Where(one => one.Core is not null))
        {
            var style = WireStyle.Of(theme, core!.Wire);
            var casing = Shapes.Paint.Stroked(style.Casing, Tokens.SheathHint + (2 * Tokens.SheathCasing));
            items.Add(new PathShape("inside", drawn.Steps, casing));
            items.Add(new PathShape("inside", drawn.Steps, Shapes.Paint.Stroked(style.Core, Tokens.SheathHint)));
        }

        return new PictureGroup("braid", items.ToImmutable())
        {
            Id = ShapeIds.Of("braid", wire.Id),
            Shows = BraidShows(wire),
        };

        void AddAll(string name, Paint paint) =>
            items.AddRange(covered.Select(one => new PathShape(name, one.Drawn.Steps, paint)));
    }

    private PictureGroup PaintHopAgain(Strand strand, StrandHop hop)
    {
        var style = WireStyle.Of(theme, strand.Wire);
        var drawn = WirePath.Draw(strand.Route!.Points, [.. strand.Hops.Select(h => h.Hop)]);
        var items = ImmutableArray.CreateBuilder<PictureItem>();
        foreach (var gap in drawn.Gaps.Where(gap => IsAround(gap, hop.Hop.At)))
        {
            items.Add(WirePath.Air(gap, style.OuterWidth, theme.Paper));
            items.Add(new PathShape("hop-casing", gap, style.CasingPaint));
            items.Add(new PathShape("hop-core", gap, style.CorePaint));
        }

        return new PictureGroup("hop", items.ToImmutable()) { Shows = [("wire", strand.Wire.Id)] };
    }

    private static bool IsAround(ImmutableArray<PathStep> gap, Point at) =>
        Point.Distance(gap[0].To, at) <= Tokens.HopRadius + 0.01
        && Point.Distance(gap[^1].To, at) <= Tokens.HopRadius + 0.01;

    private ImmutableArray<(string Name, string Value)> BraidShows(Wire wire) =>
        [("wire", wire.Id), .. Ends(wire), ("colour", wire.Colour?.Tag ?? ""), ("kind", "braid")];

    private ImmutableArray<(string Name, string Value)> WireShows(Wire wire) =>
        [
            ("wire", wire.Id),
            .. Ends(wire),
            ("net", Scene.Text(scene.Circuit.Nets.OneNet[wire.From >= 0 ? wire.From : wire.To])),
            (
                "colour",
                wire.Colour is null ? ""
                : wire.Colour.IsBare ? "bare"
                : wire.Colour.Tag
            ),
            ("kind", KindOf(wire.Kind)),
        ];

    private IEnumerable<(string Name, string Value)> Ends(Wire wire)
    {
        yield return ("from", wire.From >= 0 ? scene.Circuit.NameOf(wire.From) : "");
        yield return ("to", wire.To >= 0 ? scene.Circuit.NameOf(wire.To) : "");
    }

    private static string KindOf(WireKind kind) =>
        kind switch
        {
            WireKind.Core => "core",
            WireKind.Braid => "braid",
            WireKind.PartLead => "part-lead",
            WireKind.SpliceLead => "splice-lead",
            _ => "wire",
        };

    /// <summary>One thing to paint: a wire, the sheath of a braid, or a braid's tail.</summary>
    private sealed record Strand(int Index, Wire Wire, RoutedWire? Route, bool IsTail)
    {
        public RoutedBraid? Braid { get; init; }

        public List<StrandHop> Hops { get; } = [];

        // Each strand is itself: two with equal values are still two.
        public bool Equals(Strand? other) => ReferenceEquals(this, other);

        public override int GetHashCode() => Index;
    }

    private sealed record StrandHop(WireHop Hop, Strand Under);
}
