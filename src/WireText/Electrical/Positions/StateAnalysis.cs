using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Circuits.States;
using WireText.Electrical.Forms;
using WireText.Electrical.Networks;
using WireText.Electrical.Situations;
using WireText.Electrical.Solving;
using WireText.Electrical.Sound;

namespace WireText.Electrical.Positions;

/// <summary>Everything that is told about one state or situation at one dial setting. Each answer is worked out when first asked for.</summary>
public sealed class StateAnalysis
{
    private readonly Lazy<HeardForm> form;
    private readonly Lazy<Resonance?> resonance;
    private readonly Lazy<Reading?> reading;
    private readonly Lazy<ImmutableArray<(Coil, CoilPlace)>> coils;
    private readonly Lazy<double?> jackVolts;

    internal StateAnalysis(KnownNetwork known, Network network, State state)
    {
        State = state;
        Sound = known.Sound;
        form = known.Form;
        resonance = known.Resonance;
        reading = known.Reading;
        coils = new(() => CoilPlacement.Of(network, state));
        jackVolts = new(() => JackVoltage.Of(network, state));
    }

    /// <summary>The state that it is about.</summary>
    public State State { get; }

    public JackSound Sound { get; }

    public HeardForm Form => form.Value;

    /// <summary>Null when there is no peak, or nothing sounds.</summary>
    public Resonance? Resonance => resonance.Value;

    /// <summary>Null when the network is too large to solve.</summary>
    public Reading? Reading => reading.Value;

    /// <summary>Every coil of the circuit, in order of declaration.</summary>
    public ImmutableArray<(Coil Coil, CoilPlace Place)> Coils => coils.Value;

    /// <summary>The direct voltage at the tip; null when the network is too large to solve.</summary>
    public double? JackVolts => jackVolts.Value;

    public Outcome Outcome => Sound.Outcome;
}

/// <summary>What one live network says, wherever it is met.</summary>
internal sealed record KnownNetwork(
    JackSound Sound,
    Lazy<HeardForm> Form,
    Lazy<Resonance?> Resonance,
    Lazy<Reading?> Reading
);

/// <summary>Analyses states of one circuit; a network that was met before is not solved again.</summary>
public sealed class Analyst
{
    private readonly SoundMemo sounds;
    private readonly Dictionary<LiveNetwork, KnownNetwork> known;

    public Analyst(Network network)
        : this(new SoundMemo(network)) { }

    public Analyst(SoundMemo sounds)
        : this(sounds, new Dictionary<LiveNetwork, KnownNetwork>(LiveNetworkComparer.Instance)) { }

    private Analyst(SoundMemo sounds, Dictionary<LiveNetwork, KnownNetwork> known)
    {
        this.sounds = sounds;
        this.known = known;
    }

    public Network Network => sounds.Network;

    /// <summary>How many different networks were solved.</summary>
    public int SolvedCount => known.Count;

    /// <summary>
    /// One for another circuit of the same parts and surroundings, its wires changed: both know what either has solved.
    /// </summary>
    public Analyst ForRewired(Network other) => new(sounds.ForRewired(other), known);

    /// <param name="state">A control at any stays open.</param>
    public StateAnalysis Analyse(State state)
    {
        var live = LiveNetwork.Of(Network, state);
        if (!known.TryGetValue(live, out var found))
        {
            known.Add(live, found = Study(live, state));
        }

        return new StateAnalysis(found, Network, state);
    }

    private KnownNetwork Study(LiveNetwork live, State state)
    {
        var (circuit, sound) = (Network.Circuit, sounds.Of(live));
        return new KnownNetwork(
            sound,
            new(() => FormFinder.Find(Network, state, sound)),
            new(() =>
                sound.Outcome == Outcome.Sound && StringResponse.Of(circuit, live) is { } response
                    ? Resonance.Find(response)
                    : null
            ),
            // The meter's part lies inside the live part: what carries a direct current round the jack carries signals.
            new(() => Ohmmeter.Read(Network, state))
        );
    }
}
