using System.Collections.Immutable;

namespace WireText.Measuring;

/// <summary>A wire that the circuit asks for, to count the picture's wires against.</summary>
/// <param name="From">The full name of a lug; null or empty for the end of a braid that is cut back.</param>
/// <param name="To">As <paramref name="From"/>.</param>
public sealed record ExpectedWire(string Id, string? From, string? To);

/// <summary>Two things that must keep apart and do not, named by what they are: <c>wire:a--b</c>, <c>part:sel</c>, <c>lug:sel.A1</c>, <c>tag:a--b</c>.</summary>
public readonly record struct OffendingPair(string First, string Second);

/// <summary>
/// What a finished drawing is like, read from the drawing alone. Lengths in millimetres; every list is in ordinal order.
/// </summary>
/// <remarks>One lane pitch is 2 mm. Pairs of wires are excused within 1.4 pitch of a lug on which both end.</remarks>
public sealed record PictureMeasure
{
    /// <summary>Why the drawing could not be measured; null when it was. Nothing else is meaningful beside it.</summary>
    public string? Error { get; init; }

    /// <summary>How many wires the circuit asks for; null when no circuit was given.</summary>
    public int? WiresInSource { get; init; }

    public int WiresInPicture { get; init; }

    /// <summary>Wires that the circuit asks for and the picture does not show, or shows without a path.</summary>
    public ImmutableArray<string> MissingWires { get; init; } = [];

    /// <summary>Wires that the picture shows and the circuit does not ask for, or shows more than once.</summary>
    public ImmutableArray<string> ExtraWires { get; init; } = [];

    /// <summary>Wires whose path does not end on the lugs or surfaces that it should join.</summary>
    public ImmutableArray<string> WrongEnds { get; init; } = [];

    /// <summary>Wires that run on one another: over 0.6 pitch of length, parallel and less than 0.15 pitch apart.</summary>
    public ImmutableArray<OffendingPair> Overlaps { get; init; } = [];

    /// <summary>Wires that run over 0.6 pitch less than 0.5 pitch apart, away from their crossings, and do not overlap.</summary>
    public ImmutableArray<OffendingPair> Crowding { get; init; } = [];

    /// <summary>A wire and the part inside whose outline it runs over 0.4 pitch. The way to its own inner lug or surface is excused.</summary>
    public ImmutableArray<OffendingPair> ThroughBodies { get; init; } = [];

    /// <summary>A wire and a lug that is not its end, less than 0.7 pitch from the wire's centre line.</summary>
    public ImmutableArray<OffendingPair> FalseJoints { get; init; } = [];

    /// <summary>Any two of label, body that is not its own, lug, other wire and hop that lie on one another.</summary>
    public ImmutableArray<OffendingPair> LabelOverlaps { get; init; } = [];

    /// <summary>Wire tags that do not touch their own wire.</summary>
    public ImmutableArray<string> StrayTags { get; init; } = [];

    /// <summary>Texts, parts and wires that are not wholly on the page.</summary>
    public ImmutableArray<string> OutsidePage { get; init; } = [];

    /// <summary>Wires with a hop less than 1.3 pitch from one of their own corners; a wire is named once for each.</summary>
    public ImmutableArray<string> CrampedHops { get; init; } = [];

    /// <summary>Wires whose insulation has a stated colour, so that its code should stand on them.</summary>
    public int TagsWanted { get; init; }

    /// <summary>How many of those carry a tag. The others must be told in words below the drawing.</summary>
    public int TagsPlaced { get; init; }

    public int Crossings { get; init; }

    public int MostCrossingsOnOneWire { get; init; }

    /// <summary>The share, 0 to 1, of the wires that cross no other.</summary>
    public double ShareWithoutCrossing { get; init; }

    /// <summary>All turning of all wires, divided by 90°.</summary>
    public double Bends { get; init; }

    /// <summary>The length of all wires; corners count as sharp and hops as straight.</summary>
    public double Length { get; init; }

    /// <summary>The sum of the Manhattan distances between the wires' ends.</summary>
    public double LowerBound { get; init; }

    /// <summary>The width of the box around parts, lugs and wires.</summary>
    public double Width { get; init; }

    /// <summary>The height of the box around parts, lugs and wires.</summary>
    public double Height { get; init; }

    /// <summary>Square millimetres.</summary>
    public double Area => Width * Height;

    /// <summary>1 when there is no wire.</summary>
    public double LengthOverLowerBound => LowerBound > 0 ? Length / LowerBound : 1;

    /// <summary>For comparing two legal drawings: length + 60 a bend + 160 a crossing, in tenths of a pitch; less is better.</summary>
    public double Score => (Length * 5) + (60 * Bends) + (160 * Crossings);

    /// <summary>The number of things that no drawing may have; 0 in a legal one.</summary>
    public int HardFaults =>
        MissingWires.Length
        + ExtraWires.Length
        + WrongEnds.Length
        + Overlaps.Length
        + Crowding.Length
        + ThroughBodies.Length
        + FalseJoints.Length
        + LabelOverlaps.Length
        + StrayTags.Length
        + OutsidePage.Length
        + CrampedHops.Length;

    /// <summary>True when it could be measured and has no hard fault.</summary>
    public bool IsClean => Error is null && HardFaults == 0;

    /// <summary>The measure as JSON, indented, in a fixed order; numbers to three decimals.</summary>
    public string ToJson() => PictureMeasureJson.Write(this);
}
