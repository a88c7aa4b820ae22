using System.Collections.Immutable;
using WireText.Checks.Building;
using WireText.Circuits;
using WireText.Parts;

namespace WireText.Building;

/// <summary>What is laid in one go: a run with all of its stretches, a cable with all of its cores, a part by both of its leads.</summary>
internal static class LaidConductors
{
    /// <summary>Those of some wires of a circuit, in the order in which they are laid.</summary>
    public static IEnumerable<WorkStep.Lay> Of(Circuit circuit, IEnumerable<Wire> wires) =>
        wires
            .GroupBy(wire => KeyOf(circuit, wire))
            .Select(together => new WorkStep.Lay(
                PhaseOf(circuit, [.. together]),
                [.. together.Select(wire => wire.Index)]
            ))
            .OrderBy(lay => lay.Phase);

    private static (int? Cable, int? Part, int? Run) KeyOf(Circuit circuit, Wire wire) =>
        wire.Cable is { } cable ? (cable, null, null)
        : wire.Kind == WireKind.PartLead ? (null, circuit.Lugs[wire.From].Part, null)
        : (null, null, wire.Run);

    private static WorkPhase PhaseOf(Circuit circuit, IReadOnlyCollection<Wire> wires)
    {
        ImmutableArray<Lug> ends =
        [
            .. wires
                .SelectMany(wire => new[] { wire.From, wire.To })
                .Where(lug => lug >= 0)
                .Select(i => circuit.Lugs[i]),
        ];
        return wires.Any(wire => JointFinder.CarriesHeatToAPart(circuit, wire)) ? WorkPhase.HeatSensitive
            : wires.All(wire => wire.Kind == WireKind.PartLead) ? WorkPhase.HangingParts
            : wires.Any(wire => wire.Kind != WireKind.Wire) || ends.Any(lug => lug.IsLead) ? WorkPhase.Leads
            : ends.All(lug => lug.Part == ends[0].Part) ? WorkPhase.Jumpers
            : ends.Any(Conductors.TakesManyJoints) ? WorkPhase.CaseGrounds
            : ends.Any(lug => circuit.PartOf(lug).Kind == PartKinds.Switch) ? WorkPhase.Selector
            : WorkPhase.Wires;
    }
}
