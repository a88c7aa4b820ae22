using System.Collections.Immutable;
using WireText.Building;
using WireText.Circuits;
using WireText.Parts;

namespace WireText.Frames;

/// <summary>Goes through an order of work and tells how far it is at each step.</summary>
internal sealed class Moments
{
    private readonly Circuit circuit;
    private readonly StepWords words;
    private readonly List<Moment> all = [];
    private ImmutableHashSet<int> laid;
    private ImmutableHashSet<int> placed;
    private ImmutableHashSet<(int Lug, int Wire)> unsoldered;

    private Moments(Circuit circuit, WorkOrder order)
    {
        this.circuit = circuit;
        words = new StepWords(circuit);
        var later = order.Steps.OfType<WorkStep.Lay>().SelectMany(lay => lay.Wires).ToHashSet();
        var mounted = order.Steps.OfType<WorkStep.Mount>().Select(mount => mount.Part).ToHashSet();
        laid = [.. circuit.Wires.Select(wire => wire.Index).Where(wire => !later.Contains(wire))];
        placed = [.. circuit.Parts.Select(part => part.Index).Where(part => !mounted.Contains(part) && IsThere(part))];
        unsoldered = [.. order.Joints.SelectMany(PairsOf)];
    }

    /// <summary>One a step, in their order.</summary>
    public static IReadOnlyList<Moment> Of(Circuit circuit, WorkOrder order)
    {
        var moments = new Moments(circuit, order);
        foreach (var step in order.Steps)
        {
            moments.Add(step);
        }

        return moments.all;
    }

    private static IEnumerable<(int Lug, int Wire)> PairsOf(Joint joint) =>
        joint.Wires.Select(wire => (joint.Lug, wire));

    /// <summary>True for a part that is on the instrument, or that a wire holds already.</summary>
    private bool IsThere(int part) =>
        circuit.Parts[part] is var it
        && (
            it.Kind == PartKinds.Metal
            || it.Lugs.Any(lug => circuit.Wires.Any(w => laid.Contains(w.Index) && w.Touches(lug)))
        );

    private void Add(WorkStep step)
    {
        switch (step)
        {
            case WorkStep.Lay lay:
                laid = laid.Union(lay.Wires);
                placed = placed.Union(PartsAt(lay.Wires));
                all.Add(
                    Now(step) with
                    {
                        Wires = [.. lay.Wires],
                        NewWires = lay.Wires,
                        Lugs = [.. lay.Wires.SelectMany(wire => EndsOf(circuit.Wires[wire])).Distinct()],
                    }
                );
                break;
            case WorkStep.Solder solder:
                unsoldered = unsoldered.Except(PairsOf(solder.Joint));
                all.Add(
                    Now(step) with
                    {
                        Wires = [.. solder.Joint.Wires],
                        Lugs = [solder.Joint.Lug],
                        Joint = solder.Joint.Number,
                    }
                );
                break;
            case WorkStep.Mount mount:
                placed = placed.Add(mount.Part);
                all.Add(Now(step) with { Part = mount.Part });
                break;
            case WorkStep.Lift lift:
                var gone = lift.Before.Wires[lift.Wire];
                all.Add(Now(step) with { Lifted = gone, Lugs = [.. SameLugs(lift.Before, gone)] });
                break;
            default:
                all.Add(Now(step));
                break;
        }
    }

    private Moment Now(WorkStep step) =>
        new(StepWords.Of(step.Phase), words.Of(step))
        {
            Laid = laid,
            Placed = placed,
            Unsoldered = unsoldered,
        };

    private IEnumerable<int> PartsAt(IEnumerable<int> wires) =>
        wires.SelectMany(wire => EndsOf(circuit.Wires[wire])).Select(lug => circuit.Lugs[lug].Part);

    private static IEnumerable<int> EndsOf(Wire wire) => new[] { wire.From, wire.To }.Where(lug => lug >= 0);

    /// <summary>The lugs of that name in the circuit as it becomes; a part that came out has none.</summary>
    private IEnumerable<int> SameLugs(Circuit before, Wire gone) =>
        EndsOf(gone).Select(lug => circuit.FindLug(before.NameOf(lug))).OfType<Lug>().Select(lug => lug.Index);
}
