using System.Collections.Concurrent;
using WireText.Circuits;
using WireText.Electrical.Positions;
using WireText.Electrical.Solving;
using WireText.Electrical.Sound;

namespace WireText.Electrical.Tolerances;

/// <summary>
/// For how many instruments of a run a claimed figure is right. Of a live network that was met before no instrument is drawn again.
/// Safe to ask from several threads.
/// </summary>
public sealed class RunJudge
{
    /// <summary>Instruments that are drawn for one claim in one state, where fewer do not tell its share from the one claimed. Chosen.</summary>
    public const int MostInstruments = 16_384;

    private readonly Analyst analyst;
    private readonly Lazy<RunFactors> factors;
    private readonly ConcurrentDictionary<Question, RunShare> known;

    /// <param name="analyst">Of the circuit with every value as written.</param>
    public RunJudge(Analyst analyst)
        : this(analyst, new()) { }

    private RunJudge(Analyst analyst, ConcurrentDictionary<Question, RunShare> known)
    {
        (this.analyst, this.known) = (analyst, known);
        factors = new(() => RunFactors.Of(analyst.Network.Circuit));
    }

    /// <summary>One for another circuit of the same parts and surroundings, its wires changed: both know what either has drawn.</summary>
    public RunJudge ForRewired(Analyst other) => known.Count < Analyst.MostShared ? new(other, known) : new(other);

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

        var before =
            claim is LevelClaim ? analyst.Analyse(state.At(State.Rest(analyst.Network.Circuit).Travels)) : there;
        return known.GetOrAdd(
            new Question(claim, there.Sound.Live, before.Sound.Live),
            _ => Draw(claim, state, cancellation)
        );
    }

    private RunShare Draw(Claim claim, State state, CancellationToken cancellation)
    {
        var figure = new RunClaim(analyst.Network, factors.Value, claim, state);
        return RunSample.Ask(
            factors.Value,
            deviations => figure.Allows(figure.FigureOf(deviations)),
            claim.Share ?? 1,
            cancellation
        );
    }

    /// <summary>What decides a share: circuits with the same live networks have the same.</summary>
    /// <param name="Before">That which a level is counted from.</param>
    private sealed record Question(Claim Claim, LiveNetwork There, LiveNetwork Before)
    {
        public bool Equals(Question? other) =>
            other is not null && Claim.Equals(other.Claim) && There.IsLike(other.There) && Before.IsLike(other.Before);

        public override int GetHashCode() => HashCode.Combine(Claim, LiveNetworkComparer.Instance.GetHashCode(There));
    }
}
