namespace WireText.Geometry;

/// <summary>One step of a path, ending at <see cref="To"/>.</summary>
public abstract record PathStep(Point To)
{
    public sealed record Move(Point To) : PathStep(To);

    public sealed record Line(Point To) : PathStep(To);

    /// <summary>A rounded corner, drawn from where the path is towards <paramref name="Corner"/> and away from it.</summary>
    public sealed record Turn(Point Corner, Point To) : PathStep(To);

    /// <summary>Half a circle along the line.</summary>
    public sealed record Hop(double Radius, bool IsClockwise, Point To) : PathStep(To);

    /// <summary>Back to where the path began.</summary>
    public sealed record Close(Point To) : PathStep(To);
}
