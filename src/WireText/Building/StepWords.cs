using System.Collections.Immutable;
using System.Globalization;
using WireText.Circuits;

namespace WireText.Building;

/// <summary>Says the steps of a work order in words.</summary>
internal sealed class StepWords(Circuit circuit)
{
    /// <summary>The heading above the steps of a phase.</summary>
    public static string Of(WorkPhase phase) =>
        phase switch
        {
            WorkPhase.Lifting => "Take off",
            WorkPhase.Mounting => "Mount the parts",
            WorkPhase.Jumpers => "Jumpers from lug to lug of one part",
            WorkPhase.CaseGrounds => "Grounds on cases and metal",
            WorkPhase.Selector => "Wires of the switches",
            WorkPhase.Wires => "Other wires",
            WorkPhase.Leads => "Leads, cables and splices",
            WorkPhase.HangingParts => "Parts on their own leads",
            _ => "Parts that heat harms: last, and heated once",
        };

    public string Of(WorkStep step) =>
        step switch
        {
            WorkStep.Lift lift => $"Lift the {new StepWords(lift.Before).WireInWords(lift.Before.Wires[lift.Wire])}.",
            WorkStep.Remove remove => $"Take out {PartInWords(remove.Before.Parts[remove.Part])}.",
            WorkStep.Mount mount => $"Fix {PartInWords(circuit.Parts[mount.Part])} in its place.",
            WorkStep.Lay lay => LayInWords([.. lay.Wires.Select(wire => circuit.Wires[wire])]),
            WorkStep.Solder solder => SolderInWords(solder.Joint),
            _ => throw new InvalidOperationException($"No words for {step.GetType().Name}."),
        };

    private string LayInWords(ImmutableArray<Wire> wires)
    {
        var sleeve = wires.Any(wire => wire.IsSleeved) ? " Slip the sleeve on first." : "";
        if (wires[0].Kind == WireKind.PartLead)
        {
            var part = circuit.PartOf(circuit.Lugs[wires[0].From]);
            var lugs = string.Join(" to ", wires.Select(wire => circuit.NameOf(wire.To)));
            return $"Hang {PartInWords(part)} from {lugs}.{sleeve}";
        }

        var runs = wires.GroupBy(wire => (wire.Run, wire.Kind)).Select(run => RunInWords([.. run]));
        return wires[0].Cable is null
            ? $"Lay the {string.Join("; ", runs)}.{sleeve}"
            : $"Lay the cable: {string.Join("; ", runs)}.{sleeve}";
    }

    private string SolderInWords(Joint joint)
    {
        var wires = joint.Wires.Select(wire => circuit.Wires[wire]);
        var harmed = joint.Wires.Any(wire => JointFinder.CarriesHeatToAPart(circuit, circuit.Wires[wire]));
        return string.Create(
                CultureInfo.InvariantCulture,
                $"Solder joint {joint.Number}: {circuit.NameOf(joint.Lug)} with {string.Join(", ", wires.Select(wire => ConductorInWords(wire, joint.Lug)))}"
            ) + (harmed ? ", with a clip on the lead." : ".");
    }

    /// <summary>The part that a lead of its own hangs from; null for a wire.</summary>
    private Part? PartOf(Wire wire) => wire.Kind == WireKind.PartLead ? circuit.PartOf(circuit.Lugs[wire.From]) : null;

    private string ConductorInWords(Wire wire, int lug) =>
        PartOf(wire) is { } part
            ? $"the lead of {part.Name}"
            : $"{NameOf(wire)} from {NameOf(wire.From == lug ? wire.To : wire.From)}";

    private static string NameOf(Wire wire) => wire.Kind == WireKind.Braid ? "braid" : wire.Colour?.Name ?? "lead";

    private string WireInWords(Wire wire) =>
        PartOf(wire) is { } part ? $"lead of {part.Name} from {circuit.NameOf(wire.To)}" : RunInWords([wire]);

    private string RunInWords(ImmutableArray<Wire> run)
    {
        var lugs = run.Select(wire => wire.To).Prepend(run[0].From).Select(NameOf);
        return $"{NameOf(run[0])} {(run[0].Kind == WireKind.Wire ? "wire " : "")}from {string.Join(" to ", lugs)}";
    }

    private string NameOf(int lug) => lug < 0 ? "where it is cut back" : circuit.NameOf(lug);

    private static string PartInWords(Part part) =>
        $"{part.Name} ({string.Join(' ', new[] { part.Kind, part.ValueLabel, part.TaperLabel }.OfType<string>())})";
}
