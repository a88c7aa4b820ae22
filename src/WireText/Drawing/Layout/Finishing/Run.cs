using WireText.Geometry;

namespace WireText.Drawing.Layout.Finishing;

/// <summary>One straight run of a wire while it may still be shifted sideways, in millimetres.</summary>
internal sealed class Run
{
    public required int Wire { get; init; }

    public required bool IsHorizontal { get; init; }

    /// <summary>Where the lattice put it: its y when it is horizontal, else its x.</summary>
    public required double Lane { get; init; }

    /// <summary>Where it is now.</summary>
    public required double At { get; set; }

    /// <summary>Its ends along its own axis, in the direction of the wire, unless a neighbouring run sets them.</summary>
    public required double FixedStart { get; set; }

    public required double FixedEnd { get; set; }

    public Run? Before { get; set; }

    public Run? After { get; set; }

    /// <summary>True when it must stay: other wires of its lug share the last step with it or with its neighbour.</summary>
    public bool IsFixed { get; set; }

    public double Start => Before?.At ?? FixedStart;

    public double End => After?.At ?? FixedEnd;

    public double Low => Math.Min(Start, End);

    public double High => Math.Max(Start, End);

    /// <summary>True when both its ends are corners, so that it may shift without leaving its lug.</summary>
    public bool IsInner => Before is not null && After is not null;

    public Point StartPoint => IsHorizontal ? new Point(Start, At) : new Point(At, Start);

    public Point EndPoint => IsHorizontal ? new Point(End, At) : new Point(At, End);
}
