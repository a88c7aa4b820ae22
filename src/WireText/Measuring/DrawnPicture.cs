using System.Collections.Immutable;

namespace WireText.Measuring;

/// <summary>What a reader of the drawing sees, as the SVG says it.</summary>
internal sealed record DrawnPicture(
    Frame Page,
    ImmutableArray<DrawnBody> Bodies,
    ImmutableArray<DrawnLug> Lugs,
    ImmutableArray<DrawnSurface> Surfaces,
    ImmutableArray<DrawnJoint> Joints,
    ImmutableArray<DrawnWire> Wires,
    ImmutableArray<DrawnBraid> Braids,
    ImmutableArray<DrawnLabel> Labels
)
{
    /// <summary>By lug or wire whose name or tag stands apart: where the thin line to it begins.</summary>
    public Dictionary<string, Spot> Led { get; init; } = new(StringComparer.Ordinal);

    /// <summary>Pairs of a part and the one on which it lies.</summary>
    public HashSet<(string Part, string On)> Seats { get; } =
    [.. Bodies.Where(body => body.On is not null).Select(body => (body.Part, body.On!))];
}

/// <summary>A disc or an upright box.</summary>
internal abstract record Shape
{
    public abstract Frame Bounds { get; }

    public abstract bool Holds(Spot spot, double slack);

    public abstract Interval Inside(Segment segment);

    public sealed record Disc(Spot Centre, double Radius) : Shape
    {
        public override Frame Bounds => Frame.Around(Centre, Centre).Grown(Radius);

        public override bool Holds(Spot spot, double slack) => Centre.DistanceTo(spot) <= Radius + slack;

        public override Interval Inside(Segment segment) => Clipping.InsideDisc(segment, Centre, Radius);
    }

    public sealed record Rectangle(Frame Frame) : Shape
    {
        public override Frame Bounds => Frame;

        public override bool Holds(Spot spot, double slack) => Frame.DistanceTo(spot) <= slack;

        public override Interval Inside(Segment segment) => Clipping.InsideFrame(segment, Frame);
    }
}

/// <param name="On">The part on which this one lies, or null.</param>
/// <param name="Kind">What the part is, as the drawing says it.</param>
internal sealed record DrawnBody(string Part, Shape Shape, string? On = null, string Kind = "");

internal sealed record DrawnLug(string Name, string Part, Shape.Disc Eyelet);

/// <summary>Metal that takes many joints.</summary>
internal sealed record DrawnSurface(string Name, string Part, Shape Shape);

/// <summary>A blob of solder; on a surface it is an obstacle to labels, as an eyelet is.</summary>
internal sealed record DrawnJoint(string Lug, string Wire, Shape.Disc Blob);

/// <summary>One line of conductor: a wire from end to end, or the tail of a braid.</summary>
/// <param name="Points">Corners as sharp ones, hops as straight; no two neighbours coincide and none lies on a straight run.</param>
internal sealed record DrawnPath(ImmutableArray<Spot> Points, ImmutableArray<DrawnHop> Hops)
{
    public Spot First => Points[0];

    public Spot Last => Points[^1];
}

/// <param name="Bounds">Around the centre line of the half circle.</param>
internal readonly record struct DrawnHop(Spot Centre, Frame Bounds);

/// <param name="Path">Null when the wire's group holds no path.</param>
/// <param name="Colour">The code of its insulation; <c>bare</c>, or empty where none is stated.</param>
internal sealed record DrawnWire(
    string Id,
    string From,
    string To,
    string Kind,
    double CoreWidth,
    DrawnPath? Path,
    string Colour
)
{
    /// <summary>True for insulation of a stated colour: its code should stand on the wire.</summary>
    public bool WantsTag => Kind != "part-lead" && Colour is not ("" or "bare");
}

/// <param name="From">Empty when it is cut back there.</param>
/// <param name="To">Empty when it is cut back there.</param>
internal sealed record DrawnBraid(
    string Id,
    string From,
    string To,
    ImmutableArray<DrawnPath> Sheaths,
    ImmutableArray<DrawnPath> Tails
);

/// <param name="Thing">What it is, for reports.</param>
/// <param name="Part">The part that it belongs to, or null.</param>
/// <param name="Wire">The wire that it is the tag of, or null.</param>
/// <param name="Words">What it says; empty for a tag.</param>
internal sealed record DrawnLabel(DrawnThing Thing, string? Part, string? Wire, Frame Bounds, string Words = "");

/// <summary>The text is no drawing that can be measured.</summary>
internal sealed class UnreadablePictureException : Exception
{
    public UnreadablePictureException(string message)
        : base(message) { }

    public UnreadablePictureException(string message, Exception inner)
        : base(message, inner) { }

    public UnreadablePictureException() { }
}
