using System.Collections.Immutable;

namespace WireText.Measuring;

/// <summary>A wire that the circuit asks for, to count the picture's wires against.</summary>
/// <param name="From">The full name of a lug; null or empty for the end of a braid that is cut back.</param>
/// <param name="To">As <paramref name="From"/>.</param>
public sealed record ExpectedWire(string Id, string? From, string? To);

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

    /// <summary>What no drawing may have: kind by kind, each in the ordinal order of the names concerned.</summary>
    public ImmutableArray<PictureFault> Faults { get; init; } = [];

    /// <summary>What is right and can be read wrongly: kind by kind, each in the ordinal order of the names concerned.</summary>
    public ImmutableArray<PictureDoubt> Doubts { get; init; } = [];

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

    /// <summary>Of the whole page, in square millimetres.</summary>
    public double PageArea { get; init; }

    /// <summary>The share, 0 to 1, of the page that the box around parts, lugs and wires takes.</summary>
    public double ShareOfPage => PageArea > 0 ? Area / PageArea : 0;

    /// <summary>1 when there is no wire.</summary>
    public double LengthOverLowerBound => LowerBound > 0 ? Length / LowerBound : 1;

    /// <summary>For comparing two legal drawings: length + 60 a bend + 160 a crossing, in tenths of a pitch; less is better.</summary>
    public double Score => (Length * 5) + (60 * Bends) + (160 * Crossings);

    /// <summary>True when it could be measured and has no fault.</summary>
    public bool IsClean => Error is null && Faults.IsEmpty;

    /// <summary>The faults of one kind.</summary>
    public IEnumerable<PictureFault> FaultsOf(FaultKind kind) => Faults.Where(fault => fault.Kind == kind);

    /// <summary>The doubts of one kind.</summary>
    public IEnumerable<PictureDoubt> DoubtsOf(DoubtKind kind) => Doubts.Where(doubt => doubt.Kind == kind);

    /// <summary>The measure as JSON, indented, in a fixed order; numbers to three decimals.</summary>
    public string ToJson() => PictureMeasureJson.Write(this);
}
