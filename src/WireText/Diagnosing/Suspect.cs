using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Electrical.Faults;
using WireText.Electrical.Networks;

namespace WireText.Diagnosing;

/// <summary>One explanation of all that was found: a fault at one size, two at once, nothing wrong, or what the list does not have.</summary>
internal sealed class Suspect
{
    private readonly Instrument instrument;
    private readonly Dictionary<State, DirectField> fields = [];
    private readonly Dictionary<(int Jack, State State), HeardAtPlug> heard = [];
    private readonly Dictionary<int, Network> networks = [];
    private Circuit? circuit;

    /// <param name="prior">Its share before anything is found.</param>
    /// <param name="faults">None for an instrument that is right.</param>
    public Suspect(
        Instrument instrument,
        Nuisances nuisances,
        double prior,
        ImmutableArray<(Fault Fault, FaultSize Size)> faults
    )
    {
        this.instrument = instrument;
        Faults = faults;
        LogShare = Math.Log(prior);
        Belief = new Belief(nuisances.Count);
    }

    public ImmutableArray<(Fault Fault, FaultSize Size)> Faults { get; }

    /// <summary>True for what the list does not have: looked at as a right instrument that shows something else half the time.</summary>
    public bool IsOutside { get; init; }

    public bool IsRight => Faults.IsEmpty && !IsOutside;

    /// <summary>ln of its share, up to a constant that all have.</summary>
    public double LogShare { get; set; }

    public Belief Belief { get; }

    /// <summary>The size that readings may tell; null where nothing has one.</summary>
    public FaultSize? Size => Faults.Select(one => one.Size).FirstOrDefault(size => size.Sized is not null);

    public Circuit Circuit =>
        circuit ??= Faults.IsEmpty ? instrument.Right : instrument.With(Faults.Select(one => one.Size));

    /// <param name="isNew">True where it was not made before.</param>
    public DirectField FieldAt(State state, out bool isNew)
    {
        isNew = !fields.TryGetValue(state, out var field);
        if (field is null)
        {
            fields.Add(state, field = new DirectField(Circuit, state));
        }

        return field;
    }

    /// <summary>The network at a jack, as an index into the jacks.</summary>
    public Network NetworkAt(int jack)
    {
        if (!networks.TryGetValue(jack, out var network))
        {
            networks.Add(jack, network = Network.Of(Circuit.SeenFrom(Circuit.Outputs[jack]))!);
        }

        return network;
    }

    /// <summary>The same before anything is found; what was worked out is known to both.</summary>
    public Suspect Anew(Nuisances nuisances) => new(instrument, nuisances, 1, Faults) { circuit = circuit };

    public HeardAtPlug HeardAt(int jack, State state, Ear ear)
    {
        if (!heard.TryGetValue((jack, state), out var known))
        {
            heard.Add((jack, state), known = ear.Hear(this, jack, state));
        }

        return known;
    }
}
