using System.Collections.Immutable;
using WireText.Drawing.Faces;
using WireText.Drawing.Layout;
using WireText.Drawing.Layout.Finishing;
using WireText.Drawing.Lettering;
using WireText.Geometry;

namespace WireText.Drawing.Pictures;

/// <summary>Where a wire leaves a close-up.</summary>
/// <param name="To">The full name of the lug that it goes to.</param>
/// <param name="At">Its cut end.</param>
/// <param name="Side">The direction that it has there.</param>
/// <param name="IsInside">True for a wire that goes to another part within the frame, which is not drawn.</param>
internal sealed record WayOut(string To, Point At, Side Side, bool IsInside);

/// <summary>
/// Cuts one part out of a laid drawing with the wires that end on it, and makes places and paths larger, but neither wires nor
/// words: so there is more room between them.
/// </summary>
internal sealed class CloseUpCut
{
    private readonly Scene scene;
    private readonly PlacedFace part;
    private readonly HashSet<int> own;
    private readonly List<WayOut> ways = [];

    public CloseUpCut(Scene scene, PlacedFace part)
    {
        (this.scene, this.part) = (scene, part);
        own = [.. scene.PartOf(part).Lugs];
        Region = RegionOf();
        Face = Larger(part.Face);
        var wires = Wires().ToArray();
        Layout = LayoutOf(wires);
        Ways = [.. ways];
    }

    /// <summary>What of the drawing it shows, on the page.</summary>
    public Box Region { get; }

    public Face Face { get; }

    /// <summary>In millimetres of paper from the upper left corner of the region.</summary>
    public LayoutResult Layout { get; }

    public ImmutableArray<WayOut> Ways { get; }

    private bool IsOwn(int lug) => own.Contains(lug);

    private Point Larger(Point onPage) =>
        new((onPage.X - Region.X) * Tokens.CloseUpScale, (onPage.Y - Region.Y) * Tokens.CloseUpScale);

    /// <summary>The part and the wires within it, and a little round them.</summary>
    private Box RegionOf()
    {
        var box = part.DrawnOutlines().Select(outline => outline.Bounds).Aggregate(Box.Union);
        foreach (var lug in part.Face.Lugs)
        {
            box = Box.Union(box, Box.Around(part.OnPage(lug.At), 0, 0));
        }

        foreach (var wire in scene.Wires.Where(wire => IsOwn(wire.Wire.From) && IsOwn(wire.Wire.To)))
        {
            box = wire.Route.Points.Aggregate(box, (all, point) => Box.Union(all, Box.Around(point, 0, 0)));
        }

        var (left, right) = (EdgeAt(box.X, -1, point => point.X), EdgeAt(box.Right, 1, point => point.X));
        var (top, bottom) = (EdgeAt(box.Y, -1, point => point.Y), EdgeAt(box.Bottom, 1, point => point.Y));
        return new Box(left, top, right - left, bottom - top);
    }

    /// <summary>The edge of the region, where it does not run along a wire.</summary>
    private double EdgeAt(double inner, int way, Func<Point, double> across)
    {
        var along = scene
            .Wires.Where(wire => IsOwn(wire.Wire.From) || IsOwn(wire.Wire.To))
            .SelectMany(wire => wire.Route.Points.Skip(1).Zip(wire.Route.Points))
            .Where(stretch => Math.Abs(across(stretch.First) - across(stretch.Second)) < Tokens.WireCore)
            .Select(stretch => across(stretch.First))
            .ToArray();
        return new[] { 0, 0.5, 1, -0.5, 1.5, -1 }
            .Select(more => inner + (way * (Tokens.CloseUpMargin + more)))
            .MaxBy(edge => along.Select(at => Math.Abs(at - edge)).Append(Tokens.CloseUpMargin / 5).Min());
    }

    private static Face Larger(Face face) =>
        face with
        {
            Layout = face.Layout with
            {
                Body =
                [
                    Larger(face.Layout.Body[0]),
                    .. face.Layout.Body.Skip(1).OfType<Outline.Rectangle>().Select(board => LargerBoard(board.Box)),
                ],
                TextBox = face.Layout.TextBox is { } box ? Larger(box) : null,
            },
            Lugs = [.. face.Lugs.Select(lug => lug with { At = FromHole(lug.At) })],
            Surfaces = [.. face.Surfaces.Select(surface => surface with { Shape = Larger(surface.Shape) })],
            Scale = face.Scale * Tokens.CloseUpScale,
        };

    private static Point FromHole(Point own) => new(own.X * Tokens.CloseUpScale, own.Y * Tokens.CloseUpScale);

    private static Box Larger(Box own) =>
        new(
            own.X * Tokens.CloseUpScale,
            own.Y * Tokens.CloseUpScale,
            own.Width * Tokens.CloseUpScale,
            own.Height * Tokens.CloseUpScale
        );

    /// <summary>A board, so that what is drawn of it under the lugs grows too.</summary>
    private static Outline.Rectangle LargerBoard(Box board)
    {
        var larger = Larger(board);
        var more = (Tokens.CloseUpScale - 1) * Tokens.WaferReach;
        return new Outline.Rectangle(
            larger with
            {
                Y = board.Y < 0 ? larger.Y - more : larger.Y,
                Height = larger.Height + more,
            }
        );
    }

    private static Outline Larger(Outline own) =>
        own switch
        {
            Outline.Circle circle => new Outline.Circle(FromHole(circle.Centre), circle.Radius * Tokens.CloseUpScale),
            Outline.Rectangle rectangle => new Outline.Rectangle(Larger(rectangle.Box)),
            _ => own,
        };

    private IEnumerable<RoutedWire> Wires()
    {
        foreach (var (wire, route) in scene.Wires.Select(wire => (wire.Wire, wire.Route)))
        {
            if (IsOwn(wire.From) && IsOwn(wire.To))
            {
                yield return Larger(route, route.Points);
            }
            else if (IsOwn(wire.From))
            {
                yield return Larger(route, Stub(wire.To, route.Points));
            }
            else if (IsOwn(wire.To))
            {
                yield return Larger(route, [.. Stub(wire.From, [.. route.Points.Reverse()]).Reverse()]);
            }
        }
    }

    /// <summary>A wire from its lug here to where it leaves the region.</summary>
    private ImmutableArray<Point> Stub(int to, ImmutableArray<Point> points)
    {
        var kept = Kept(points);
        if (to >= 0)
        {
            ways.Add(
                new WayOut(
                    DrawnText.Clean(scene.Circuit.NameOf(to)),
                    Larger(kept[^1]),
                    SideDirections.Of(kept[^1] - kept[^2]),
                    IsInside: kept.Length == points.Length && kept[^1] == points[^1]
                )
            );
        }

        return kept;
    }

    private ImmutableArray<Point> Kept(ImmutableArray<Point> points)
    {
        for (var i = 1; i < points.Length; i++)
        {
            if (!Region.Contains(points[i]))
            {
                return [.. points.Take(i), Border(points[i - 1], points[i])];
            }
        }

        return points;
    }

    /// <summary>Where a stretch that begins inside the region leaves it.</summary>
    private Point Border(Point from, Point to)
    {
        var share = Math.Min(
            Share(from.X, to.X, to.X > from.X ? Region.Right : Region.X),
            Share(from.Y, to.Y, to.Y > from.Y ? Region.Bottom : Region.Y)
        );
        return new Point(from.X + ((to.X - from.X) * share), from.Y + ((to.Y - from.Y) * share));
    }

    private static double Share(double from, double to, double border) =>
        Math.Abs(to - from) < 1e-9 ? 1 : Math.Clamp((border - from) / (to - from), 0, 1);

    private RoutedWire Larger(RoutedWire route, ImmutableArray<Point> kept) =>
        route with
        {
            Points = [.. kept.Select(Larger)],
            Hops = [.. route.Hops.Where(Region.Contains).Select(Larger)],
            Gaps = [.. route.Gaps.Where(Region.Contains).Select(Larger)],
            Tag = null,
        };

    private LayoutResult LayoutOf(RoutedWire[] wires)
    {
        var extent = new Box(0, 0, Region.Width * Tokens.CloseUpScale, Region.Height * Tokens.CloseUpScale);
        var solids = Solids();
        var tags = TagPlacer.Place(
            [.. wires.Select(wire => wire.Points.ToArray())],
            [.. wires.Select(wire => wire.Wire.Tag)],
            [.. wires.Select(wire => wire.Hops.Concat(wire.Gaps).ToList())],
            (_, tag) => solids.IsHit(TagPlacer.Air(tag)) ? TagGround.Taken : TagGround.Paper
        );
        return new LayoutResult(
            [part.Placed with { At = Larger(part.Placed.At), Label = null }],
            [
                .. wires.Select(
                    (wire, i) => wire with { Tag = tags[i]?.Box, IsTagVertical = tags[i]?.IsVertical ?? false }
                ),
            ],
            [.. scene.Layout.Braids.Select(Cut).Where(braid => !braid.Tails.IsEmpty)],
            extent,
            []
        );
    }

    private BoxGrid Solids()
    {
        var solids = new BoxGrid();
        foreach (var lug in part.Face.Lugs)
        {
            solids.Add(Box.Around(Larger(part.OnPage(lug.At)), Tokens.JointDiameter, Tokens.JointDiameter));
        }

        foreach (var wire in scene.Wires)
        {
            foreach (var end in new[] { wire.Route.Points[0], wire.Route.Points[^1] })
            {
                solids.Add(Box.Around(Larger(end), Tokens.SurfaceJointDiameter, Tokens.SurfaceJointDiameter));
            }
        }

        if (part.Face.Layout.TextBox is { } text && !part.Face.Inside.IsEmpty)
        {
            var size = FaceLine.SizeOf(part.Face.Inside);
            solids.Add(Box.Around(Larger(part.OnPage(text).Centre), size.Width, size.Height));
        }

        return solids;
    }

    /// <summary>Of a braid, the tails that end on this part.</summary>
    private RoutedBraid Cut(RoutedBraid braid) =>
        braid with
        {
            Sheath = [],
            Tails =
            [
                .. braid
                    .Tails.Where(tail => IsOwnName(tail.Wire.From) || IsOwnName(tail.Wire.To))
                    .Select(tail =>
                        IsOwnName(tail.Wire.From)
                            ? Larger(tail, Kept(tail.Points))
                            : Larger(tail, [.. Kept([.. tail.Points.Reverse()]).Reverse()])
                    ),
            ],
        };

    private bool IsOwnName(string lug) => scene.Circuit.FindLug(lug) is { } found && IsOwn(found.Index);
}
