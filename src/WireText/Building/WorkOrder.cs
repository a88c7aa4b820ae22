using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Parts;

namespace WireText.Building;

/// <summary>
/// The work at the bench as steps in their order. A joint is made once, as soon as all of its conductors lie there; what heat
/// harms comes last, so that no later joint heats it again.
/// </summary>
/// <param name="Joints">In the order in which they are made.</param>
public sealed record WorkOrder(ImmutableArray<Joint> Joints, ImmutableArray<WorkStep> Steps)
{
    /// <summary>Kinds that nothing screws down: they hang by their leads, are made at the bench, or are there already.</summary>
    private static readonly ImmutableArray<string> NeverMounted =
    [
        PartKinds.Cap,
        PartKinds.Resistor,
        PartKinds.Inductor,
        PartKinds.Splice,
        PartKinds.Metal,
    ];

    /// <summary>To build a circuit from nothing.</summary>
    public static WorkOrder Of(Circuit circuit) =>
        Sequence(
            [.. circuit.Parts.Where(IsMounted).Select(part => new WorkStep.Mount(part.Index))],
            LaidConductors.Of(circuit, circuit.Wires),
            JointFinder.Find(circuit),
            []
        );

    /// <summary>To make one circuit into another: what is the same in both is left alone, and lifts come first.</summary>
    public static WorkOrder Between(Circuit before, Circuit after)
    {
        var change = CircuitDifference.Of(before, after);
        ImmutableArray<WorkStep> first =
        [
            .. change.Gone.Select(wire => new WorkStep.Lift(before, wire.Index)),
            .. change.PartsGone.Select(part => new WorkStep.Remove(before, part.Index)),
            .. change.PartsAdded.Where(IsMounted).Select(part => new WorkStep.Mount(part.Index)),
        ];
        var added = change.Added.Select(wire => wire.Index).ToHashSet();
        return Sequence(
            first,
            LaidConductors.Of(after, change.Added),
            JointFinder.Find(after).Where(joint => joint.Wires.Any(added.Contains)),
            after.Wires.Select(wire => wire.Index).Where(wire => !added.Contains(wire))
        );
    }

    /// <summary>True for a part that is held by the joints of its own leads.</summary>
    public static bool HangsByItsLeads(Part part) =>
        part.HangsOn is not null
        || (NeverMounted.Contains(part.Kind) && part.Kind is not (PartKinds.Splice or PartKinds.Metal));

    private static bool IsMounted(Part part) => part.HangsOn is null && !NeverMounted.Contains(part.Kind);

    /// <param name="there">Wires that lie in their place before the work begins.</param>
    private static WorkOrder Sequence(
        IEnumerable<WorkStep> first,
        IEnumerable<WorkStep.Lay> conductors,
        IEnumerable<Joint> joints,
        IEnumerable<int> there
    )
    {
        var steps = ImmutableArray.CreateBuilder<WorkStep>();
        steps.AddRange(first);
        var open = joints.ToList();
        var made = ImmutableArray.CreateBuilder<Joint>();
        var laid = there.ToHashSet();
        foreach (var lay in conductors)
        {
            steps.Add(lay);
            laid.UnionWith(lay.Wires);
            foreach (var joint in open.Where(joint => joint.Wires.All(laid.Contains)).ToList())
            {
                open.Remove(joint);
                made.Add(joint with { Number = made.Count + 1 });
                steps.Add(new WorkStep.Solder(lay.Phase, made[^1]));
            }
        }

        return new WorkOrder(made.ToImmutable(), steps.ToImmutable());
    }
}
