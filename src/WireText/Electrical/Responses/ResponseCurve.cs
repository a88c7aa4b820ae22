using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Electrical.Sound;

namespace WireText.Electrical.Responses;

/// <summary>What comes out of the jack in one state: a curve, or the reason why there is none.</summary>
/// <param name="State">Where everything stands.</param>
/// <param name="Change">The other values in the circuit's words; null for the circuit as it is wired.</param>
/// <param name="Heard">How the heard coils are joined, or why nothing is heard.</param>
/// <param name="Decibels">The level at each frequency of <see cref="ResponseStudy.Hertz"/> over the EMF of one coil; null when nothing sounds.</param>
/// <param name="Peak">The highest resonance; null when there is none.</param>
public sealed record ResponseCurve(
    State State,
    string? Change,
    Outcome Outcome,
    string Heard,
    ImmutableArray<double>? Decibels,
    Resonance? Peak
)
{
    /// <summary>The coils whose assumed values the curve rests on, by name; none when the text gives all that matters.</summary>
    public ImmutableArray<string> AssumedCoils { get; init; } = [];

    /// <summary>What it rests on that nobody knows; empty when all is known.</summary>
    public ImmutableArray<Element> InDoubt { get; init; } = [];

    /// <summary>At each frequency the least level over all that unknown values may be, so far as it was looked at; null when all is known.</summary>
    public ImmutableArray<double>? Least { get; init; }

    /// <summary>The most, likewise.</summary>
    public ImmutableArray<double>? Most { get; init; }

    /// <summary>True where it rests on values that were assumed, or that nobody knows.</summary>
    public bool IsAssumed => !AssumedCoils.IsEmpty || !InDoubt.IsEmpty;

    /// <summary>What tells the curve from the others of its study.</summary>
    public string Label { get; init; } = "";
}
