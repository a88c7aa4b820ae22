using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Drawing.Layout;
using WireText.Drawing.Lettering;
using WireText.Drawing.Pictures;
using WireText.Drawing.Shapes;
using WireText.Electrical.Traces;
using WireText.Geometry;

namespace WireText.Frames;

/// <summary>The drawing of a circuit, painted once, and what of it is seen at each moment of the work.</summary>
internal sealed class FrameDrawing
{
    private readonly ImmutableArray<PictureItem> items;

    /// <param name="trace">What is followed on it; null for nothing.</param>
    public FrameDrawing(Circuit circuit, LayoutResult layout, PictureOptions options, Trace? trace)
    {
        var extent = layout.Extent.Grown(Tokens.LabelMargin);
        Scene = new Scene(
            circuit,
            LayoutShift.By(layout, new Point(-extent.X, -extent.Y)),
            options with
            {
                Trace = trace,
                Findings = [],
                Joints = [],
            }
        );
        Whole = new Box(0, 0, extent.Width, extent.Height);
        items =
        [
            .. PictureBuilder.Drawing(Scene, Space(Whole), namesAll: true).Items.Select(PictureBuilder.WithoutIds),
        ];
    }

    public Scene Scene { get; }

    /// <summary>What all of it takes up.</summary>
    public Box Whole { get; }

    /// <summary>All of it, as it is painted.</summary>
    public ImmutableArray<PictureItem> All => items;

    /// <summary>The free places for words in a part of the drawing.</summary>
    public LabelSpace Space(Box within) => new(Scene, within);

    /// <summary>What is seen at a moment.</summary>
    public ImmutableArray<PictureItem> At(Moment moment)
    {
        var seen = items.Select(item => Seen(item, moment)).OfType<PictureItem>().ToList();
        var isPart = seen.TakeWhile(item => item.Class == "part").Count();
        return [.. seen.Take(isPart), .. Halos(moment), .. seen.Skip(isPart), .. Lifted(moment)];
    }

    /// <summary>Where a lug lies for some wires: the middle of its part where none of them lands on it.</summary>
    public IEnumerable<Point> PlacesOf(int lug, IEnumerable<int> wires)
    {
        var places = JointPlaces.Of(Scene, lug, wires).ToList();
        return places.Count > 0 || Scene.FindPart(Scene.Circuit.Lugs[lug].Part) is not { } part
            ? places
            : [part.Bounds.Centre];
    }

    private PictureItem? Seen(PictureItem item, Moment moment)
    {
        var circuit = Scene.Circuit;
        if (item.ShownAs("lug") is { } lugName && circuit.FindLug(lugName) is { } lug)
        {
            return Lug(item, lug, moment);
        }

        if (item.ShownAs("wire") is { } id)
        {
            return circuit.Wires.FirstOrDefault(wire => wire.Id == id) is { } wire ? Wire(item, wire, moment) : item;
        }

        return item.ShownAs("part") is { } name && circuit.FindPart(name) is { } part
            ? Kept(item, part.Index == moment.Part ? 100 : KeptOf(part.Index, moment))
            : item;
    }

    private PictureItem? Wire(PictureItem item, Wire wire, Moment moment) =>
        moment.Wires.Contains(wire.Index) ? item
        : moment.Laid.Contains(wire.Index) ? Kept(item, FrameTokens.Quiet)
        : null;

    private PictureItem Lug(PictureItem item, Lug lug, Moment moment)
    {
        var soldered = item is PictureGroup group
            ? group with
            {
                Items = [.. group.Items.Where(inner => inner.Class != "joint" || IsMade(inner, lug, moment))],
            }
            : item;
        return moment.Lugs.Contains(lug.Index) ? soldered : Kept(soldered, KeptOf(lug.Part, moment));
    }

    private bool IsMade(PictureItem joint, Lug lug, Moment moment)
    {
        var ids = (joint.ShownAs("wire") ?? "").Split(' ');
        return Scene.Circuit.Wires.All(wire =>
            !ids.Contains(wire.Id, StringComparer.Ordinal) || !moment.Unsoldered.Contains((lug.Index, wire.Index))
        );
    }

    private static int KeptOf(int part, Moment moment) =>
        moment.Placed.Contains(part) ? FrameTokens.Placed : FrameTokens.Ghost;

    private PictureItem Kept(PictureItem item, int percent) => Faint.Of(item, Scene.Theme.Paper, percent);

    private IEnumerable<PathShape> Halos(Moment moment)
    {
        var paint = Paint.Stroked(
            Scene.Theme.Warning.Over(Scene.Theme.Paper, FrameTokens.Halo),
            FrameTokens.HaloWidth
        ) with
        {
            HasRoundEnds = true,
        };
        return moment.NewWires.SelectMany(WaysOf).Select(way => new PathShape("halo", way, paint));
    }

    private IEnumerable<ImmutableArray<PathStep>> WaysOf(int wire)
    {
        var id = Scene.Circuit.Wires[wire].Id;
        var routes = Scene
            .Layout.Wires.Concat(Scene.Layout.Braids.SelectMany(braid => braid.Tails))
            .Where(route => route.Wire.Id == id)
            .Select(route => route.Points);
        var sheaths = Scene.Layout.Braids.Where(braid => braid.Cable.BraidId == id).SelectMany(braid => braid.Sheath);
        return routes
            .Concat(sheaths)
            .Where(points => points.Length > 1)
            .Select(points => WirePath.Draw(points, []).Steps);
    }

    /// <summary>What a step is about: its lugs and the whole way of its wires; null for what has no place on the drawing.</summary>
    public Box? About(Moment moment)
    {
        var wires = moment.NewWires.SelectMany(WaysOf).SelectMany(way => way.Select(step => step.To));
        var lugs = moment.Lugs.SelectMany(lug => PlacesOf(lug, moment.Wires));
        var boxes = wires.Concat(lugs).Select(at => Box.Around(at, 0, 0));
        if (moment.Part is { } index && Scene.FindPart(index) is { } part)
        {
            boxes = boxes.Append(part.Bounds);
        }

        return boxes
            .Select(box => (Box?)box)
            .Aggregate((Box?)null, (all, box) => all is { } one ? Box.Union(one, box!.Value) : box);
    }

    private IEnumerable<PathShape> Lifted(Moment moment)
    {
        Point[] ends = [.. moment.Lugs.SelectMany(lug => PlacesOf(lug, []).Take(1))];
        if (moment.Lifted is not { } wire || ends.Length < 2)
        {
            yield break;
        }

        var style = WireStyle.Of(Scene.Theme, wire);
        foreach (var paint in new[] { style.CasingPaint, style.CorePaint })
        {
            yield return PathShape.Through(
                "lifted",
                paint with
                {
                    Dashes = [FrameTokens.LiftedDash, FrameTokens.LiftedDash],
                },
                ends
            );
        }
    }
}
