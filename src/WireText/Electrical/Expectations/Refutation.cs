using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Electrical.Positions;
using WireText.Electrical.Tolerances;

namespace WireText.Electrical.Expectations;

/// <summary>A claim that does not hold.</summary>
/// <param name="Claim">The first of its line that fails.</param>
/// <param name="Failing">
/// Every set of states in which it fails, as few as say it.
/// </param>
/// <param name="There">What is there in the first of them.</param>
public sealed record Refutation(
    Expectation Expectation,
    Claim Claim,
    ImmutableArray<State> Failing,
    StateAnalysis There
)
{
    /// <summary>The level in dB that is there, against what the claim means; null when nothing sounds, there or at rest.</summary>
    public double? LevelDecibels { get; init; }

    /// <summary>For how many instruments of a run it is right there; null for a claim that is not about a run.</summary>
    public RunShare? Run { get; init; }
}
