using WireText.Circuits;

namespace WireText.Electrical.BenchPlans;

/// <summary>Where the two probes of a meter stand: lugs, as indices into <see cref="Circuit.Lugs"/>.</summary>
/// <param name="Probe">For a jack its tip, as on the plug of a lead.</param>
/// <param name="Reference">For a jack its sleeve.</param>
public readonly record struct MeterPoints(int Probe, int Reference)
{
    /// <summary>The tip and the sleeve of the jack that a circuit is seen from.</summary>
    public static MeterPoints OfJack(Circuit circuit) => new(circuit.Outputs[0].Tip, circuit.Outputs[0].Sleeve);

    /// <summary>The same circuit seen from these points alone: what is between them is what a meter on them reads.</summary>
    public Circuit SeenIn(Circuit circuit) =>
        circuit with
        {
            Outputs = [new OutputJack(circuit.Lugs[Probe].Part, Probe, Reference, Ring: null)],
        };
}
