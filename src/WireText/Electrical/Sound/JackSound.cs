using System.Collections.Immutable;
using System.Numerics;
using WireText.Circuits;
using WireText.Electrical.Networks;
using WireText.Electrical.Solving;

namespace WireText.Electrical.Sound;

/// <summary>What is heard at the jack in one state at one dial setting.</summary>
public sealed class JackSound
{
    private JackSound(Outcome outcome, LiveNetwork live, FixedGains? gains, double? sourceOhms)
    {
        Outcome = outcome;
        Live = live;
        Gains = gains;
        SourceOhms = sourceOhms;
        Coils = gains is null ? [] : Rank(gains);
        Hum = gains is null ? null : Hum.Of(gains);
    }

    public Outcome Outcome { get; }

    public LiveNetwork Live { get; }

    /// <summary>Null when the network has no solution: shorted, open, not computed.</summary>
    public FixedGains? Gains { get; }

    /// <summary>The size of the impedance that holds the jack at the mains frequency, load off, in ohms; null as <see cref="Gains"/>.</summary>
    public double? SourceOhms { get; }

    /// <summary>The live coils with a magnet, in order of declaration.</summary>
    public ImmutableArray<HeardCoil> Coils { get; }

    /// <summary>Null when no coil is live.</summary>
    public Hum? Hum { get; }

    public IEnumerable<HeardCoil> Heard => Coils.Where(coil => coil.IsHeard);

    /// <summary>The coil that the others are compared with; null when none is live.</summary>
    public HeardCoil? Strongest => Coils.MaxBy(coil => coil.Decibels);

    /// <summary>The strings' level in dB over the EMF of one coil; the floor when nothing sounds.</summary>
    public double LevelDecibels => Gains?.LevelDecibels ?? Decibels.Floor;

    /// <summary>True when the coils cancel in the model by more than real strings do.</summary>
    public bool IsThin => Outcome == Outcome.Sound && LevelDecibels - Gains!.PowerDecibels <= Thresholds.ThinDecibels;

    /// <summary>True when the winding or magnet of a heard coil is assumed and another coil is there to be in or out of phase with.</summary>
    public bool IsPhaseAssumed => Heard.Count() > 1 && Heard.Any(heard => CoilSigns.ArePhaseAssumed(heard.Coil));

    /// <summary>True when the winding of a live coil is assumed and another is there to cancel.</summary>
    public bool IsHumAssumed => Gains is { Coils.Length: > 1 } && Gains.Coils.Any(coil => coil.Winding is null);

    /// <param name="state">A control at any stays open.</param>
    public static JackSound Of(Network network, State state, BranchEdits? edits = null) =>
        Of(network.Circuit, LiveNetwork.Of(network, state, edits));

    public static JackSound Of(Circuit circuit, LiveNetwork live)
    {
        if (live.IsShort || live.IsOpen)
        {
            return new JackSound(live.IsShort ? Outcome.Short : Outcome.Open, live, null, null);
        }

        var mains = circuit.Surroundings.MainsHertz;
        if (
            AcSolver.Prepare(live, circuit.Surroundings) is not { } loaded
            || FixedGains.Of(circuit, loaded) is not { } gains
            || AcSolver.Prepare(live, null)?.Solve(mains) is not { } source
        )
        {
            return new JackSound(Outcome.NotComputed, live, null, null);
        }

        var ohms = Complex.Abs(source.ImpedanceAt(0));
        return new JackSound(Judge(gains, ohms), live, gains, ohms);
    }

    private static Outcome Judge(FixedGains gains, double sourceOhms)
    {
        for (var place = 0; place < gains.Coils.Length; place++)
        {
            if (gains.Coils[place].HearsStrings && gains.Strength(place) >= Thresholds.UnheardGain)
            {
                return Outcome.Sound;
            }
        }

        return sourceOhms <= Thresholds.QuietOhms ? Outcome.Quiet : Outcome.Dead;
    }

    private static ImmutableArray<HeardCoil> Rank(FixedGains gains)
    {
        var places = Enumerable.Range(0, gains.Coils.Length).Where(place => gains.Coils[place].HearsStrings).ToList();
        var loudest = places.Count == 0 ? 0 : places.Max(gains.Strength);
        return
        [
            .. places.Select(place => new HeardCoil(
                gains.Coils[place],
                place,
                loudest > 0 ? Decibels.Of(gains.Strength(place) / loudest) : Decibels.Floor
            )),
        ];
    }
}
