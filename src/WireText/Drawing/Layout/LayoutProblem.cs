using System.Collections.Immutable;
using WireText.Geometry;

namespace WireText.Drawing.Layout;

/// <summary>What has to be laid out, and nothing else: shapes, ends and hints. Millimetres; each part in its own frame.</summary>
/// <param name="Arrangement">Rows of part ids with null for an empty cell; empty when the author gave none.</param>
public sealed record LayoutProblem(
    ImmutableArray<LayoutPart> Parts,
    ImmutableArray<LayoutWire> Wires,
    ImmutableArray<LayoutCable> Cables,
    ImmutableArray<ImmutableArray<string?>> Arrangement
);

/// <summary>Where a part belongs when the author says nothing.</summary>
public enum LayoutZone
{
    Pickup,
    Switch,
    Pot,
    Jack,
    Ground,

    /// <summary>A two-lead part: it goes beside the lugs that it joins.</summary>
    Small,
}

/// <param name="Id">The part's name.</param>
/// <param name="Order">Left to right among the parts of its zone; for pickups, nearest the neck first.</param>
/// <param name="Body">The solid outline: no foreign wire enters it.</param>
/// <param name="TextBox">A place inside the body kept free for the part's own text; null when the text goes beside it.</param>
/// <param name="OutsideLabel">The size of the text that goes beside the body; null when there is none.</param>
/// <param name="GivenAt">Where the author put its hole; null when it finds its own place.</param>
/// <param name="GivenTurn">0, 90, 180 or 270, clockwise; null when it may turn.</param>
public sealed record LayoutPart(
    string Id,
    LayoutZone Zone,
    int Order,
    ImmutableArray<Outline> Body,
    ImmutableArray<LayoutLug> Lugs,
    ImmutableArray<LayoutSurface> Surfaces,
    Box? TextBox,
    Size? OutsideLabel,
    Point? GivenAt,
    int? GivenTurn
)
{
    /// <summary>Where it lies on the body of another part; null for a part that lies on none.</summary>
    public LayoutSeat? Seat { get; init; }
}

/// <summary>A place on the body of another part.</summary>
/// <param name="Host">The id of that part.</param>
/// <param name="At">The middle of the part on it, in the host's own frame; it is moved by up to half a lane, so that its lugs meet the lattice.</param>
/// <param name="Turn">In the host's own frame.</param>
public sealed record LayoutSeat(string Host, Point At, int Turn);

/// <param name="Id">The full name, <c>sel.A1</c>.</param>
/// <param name="Exits">The sides by which a wire may naturally leave; the first is the lug's outward side. A lug inside the body is reached from its first side along its own row or column.</param>
public sealed record LayoutLug(string Id, Point At, ImmutableArray<Side> Exits)
{
    /// <summary>The size of its name, for which a place beside it is kept as free as may be; null for none.</summary>
    public Size? Name { get; init; }
}

/// <summary>Metal that takes many joints, each at its own place: a pot's case.</summary>
/// <param name="Id">The full name, <c>vol.case</c>.</param>
public sealed record LayoutSurface(string Id, Outline Shape)
{
    /// <summary>What lies on it: no joint stands there while there is room beside it. Null for nothing.</summary>
    public Box? Cover { get; init; }
}

/// <summary>How important it is that a wire is drawn unbroken: the less important one hops at a crossing.</summary>
public enum WireRank
{
    Screen,
    Ground,
    Signal,
}

/// <param name="Id">Unique; the ids' order decides every tie.</param>
/// <param name="From">A lug or surface id.</param>
/// <param name="To">A lug or surface id.</param>
/// <param name="Tag">The size of the colour tag that it wants; null when it wants none (bare wire, a part's own lead).</param>
public sealed record LayoutWire(string Id, string From, string To, string Colour, WireRank Rank, Size? Tag);

/// <summary>Wires that run together. With a braid, the braid covers the cores and breaks out near each end to its own lug.</summary>
/// <param name="Cores">Ids of <see cref="LayoutProblem.Wires"/>.</param>
/// <param name="BraidId">The id of the braid as a wire; null when there is none.</param>
/// <param name="BraidFrom">Where the braid ends at the cores' first end; null when it is cut back there.</param>
/// <param name="BraidTo">Where the braid ends at the cores' other end; null when it is cut back there.</param>
public sealed record LayoutCable(
    string Id,
    ImmutableArray<string> Cores,
    string? BraidId,
    string? BraidFrom,
    string? BraidTo
);
