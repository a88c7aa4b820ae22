using WireText.Drawing.Layout;
using WireText.Geometry;

namespace WireText.Tests.Drawing.Layout;

/// <summary>
/// Measures finished geometry by the definitions in docs/layout.md, and by nothing else: it sees polylines, outlines and boxes,
/// and shares no code with layout. Lengths in millimetres; one pitch is 2.
/// </summary>
internal sealed class LayoutMeasure
{
    private const double Pitch = 2;
    private const double Excused = 1.4 * Pitch;
    private const double Sample = 0.05;

    private readonly LayoutResult result;
    private readonly List<Wire> wires = [];
    private readonly Dictionary<string, (PlacedPart Part, Point? At, Outline? Surface)> ends = [];

    private sealed record Wire(RoutedWire Routed, Piece[] Pieces, Point Start, Point End);

    private readonly record struct Piece(Point A, Point B)
    {
        public double Length => Apart(A, B);

        public bool IsFlat => Math.Abs(A.Y - B.Y) < 1e-6;

        public bool IsUpright => Math.Abs(A.X - B.X) < 1e-6;

        public double Left => Math.Min(A.X, B.X);

        public double Right => Math.Max(A.X, B.X);

        public double Top => Math.Min(A.Y, B.Y);

        public double Bottom => Math.Max(A.Y, B.Y);
    }

    /// <summary>In pitches: what the layout cases and the examples keep to.</summary>
    private const double RealPartsSlant = 2.2;

    /// <summary>
    /// In pitches: a lug's node is the nearest free one of the four by four around it, so at most 2√2 away, and a
    /// slanted stretch ends at the latest one pitch further. Lugs that crowd closer than a lane can come near this.
    /// </summary>
    public static readonly double CrowdedPartsSlant = (2 * Math.Sqrt(2)) + 1;

    private readonly double longestSlant;

    /// <param name="longestSlant">How long a slanted last stretch may be, in pitches.</param>
    public LayoutMeasure(LayoutResult result, double longestSlant = RealPartsSlant)
    {
        this.result = result;
        this.longestSlant = longestSlant;
        foreach (var part in result.Parts)
        {
            foreach (var lug in part.Part.Lugs)
            {
                ends.TryAdd(lug.Id, (part, part.OnPage(lug.At), null));
            }

            foreach (var surface in part.Part.Surfaces)
            {
                ends.TryAdd(surface.Id, (part, null, Moved(part, surface.Shape)));
            }
        }

        foreach (var wire in result.Wires.Concat(result.Braids.SelectMany(braid => braid.Tails)))
        {
            var pieces = wire.Points.Zip(wire.Points.Skip(1), (a, b) => new Piece(a, b)).ToArray();
            wires.Add(new Wire(wire, pieces, wire.Points[0], wire.Points[^1]));
        }

        MeasurePairs();
        MeasureAlone();
        MeasureLabels();
        MeasureHops();
    }

    /// <summary>What must be nothing.</summary>
    public List<LayoutFault> Faults { get; } = [];

    public int Crossings { get; private set; }

    public int Bends { get; private set; }

    public double Length { get; private set; }

    public double LowerBound { get; private set; }

    public int TagsWanted => result.Wires.Count(wire => wire.Wire.Tag is not null);

    public int TagsPlaced => result.Wires.Count(wire => wire.Tag is not null);

    public double LengthRatio => LowerBound > 0 ? Length / LowerBound : 1;

    public static double Apart(Point a, Point b) => Math.Sqrt(Math.Pow(a.X - b.X, 2) + Math.Pow(a.Y - b.Y, 2));

    private static double Apart(Point point, Piece piece)
    {
        var (dx, dy) = (piece.B.X - piece.A.X, piece.B.Y - piece.A.Y);
        var square = (dx * dx) + (dy * dy);
        var share = square < 1e-12 ? 0 : (((point.X - piece.A.X) * dx) + ((point.Y - piece.A.Y) * dy)) / square;
        share = Math.Clamp(share, 0, 1);
        return Apart(point, new Point(piece.A.X + (share * dx), piece.A.Y + (share * dy)));
    }

    /// <summary>From a point to the nearest piece of a path, in millimetres.</summary>
    public static double Apart(Point point, IReadOnlyList<Point> path) =>
        path.Zip(path.Skip(1), (a, b) => Apart(point, new Piece(a, b))).Min();

    private static Outline Moved(PlacedPart part, Outline outline)
    {
        if (outline is Outline.Circle circle)
        {
            return new Outline.Circle(part.OnPage(circle.Centre), circle.Radius);
        }

        var box = ((Outline.Rectangle)outline).Box;
        var (a, b) = (part.OnPage(new Point(box.X, box.Y)), part.OnPage(new Point(box.Right, box.Bottom)));
        return new Outline.Rectangle(
            new Box(Math.Min(a.X, b.X), Math.Min(a.Y, b.Y), Math.Abs(a.X - b.X), Math.Abs(a.Y - b.Y))
        );
    }

    private static bool IsInside(Outline outline, Point point, double slack = 0) =>
        outline switch
        {
            Outline.Circle circle => Apart(circle.Centre, point) < circle.Radius + slack,
            Outline.Rectangle { Box: var box } => point.X > box.X - slack
                && point.X < box.Right + slack
                && point.Y > box.Y - slack
                && point.Y < box.Bottom + slack,
            _ => false,
        };

    private static IEnumerable<Point> Samples(Piece piece)
    {
        var steps = Math.Max(1, (int)Math.Ceiling(piece.Length / Sample));
        for (var i = 0; i < steps; i++)
        {
            var share = (i + 0.5) / steps;
            yield return new Point(
                piece.A.X + ((piece.B.X - piece.A.X) * share),
                piece.A.Y + ((piece.B.Y - piece.A.Y) * share)
            );
        }
    }

    private void Add(LayoutFaultKind kind, string what) => Faults.Add(new LayoutFault(kind, what));

    private void MeasurePairs()
    {
        for (var i = 0; i < wires.Count; i++)
        {
            for (var j = i + 1; j < wires.Count; j++)
            {
                MeasurePair(wires[i], wires[j]);
            }
        }
    }

    private void MeasurePair(Wire one, Wire two)
    {
        var crossings = new List<Point>();
        foreach (var a in one.Pieces)
        {
            foreach (var b in two.Pieces)
            {
                if (
                    Crossing(a, b) is { } at
                    && !IsBreakout(one, two, at)
                    && !crossings.Exists(known => Apart(known, at) < 1e-3)
                )
                {
                    crossings.Add(at);
                }
            }
        }

        var shared = SharedEnds(one, two);
        Crossings += crossings.Count(at => !shared.Exists(end => Apart(end, at) < Excused));
        var (overlap, crowding) = (0.0, 0.0);
        foreach (var a in one.Pieces)
        {
            var near = two.Pieces.Where(b => BoxesNear(a, b, 0.5 * Pitch)).ToArray();
            if (near.Length == 0)
            {
                continue;
            }

            var weight = a.Length / Math.Max(1, (int)Math.Ceiling(a.Length / Sample));
            foreach (var point in Samples(a))
            {
                if (shared.Exists(end => Apart(end, point) < Excused))
                {
                    continue;
                }

                if (near.Any(b => IsParallel(a, b) && Apart(point, b) < 0.15 * Pitch))
                {
                    overlap += weight;
                }
                else if (
                    near.Any(b => Apart(point, b) < (0.5 * Pitch) - 1e-6)
                    && !crossings.Exists(at => Apart(at, point) < Pitch)
                )
                {
                    crowding += weight;
                }
            }
        }

        if (overlap > 0.6 * Pitch)
        {
            Add(LayoutFaultKind.Overlap, $"{one.Routed.Wire.Id} and {two.Routed.Wire.Id}, {overlap:0.0} mm");
        }

        if (crowding > 0.6 * Pitch)
        {
            Add(LayoutFaultKind.Crowding, $"{one.Routed.Wire.Id} and {two.Routed.Wire.Id}, {crowding:0.0} mm");
        }
    }

    /// <summary>A braid's tail starts on its core: that is no crossing.</summary>
    private static bool IsBreakout(Wire one, Wire two, Point at) =>
        (one.Routed.Wire.From.Length == 0 && Apart(one.Start, at) < 1e-6)
        || (two.Routed.Wire.From.Length == 0 && Apart(two.Start, at) < 1e-6);

    private static bool BoxesNear(Piece a, Piece b, double by) =>
        a.Left - by <= b.Right && b.Left - by <= a.Right && a.Top - by <= b.Bottom && b.Top - by <= a.Bottom;

    private static bool IsParallel(Piece a, Piece b)
    {
        var cross = ((a.B.X - a.A.X) * (b.B.Y - b.A.Y)) - ((a.B.Y - a.A.Y) * (b.B.X - b.A.X));
        return Math.Abs(cross) <= 0.1 * a.Length * b.Length;
    }

    private List<Point> SharedEnds(Wire one, Wire two)
    {
        var shared = new List<Point>();
        foreach (var a in new[] { (one.Routed.Wire.From, one.Start), (one.Routed.Wire.To, one.End) })
        {
            foreach (var b in new[] { (two.Routed.Wire.From, two.Start), (two.Routed.Wire.To, two.End) })
            {
                if (a.Item1 == b.Item1 && Apart(a.Item2, b.Item2) < 1e-6)
                {
                    shared.Add(a.Item2);
                }
            }
        }

        // Where a braid's tail starts on its core the two are one conductor and its cover.
        foreach (var (tail, other) in new[] { (one, two), (two, one) })
        {
            if (tail.Routed.Wire.From.Length == 0 && other.Pieces.Any(piece => Apart(tail.Start, piece) < 1e-6))
            {
                shared.Add(tail.Start);
            }
        }

        return shared;
    }

    /// <summary>Where two pieces properly cross or one ends on the other's inside.</summary>
    private static Point? Crossing(Piece a, Piece b)
    {
        var (rx, ry, sx, sy) = (a.B.X - a.A.X, a.B.Y - a.A.Y, b.B.X - b.A.X, b.B.Y - b.A.Y);
        var cross = (rx * sy) - (ry * sx);
        if (Math.Abs(cross) < 1e-9)
        {
            return null;
        }

        var (qx, qy) = (b.A.X - a.A.X, b.A.Y - a.A.Y);
        var (t, u) = (((qx * sy) - (qy * sx)) / cross, ((qx * ry) - (qy * rx)) / cross);
        return t >= -1e-9 && t <= 1 + 1e-9 && u >= -1e-9 && u <= 1 + 1e-9
            ? new Point(a.A.X + (t * rx), a.A.Y + (t * ry))
            : null;
    }

    private void MeasureAlone()
    {
        foreach (var wire in wires)
        {
            CheckEnd(wire, wire.Routed.Wire.From, wire.Start);
            CheckEnd(wire, wire.Routed.Wire.To, wire.End);
            CheckAxes(wire);
            CheckBodies(wire);
            CheckLugs(wire);
            Length += wire.Pieces.Sum(piece => piece.Length);
            LowerBound += Math.Abs(wire.Start.X - wire.End.X) + Math.Abs(wire.Start.Y - wire.End.Y);
            Bends += Math.Max(0, wire.Pieces.Length - 1);
        }

        Faults.AddRange(result.Unrouted.Select(id => new LayoutFault(LayoutFaultKind.Unrouted, id)));
    }

    private void CheckEnd(Wire wire, string id, Point at)
    {
        if (id.Length == 0)
        {
            return;
        }

        if (!ends.TryGetValue(id, out var end))
        {
            Add(LayoutFaultKind.WrongEnd, $"{wire.Routed.Wire.Id} ends on {id}, which is no lug");
        }
        else if (end.At is { } lug ? Apart(lug, at) > 1e-6 : !IsInside(end.Surface!, at))
        {
            Add(LayoutFaultKind.WrongEnd, $"{wire.Routed.Wire.Id} at {id}");
        }
    }

    /// <summary>Only the last stretch to a lug may be slanted.</summary>
    private void CheckAxes(Wire wire)
    {
        for (var i = 0; i < wire.Pieces.Length; i++)
        {
            var piece = wire.Pieces[i];
            var isLast = i == 0 || i == wire.Pieces.Length - 1;
            if (!piece.IsFlat && !piece.IsUpright && (!isLast || piece.Length > longestSlant * Pitch))
            {
                Add(LayoutFaultKind.Slanted, $"{wire.Routed.Wire.Id} for {piece.Length:0.0} mm");
            }
        }
    }

    private void CheckBodies(Wire wire)
    {
        foreach (var part in result.Parts)
        {
            if (IsExcused(wire, part))
            {
                continue;
            }

            var inside = 0.0;
            var outlines = part.Part.Body.Select(outline => Moved(part, outline)).ToArray();
            foreach (var piece in wire.Pieces)
            {
                var weight = piece.Length / Math.Max(1, (int)Math.Ceiling(piece.Length / Sample));
                inside += weight * Samples(piece).Count(point => outlines.Any(o => IsInside(o, point)));
            }

            if (inside > 0.4 * Pitch)
            {
                Add(LayoutFaultKind.ThroughBody, $"{wire.Routed.Wire.Id} runs {inside:0.0} mm inside {part.Part.Id}");
            }
        }
    }

    /// <summary>A wire may enter the part of which it ends on a surface or on a lug inside the outline, and one that its end was put on top of.</summary>
    private bool IsExcused(Wire wire, PlacedPart part) =>
        IsOwn(wire.Routed.Wire.From, wire.Start, part) || IsOwn(wire.Routed.Wire.To, wire.End, part);

    private bool IsOwn(string id, Point at, PlacedPart part)
    {
        if (!ends.TryGetValue(id, out var end))
        {
            return false;
        }

        var isItsSurface = end.At is null && ReferenceEquals(end.Part, part);
        return isItsSurface || part.Part.Body.Any(outline => IsInside(Moved(part, outline), at, 0.6 * Pitch));
    }

    private void CheckLugs(Wire wire)
    {
        foreach (var (id, end) in ends.OrderBy(pair => pair.Key, StringComparer.Ordinal))
        {
            if (end.At is not { } lug || id == wire.Routed.Wire.From || id == wire.Routed.Wire.To)
            {
                continue;
            }

            var distance = wire.Pieces.Min(piece => Apart(lug, piece));
            if (distance < (0.7 * Pitch) - 1e-6)
            {
                Add(LayoutFaultKind.FalseJoint, $"{wire.Routed.Wire.Id} passes {id} at {distance:0.00} mm");
            }
        }
    }

    private void MeasureLabels()
    {
        var labels = new List<(string Name, Box Box, RoutedWire? Wire)>();
        foreach (var part in result.Parts.Where(part => part.Label is not null))
        {
            labels.Add((part.Part.Id, part.Label!.Value, null));
        }

        foreach (var wire in wires.Where(wire => wire.Routed.Tag is not null))
        {
            labels.Add((wire.Routed.Wire.Id, wire.Routed.Tag!.Value, wire.Routed));
        }

        for (var i = 0; i < labels.Count; i++)
        {
            CheckLabel(labels[i].Name, labels[i].Box, labels[i].Wire);
            for (var j = i + 1; j < labels.Count; j++)
            {
                if (Share(labels[i].Box, labels[j].Box))
                {
                    Add(LayoutFaultKind.LabelOverlap, $"{labels[i].Name} and {labels[j].Name}");
                }
            }
        }
    }

    private void CheckLabel(string name, Box box, RoutedWire? own)
    {
        foreach (var part in result.Parts)
        {
            var isOwn = own is { Wire: var wire } && (IsLugOf(part.Part, wire.From) || IsLugOf(part.Part, wire.To));
            if (!isOwn && part.Part.Body.Any(outline => Touches(Moved(part, outline), box)))
            {
                Add(LayoutFaultKind.LabelOverlap, $"{name} and the body of {part.Part.Id}");
            }
        }

        foreach (var (id, end) in ends.Where(e => e.Value.At is not null))
        {
            if (Touches(new Outline.Circle(end.At!.Value, 0.8), box))
            {
                Add(LayoutFaultKind.LabelOverlap, $"{name} and lug {id}");
            }
        }

        foreach (var wire in wires.Where(wire => wire.Routed != own))
        {
            // Half of a wire with its casing is 0.7 mm.
            var grown = new Box(box.X - 0.69, box.Y - 0.69, box.Width + 1.38, box.Height + 1.38);
            if (wire.Pieces.Any(piece => Samples(piece).Any(point => IsInside(new Outline.Rectangle(grown), point))))
            {
                Add(LayoutFaultKind.LabelOverlap, $"{name} and wire {wire.Routed.Wire.Id}");
            }

            if (wire.Routed.Hops.Any(hop => Touches(new Outline.Circle(hop, 0.9), box)))
            {
                Add(LayoutFaultKind.LabelOverlap, $"{name} and a hop of {wire.Routed.Wire.Id}");
            }
        }
    }

    private static bool IsLugOf(LayoutPart part, string id) =>
        part.Lugs.Any(lug => lug.Id == id) || part.Surfaces.Any(surface => surface.Id == id);

    private static bool Share(Box a, Box b) =>
        a.X < b.Right - 1e-6 && b.X < a.Right - 1e-6 && a.Y < b.Bottom - 1e-6 && b.Y < a.Bottom - 1e-6;

    private static bool Touches(Outline outline, Box box)
    {
        if (outline is Outline.Rectangle rectangle)
        {
            return Share(rectangle.Box, box);
        }

        var circle = (Outline.Circle)outline;
        var nearest = new Point(
            Math.Clamp(circle.Centre.X, box.X, box.Right),
            Math.Clamp(circle.Centre.Y, box.Y, box.Bottom)
        );
        return Apart(nearest, circle.Centre) < circle.Radius - 1e-6;
    }

    private void MeasureHops()
    {
        foreach (var wire in wires)
        {
            foreach (var hop in wire.Routed.Hops)
            {
                if (wire.Routed.Points.Any(corner => Apart(corner, hop) < (1.3 * Pitch) - 1e-6))
                {
                    Add(LayoutFaultKind.CrampedHop, wire.Routed.Wire.Id);
                }
            }

            Faults.AddRange(
                wire.Routed.Gaps.Select(_ => new LayoutFault(
                    LayoutFaultKind.CrampedHop,
                    $"{wire.Routed.Wire.Id}, drawn as a gap"
                ))
            );
        }
    }
}
