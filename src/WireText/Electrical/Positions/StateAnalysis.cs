using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Electrical.Forms;
using WireText.Electrical.Networks;
using WireText.Electrical.Solving;
using WireText.Electrical.Sound;

namespace WireText.Electrical.Positions;

/// <summary>Everything that is told about one state or situation at one dial setting. Each answer is worked out when first asked for.</summary>
public sealed class StateAnalysis
{
    private readonly Lazy<JackSound> sound;
    private readonly Lazy<HeardForm> form;
    private readonly Lazy<Resonance?> resonance;
    private readonly Lazy<Reading?> reading;
    private readonly Lazy<ImmutableArray<(Coil, CoilPlace)>> coils;
    private readonly Lazy<double?> jackVolts;
    private readonly Circuit circuit;

    internal StateAnalysis(KnownNetwork known, Network network, State state)
    {
        State = state;
        circuit = network.Circuit;
        sound = known.Sound;
        form = known.Form;
        resonance = known.Resonance;
        reading = known.Reading;
        coils = new(() => CoilPlacement.Of(network, state));
        jackVolts = new(() => DirectVoltage.AtJack(network, state));
    }

    /// <summary>The state that it is about.</summary>
    public State State { get; }

    public JackSound Sound => sound.Value;

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

    /// <summary>The elements on the way of the signal of which something is not known that matters here: figures rest on what it is taken for.</summary>
    public ImmutableArray<Element> InDoubt =>
        [
            .. Sound
                .Live.Branches.Select(branch => circuit.Elements[branch.Source.Element])
                .Where(element => element.Doubt is not null || IsTurnedUnknown(element))
                .Distinct(),
        ];

    /// <summary>The response at one frequency: the level of all coils in dB over the EMF of one; null when nothing sounds.</summary>
    public double? DecibelsAt(double hertz) =>
        Outcome == Outcome.Sound && StringResponse.Of(circuit, Sound.Live)?.DecibelsAt(hertz) is [var level]
            ? level
            : null;

    /// <summary>At either end of its travel every taper is the same.</summary>
    private bool IsTurnedUnknown(Element element) =>
        element is Track { IsTaperUnknown: true } track && State.Travels[track.Dial] is > 0 and < Dial.FullyUp;
}
