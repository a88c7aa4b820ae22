using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Electrical.Forms;
using WireText.Electrical.Solving;
using WireText.Electrical.Sound;

namespace WireText.Electrical.Positions;

/// <summary>Everything that is told about one state or situation at one dial setting.</summary>
public sealed record StateAnalysis
{
    public required JackSound Sound { get; init; }

    public required HeardForm Form { get; init; }

    /// <summary>Null when there is no peak, or nothing sounds.</summary>
    public required Resonance? Resonance { get; init; }

    /// <summary>Null when the network is too large to solve.</summary>
    public required Reading? Reading { get; init; }

    /// <summary>Every coil of the circuit, in order of declaration.</summary>
    public required ImmutableArray<(Coil Coil, CoilPlace Place)> Coils { get; init; }

    /// <summary>The direct voltage at the tip; null when the network is too large to solve.</summary>
    public required double? JackVolts { get; init; }

    public Outcome Outcome => Sound.Outcome;
}

/// <summary>Analyses states of one circuit; a network that was met before is not solved again.</summary>
public sealed class Analyst(SoundMemo sounds)
{
    private readonly Network network = sounds.Network;

    private readonly Dictionary<LiveNetwork, (JackSound, HeardForm, Resonance?, Reading?)> known = new(
        LiveNetworkComparer.Instance
    );

    public Analyst(Network network)
        : this(new SoundMemo(network)) { }

    public Network Network => network;

    /// <summary>How many different networks were solved.</summary>
    public int SolvedCount => known.Count;

    /// <param name="positions">A position for each control; one at <see cref="Situation.Any"/> stays open.</param>
    public StateAnalysis Analyse(ReadOnlySpan<int> positions, DialSetting dials)
    {
        var live = LiveNetwork.Of(network, positions, dials);
        if (!known.TryGetValue(live, out var found))
        {
            var sound = sounds.Of(live);
            var form = FormFinder.Find(network, positions, dials, sound);
            var response = sound.Outcome == Outcome.Sound ? StringResponse.Of(network.Circuit, live) : null;

            // The meter's part lies inside the live part: what carries a direct current round the jack carries signals.
            var peak = response is null ? null : Resonance.Find(response);
            known.Add(live, found = (sound, form, peak, Ohmmeter.Read(network, positions, dials)));
        }

        var (heard, joined, resonance, reading) = found;
        return new StateAnalysis
        {
            Sound = heard,
            Form = joined,
            Resonance = resonance,
            Reading = reading,
            Coils = CoilPlacement.Of(network, positions, dials),
            JackVolts = JackVoltage.Of(network, positions, dials),
        };
    }
}
