using WireText.Circuits;
using WireText.Electrical.Networks;
using WireText.Electrical.Positions;
using WireText.Electrical.Solving;
using WireText.Electrical.Sound;

namespace WireText.Electrical.Tolerances;

/// <summary>For how many instruments of a run a claimed figure is right.</summary>
/// <param name="analyst">Of the circuit with every value as written.</param>
public sealed class RunJudge(Analyst analyst)
{
    /// <summary>Instruments that are drawn for one claim in one state, where fewer do not tell its share from the one claimed. Chosen.</summary>
    public const int MostInstruments = 16_384;

    private readonly Network network = analyst.Network;
    private readonly RunFactors factors = RunFactors.Of(analyst.Network.Circuit);

    /// <summary>The share for which a claim about a value is right in a state.</summary>
    /// <param name="claim">One that has a share, <see cref="Claim.Share"/>.</param>
    public RunShare ShareOf(Claim claim, State state, CancellationToken cancellation = default)
    {
        var there = analyst.Analyse(state);
        if (claim is ReadsClaim reads)
        {
            if (there.Reading is not { Kind: ReadingKind.Value } reading)
            {
                return there.Reading is { Kind: ReadingKind.Joined } && reads.Allows(0) ? RunShare.All : RunShare.None;
            }

            // All instruments lie between the ends, which are exact where every taper is known.
            if (reads.Allows(reading.Least) && reads.Allows(reading.Most))
            {
                return RunShare.All;
            }
        }
        else if (there.Outcome != Outcome.Sound)
        {
            return RunShare.None;
        }

        var figure = new RunClaim(network, factors, claim, state);
        return RunSample.Ask(
            factors,
            deviations => figure.Allows(figure.FigureOf(deviations)),
            claim.Share ?? 1,
            cancellation
        );
    }
}
