using System.Collections.Concurrent;
using WireText.Circuits;
using WireText.Electrical.Networks;
using WireText.Electrical.Positions;
using WireText.Electrical.Solving;
using WireText.Electrical.Sound;
using WireText.Electrical.Tolerances;

namespace WireText.Electrical.Expectations;

/// <summary>Proves or refutes what an author expects, in every state that the line means.</summary>
public sealed class ExpectationJudge
{
    private readonly Analyst analyst;
    private readonly Network network;
    private readonly RunJudge runs;
    private readonly ConcurrentDictionary<(bool IsOfBatteries, State Start), MeantStates> meant = new();

    public ExpectationJudge(Analyst analyst)
        : this(analyst, new RunJudge(analyst)) { }

    private ExpectationJudge(Analyst analyst, RunJudge runs) =>
        (this.analyst, network, this.runs) = (analyst, analyst.Network, runs);

    /// <summary>One for another circuit of the same parts and surroundings, its wires changed: both know what either has worked out.</summary>
    public ExpectationJudge ForRewired(Analyst other) => new(other, runs.ForRewired(other));

    /// <summary>
    /// The first claim of an expectation that fails; null when all hold in the states looked at. See
    /// <see cref="Unjudged"/> for those of which that proves nothing.
    /// </summary>
    public Refutation? Refute(Expectation expectation, CancellationToken cancellation = default)
    {
        foreach (var claim in expectation.Claims)
        {
            var failing = StatesOf(expectation, claim, cancellation)
                .Sets.Where(state => !Holds(claim, state, cancellation))
                .ToList();
            if (failing.Count > 0)
            {
                return Report(expectation, claim, failing, cancellation);
            }
        }

        return null;
    }

    /// <summary>The claims of an expectation that no state looked at refutes, and that mean more states than those.</summary>
    public IEnumerable<UnjudgedClaim> Unjudged(Expectation expectation, CancellationToken cancellation = default)
    {
        return from claim in expectation.Claims
            let states = StatesOf(expectation, claim, cancellation)
            where !states.IsComplete && states.Sets.All(state => Holds(claim, state, cancellation))
            select new UnjudgedClaim(claim, states);
    }

    /// <summary>
    /// True when every claim of an expectation is proved; it stops at the first state that fails. False where there are too
    /// many states to look at.
    /// </summary>
    /// <param name="mayNameTraces">
    /// True to judge as <see cref="Refute"/> does, where a claim may name a coil of which a trace is there; false when all
    /// that it names must be heard.
    /// </param>
    public bool Holds(Expectation expectation, bool mayNameTraces, CancellationToken cancellation = default)
    {
        return expectation.Claims.All(claim =>
            StatesOf(expectation, claim, cancellation) is { IsComplete: true } states
            && states.Sets.All(state => Holds(claim, state, cancellation, mayNameTraces))
        );
    }

    /// <summary>States in which the same is there are told as one; each is looked at as it was, for what is any there may join.</summary>
    private Refutation Report(Expectation expectation, Claim claim, List<State> failing, CancellationToken cancellation)
    {
        var cubes = RowMerger.Merge(
            network.Circuit,
            failing.Select(state => (Cube: state, First: state)),
            one => one.Cube,
            (one, cube) => (cube, one.First),
            one => new PositionRow(one.First, analyst.Analyse(one.First), null).Printed(network.Circuit)
        );
        var there = analyst.Analyse(cubes[0].First);
        return new Refutation(expectation, claim, [.. cubes.Select(one => one.Cube)], there)
        {
            LevelDecibels = claim is LevelAtClaim level
                ? there.DecibelsAt(level.Hertz)
                : AgainstRest(cubes[0].First, there),
            Run = claim.Share is null ? null : runs.ShareOf(claim, cubes[0].First, cancellation),
        };
    }

    private MeantStates StatesOf(Expectation expectation, Claim claim, CancellationToken cancellation)
    {
        var start = expectation.State;
        if (!start.HasAny)
        {
            return new MeantStates([start], [], 1);
        }

        return meant.GetOrAdd(
            (claim is BatteryClaim, start),
            key =>
                key.IsOfBatteries
                    ? MeantStates.OfBatteries(network, key.Start)
                    : MeantStates.OfSound(network, key.Start, cancellation)
        );
    }

    private bool Holds(Claim claim, State state, CancellationToken cancellation, bool mayNameTraces = true)
    {
        cancellation.ThrowIfCancellationRequested();
        if (claim is BatteryClaim battery)
        {
            var batteries = network.Circuit.Elements.OfType<Battery>().ToList();
            return batteries.Count > 0
                && batteries.TrueForAll(one => BatteryLoop.IsClosed(network, state, one) == battery.IsOn);
        }

        if (claim.Share is { } share)
        {
            return runs.ShareOf(claim, state, cancellation).Share >= share;
        }

        var there = analyst.Analyse(state);
        return claim switch
        {
            SilenceClaim => there.Outcome.IsSilence(),
            OpenClaim => there.Outcome == Outcome.Open,
            DeadClaim => there.Outcome == Outcome.Dead,
            HumCancellingClaim => there.Outcome == Outcome.Sound
                && there.Sound.Hum is { Word: HumWord.Cancelled }
                && there.Sound.Gains!.Coils.Length > 1,
            ReadsClaim reads => there.Reading is { Kind: not ReadingKind.None } reading && reads.Allows(reading.Ohms),
            ResonatesClaim resonates => there.Resonance is { } peak && resonates.Allows(peak.Hertz),
            LevelClaim level => AgainstRest(state, there) is { } decibels && level.Allows(decibels),
            LevelAtClaim level => there.DecibelsAt(level.Hertz) is { } decibels && level.Allows(decibels),
            CoilsClaim coils => there.Outcome == Outcome.Sound
                && ClaimedForm.Matches(
                    network.Circuit,
                    coils.Coils,
                    there.Form,
                    new JoinedParts(network, state),
                    mayNameTraces
                ),
            _ => false,
        };
    }

    private double? AgainstRest(State state, StateAnalysis there)
    {
        var before = analyst.Analyse(state.At(State.Rest(network.Circuit).Travels));
        return there.Outcome == Outcome.Sound && before.Outcome == Outcome.Sound
            ? there.Sound.LevelDecibels - before.Sound.LevelDecibels
            : null;
    }
}
