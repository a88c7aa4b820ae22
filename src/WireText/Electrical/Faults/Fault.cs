using System.Collections.Immutable;

namespace WireText.Electrical.Faults;

/// <summary>One thing that may be wrong with an instrument that is otherwise built as its text says.</summary>
/// <param name="Index">Its place in the list of faults.</param>
/// <param name="Words">What is wrong, as it is said at the bench.</param>
/// <param name="Sizes">What it may come to: one for most faults.</param>
public sealed record Fault(int Index, FaultKind Kind, string Words, ImmutableArray<FaultSize> Sizes)
{
    /// <summary>A fault of one size, still without its place in the list.</summary>
    internal static Fault Of(FaultKind kind, string words, params ReadOnlySpan<FaultEdit> edits) =>
        new(0, kind, words, [new FaultSize([.. edits])]);

    /// <summary>A fault that may come to more or to less, still without its place in the list.</summary>
    internal static Fault Of(FaultKind kind, string words, IEnumerable<FaultSize> sizes) =>
        new(0, kind, words, [.. sizes]);

    /// <summary>The joint that it is at, as an index into <see cref="Instrument.Joints"/>.</summary>
    public int? Joint { get; init; }

    /// <summary>The leaf that it is in, as an index into <see cref="Instrument.Leaves"/>.</summary>
    public int? Leaf { get; init; }

    /// <summary>The element that it is in.</summary>
    public int? Element { get; init; }

    /// <summary>Two lugs that it joins.</summary>
    public (int One, int Other)? Lugs { get; init; }

    /// <summary>True where the lead is at fault: nothing of the instrument.</summary>
    public bool IsInLead => Kind is FaultKind.LeadOpen or FaultKind.LeadShorted;
}

/// <summary>A fault at one size: a candidate.</summary>
/// <param name="Edits">What it changes.</param>
public sealed record FaultSize(ImmutableArray<FaultEdit> Edits)
{
    /// <summary>What it comes to, in words; null where the fault has one size.</summary>
    public string? Words { get; init; }

    /// <summary>The element whose resistance the size sets, an added one behind the others; null where none.</summary>
    public int? Sized { get; init; }

    /// <summary>How far the size may lie from this one, as half of the width of its cell in ln R.</summary>
    public double HalfWidth { get; init; }
}
