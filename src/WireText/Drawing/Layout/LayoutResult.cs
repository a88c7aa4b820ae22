using System.Collections.Immutable;
using WireText.Drawing.Layout.Routing;
using WireText.Geometry;

namespace WireText.Drawing.Layout;

/// <summary>How much work a layout does; both are limited by counts, never by time, and both are legal drawings.</summary>
public enum LayoutEffort
{
    /// <summary>For an editor: one placement start, negotiation, single improvement.</summary>
    Quick,

    /// <summary>For files.</summary>
    Full,
}

/// <summary>A part in its place.</summary>
/// <param name="At">Its hole, in millimetres on the page.</param>
/// <param name="Turn">0, 90, 180 or 270, clockwise.</param>
/// <param name="Label">Where its outside label goes; null when it has none.</param>
public sealed record PlacedPart(LayoutPart Part, Point At, int Turn, Box? Label)
{
    public Pose Pose => new(At, Turn);

    /// <summary>A point of the part's own frame, on the page.</summary>
    public Point OnPage(Point own) => Pose.OnPage(own);
}

/// <summary>One wire's path. It starts and ends on its own lugs or surfaces, runs only along the axes but for a last short stretch at each end, crosses no body but those it ends on, and shares no length with another wire.</summary>
/// <param name="Points">Corners, from the first end to the other, in millimetres; corner radii and hops are the picture's business.</param>
/// <param name="Hops">Points where this wire goes over another.</param>
/// <param name="Tag">Where its tag goes, or null.</param>
/// <param name="IsTagVertical">True when the tag's text is turned with a vertical stretch.</param>
public sealed record RoutedWire(
    LayoutWire Wire,
    ImmutableArray<Point> Points,
    ImmutableArray<Point> Hops,
    Box? Tag,
    bool IsTagVertical
)
{
    /// <summary>Crossings at which neither wire has room for a hop: this one goes straight over a gap in the other.</summary>
    public ImmutableArray<Point> Gaps { get; init; } = [];
}

/// <summary>The braid of one cable.</summary>
/// <param name="Sheath">For each core, the stretch of its path that the braid covers.</param>
/// <param name="Tails">From where it breaks out of the first core to its own lugs: none, one or two. Each starts on that core, so its wire has no first end (an empty id), and carries the braid's id.</param>
public sealed record RoutedBraid(
    LayoutCable Cable,
    ImmutableArray<ImmutableArray<Point>> Sheath,
    ImmutableArray<RoutedWire> Tails
);

/// <summary>The finished geometry.</summary>
/// <param name="Extent">What the parts, wires and labels take up, without a margin.</param>
/// <param name="Unrouted">Ids of wires for which no legal path was found; the drawing says so and never draws one wire on another.</param>
public sealed record LayoutResult(
    ImmutableArray<PlacedPart> Parts,
    ImmutableArray<RoutedWire> Wires,
    ImmutableArray<RoutedBraid> Braids,
    Box Extent,
    ImmutableArray<string> Unrouted
)
{
    /// <summary>The work that it took, in states of the router; 0 for a layout that was taken over.</summary>
    public long States { get; init; }

    /// <summary>Ids of the parts that found their own place.</summary>
    public ImmutableArray<string> Found { get; init; } = [];

    /// <summary>
    /// Where the search put the big parts: rows of ids with null for an empty cell, which given as an arrangement, with the
    /// parts' turns, leads to the same places again. Empty when the author placed some part.
    /// </summary>
    public ImmutableArray<ImmutableArray<string?>> Slots { get; init; } = [];

    /// <summary>What the wires were routed on, for a layout that goes on from this one; null when that would keep too much.</summary>
    internal RoutedLattice? Routed { get; init; }
}
