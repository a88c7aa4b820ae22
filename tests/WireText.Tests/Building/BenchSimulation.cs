using WireText.Building;
using WireText.Circuits;

namespace WireText.Tests.Building;

/// <summary>Does the steps of a work order one after the other, and writes down what goes wrong at the bench.</summary>
internal sealed class BenchSimulation
{
    private readonly Circuit circuit;
    private readonly HashSet<int> laid = [];
    private readonly HashSet<(int Wire, int Lug)> soldered = [];
    private readonly Dictionary<(int Wire, int Lug), int> heats = [];

    private BenchSimulation(Circuit circuit, IEnumerable<int> there)
    {
        this.circuit = circuit;
        laid.UnionWith(there);
    }

    public List<string> Faults { get; } = [];

    /// <summary>How many leads that heat harms were soldered.</summary>
    public int HeatedLeads => heats.Count;

    /// <param name="there">Wires that are soldered in before the work begins.</param>
    public static BenchSimulation Run(Circuit circuit, WorkOrder order, params int[] there)
    {
        var bench = new BenchSimulation(circuit, there);
        foreach (var step in order.Steps)
        {
            bench.Do(step);
        }

        bench.LookForWhatIsLeft(there);
        return bench;
    }

    private void Do(WorkStep step)
    {
        switch (step)
        {
            case WorkStep.Lay lay:
                foreach (var wire in lay.Wires.Where(wire => !laid.Add(wire)))
                {
                    Faults.Add($"{circuit.Wires[wire].Id} is laid twice");
                }

                break;
            case WorkStep.Solder solder:
                Solder(solder.Joint);
                break;
        }
    }

    private void Solder(Joint joint)
    {
        foreach (var wire in joint.Wires)
        {
            if (!laid.Contains(wire))
            {
                Faults.Add($"joint {joint.Number} is made before {circuit.Wires[wire].Id} lies there");
            }

            if (!soldered.Add((wire, joint.Lug)))
            {
                Faults.Add($"{circuit.Wires[wire].Id} is soldered twice to {circuit.NameOf(joint.Lug)}");
            }
        }

        // The iron heats all that is soldered to this lug, also by other joints on the same metal.
        foreach (var (wire, lug) in soldered.Where(end => end.Lug == joint.Lug && IsHarmed(end.Wire)).ToList())
        {
            heats[(wire, lug)] = heats.GetValueOrDefault((wire, lug)) + 1;
        }
    }

    private void LookForWhatIsLeft(int[] there)
    {
        Faults.AddRange(
            heats
                .Where(heat => heat.Value > 1)
                .Select(heat =>
                    $"{circuit.Wires[heat.Key.Wire].Id} is heated {heat.Value} times at {circuit.NameOf(heat.Key.Lug)}"
                )
        );
        foreach (var wire in circuit.Wires.Where(wire => !there.Contains(wire.Index)))
        {
            if (!laid.Contains(wire.Index))
            {
                Faults.Add($"{wire.Id} is never laid");
            }

            foreach (var lug in new[] { wire.From, wire.To }.Where(lug => lug >= 0))
            {
                // The first wire on a lead is the lead itself.
                var isTheLead = circuit.Lugs[lug].IsLead && circuit.Wires.Count(other => other.Touches(lug)) == 1;
                if (!isTheLead && !soldered.Contains((wire.Index, lug)))
                {
                    Faults.Add($"{wire.Id} is never soldered to {circuit.NameOf(lug)}");
                }
            }
        }
    }

    private bool IsHarmed(int wire) => IsHarmedAt(circuit.Wires[wire].From) || IsHarmedAt(circuit.Wires[wire].To);

    private bool IsHarmedAt(int lug) => lug >= 0 && circuit.PartOf(circuit.Lugs[lug]).Traits.Contains("heat-sensitive");
}
