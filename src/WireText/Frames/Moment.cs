using System.Collections.Immutable;
using WireText.Circuits;

namespace WireText.Frames;

/// <summary>How far the work is at a step, and what the step is about. Numbers are indices into the lists of the circuit.</summary>
/// <param name="Group">The part of the work.</param>
/// <param name="Words">What is done.</param>
internal sealed record Moment(string Group, string Words)
{
    /// <summary>The wires that the step is about.</summary>
    public ImmutableHashSet<int> Wires { get; init; } = [];

    /// <summary>Those of them that were not there before.</summary>
    public ImmutableArray<int> NewWires { get; init; } = [];

    /// <summary>The wires that lie there, with those of the step.</summary>
    public required ImmutableHashSet<int> Laid { get; init; }

    /// <summary>The parts that are in their place.</summary>
    public required ImmutableHashSet<int> Placed { get; init; }

    /// <summary>Lugs with wires that are not soldered to them yet.</summary>
    public required ImmutableHashSet<(int Lug, int Wire)> Unsoldered { get; init; }

    /// <summary>The lugs that are named.</summary>
    public ImmutableArray<int> Lugs { get; init; } = [];

    /// <summary>The part that is fixed; null for none.</summary>
    public int? Part { get; init; }

    /// <summary>A wire that comes off, which the circuit has no more; null for none.</summary>
    public Wire? Lifted { get; init; }

    public int? Joint { get; init; }
}
