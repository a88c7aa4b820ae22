using WireText.Circuits;
using WireText.Electrical.Networks;
using WireText.Electrical.Sound;

namespace WireText.Electrical.Tolerances;

/// <summary>The figure that a claim is about, of any instrument of a run, in one state.</summary>
internal sealed class RunClaim
{
    private readonly Claim claim;
    private readonly LooseNetwork loose;
    private readonly LooseNetwork? rest;

    /// <param name="claim">One that <see cref="IsOfAValue"/>.</param>
    public RunClaim(Network network, RunFactors factors, Claim claim, State state)
    {
        this.claim = claim;
        loose = new LooseNetwork(network, state, factors);
        rest =
            claim is LevelClaim
                ? new LooseNetwork(network, state.At(State.Rest(network.Circuit).Travels), factors)
                : null;
    }

    /// <summary>What one look costs, in looks at a meter's reading; as measured, roughly.</summary>
    public int Weight =>
        claim switch
        {
            ReadsClaim => 1,
            LevelAtClaim => 2,
            LevelClaim => 6,
            _ => 40,
        };

    /// <summary>The factors that it may depend on.</summary>
    public IEnumerable<int> Followed =>
        claim is ReadsClaim
            ? loose.FollowedByMeter
            : loose.FollowedBySignals.Concat(rest?.FollowedBySignals ?? []).Distinct().Order();

    /// <summary>True for a claim of a reading, a peak or a level.</summary>
    public static bool IsOfAValue(Claim claim) => claim is ReadsClaim or ResonatesClaim or LevelClaim or LevelAtClaim;

    /// <summary>The figure: ohms, hertz or dB; NaN where there is none.</summary>
    /// <param name="deviations">One for each factor.</param>
    public double FigureOf(double[] deviations) =>
        claim switch
        {
            ReadsClaim => loose.OhmsAt(deviations),
            ResonatesClaim => loose.ResponseAt(deviations) is { } response
                ? Resonance.Find(response)?.Hertz ?? double.NaN
                : double.NaN,
            LevelAtClaim level => loose.ResponseAt(deviations)?.DecibelsAt(level.Hertz) is [var there]
                ? there
                : double.NaN,
            _ => loose.LevelAt(deviations) - rest!.LevelAt(deviations),
        };

    /// <summary>How far a figure is from what is claimed, in tolerances of the claim; NaN where there is none.</summary>
    public double DeviationOf(double figure) =>
        claim switch
        {
            ReadsClaim reads => Over(figure - reads.Ohms, reads.Tolerance * reads.Ohms),
            ResonatesClaim peak => Over(figure - peak.Hertz, peak.Tolerance * peak.Hertz),
            LevelAtClaim level => Over(figure - level.Decibels, level.Tolerance),
            LevelClaim level => Over(figure - level.Decibels, level.Tolerance),
            _ => double.NaN,
        };

    public bool Allows(double figure) =>
        claim switch
        {
            ReadsClaim reads => reads.Allows(figure),
            ResonatesClaim peak => peak.Allows(figure),
            LevelAtClaim level => level.Allows(figure),
            LevelClaim level => level.Allows(figure),
            _ => false,
        };

    private static double Over(double difference, double tolerance) =>
        tolerance > 0 ? difference / tolerance
        : difference == 0 ? 0
        : double.NaN;
}
