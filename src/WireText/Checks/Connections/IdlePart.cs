using WireText.Circuits;
using WireText.Text;

namespace WireText.Checks.Connections;

/// <summary>Finds a soldered capacitor, resistor or inductor that the signal meets in no position.</summary>
public sealed class IdlePart : ICheck
{
    public CheckDescription Description { get; } =
        new(
            Id: "part-idle",
            Title: "a two-lead part is soldered and does nothing",
            Severity: Severity.Warning,
            Group: FindingGroup.Connections,
            Why: """
            Both leads are soldered, and yet no position lets a signal come to one and leave by the other: one of them is on a
            lug that leads to nothing else. Whoever turns the knob hears no difference, and nothing looks wrong.
            """,
            Bad: """
            pickup neck single-coil
            pot    vol  250k audio
            switch rot  rotary-1x6
            cap    [|dark|] 10n from rot.A2 to rot.A3
            cap    air  22n from rot.A4 to vol.case
            jack   out  mono
            wire   neck.hot to vol.3 white
            wire   vol.2 to out.tip white
            wire   vol.3 to rot.A0 white
            wire   neck.ground to vol.case black
            wire   vol.1 to vol.case bare
            wire   vol.case to out.sleeve black
            """,
            Good: """
            pickup neck single-coil
            pot    vol  250k audio
            switch rot  rotary-1x6
            cap    dark 10n from rot.A2 to vol.case
            cap    air  22n from rot.A4 to vol.case
            jack   out  mono
            wire   neck.hot to vol.3 white
            wire   vol.2 to out.tip white
            wire   vol.3 to rot.A0 white
            wire   neck.ground to vol.case black
            wire   vol.1 to vol.case bare
            wire   vol.case to out.sleeve black
            """,
            Mend: "Solder the lead to where its current is meant to go: of a tone capacitor that is ground."
        );

    public IEnumerable<Finding> Find(CheckContext context)
    {
        var jacks = context.Study?.Jacks ?? [];
        if (jacks.Any(study => study.Outcomes is null))
        {
            return [];
        }

        var live = jacks
            .SelectMany(study =>
                study.Outcomes!.Situations.SelectMany(situation =>
                    situation.Live.Select(branch => study.Network.Branches[branch].Element)
                )
            )
            .ToHashSet();
        var supply = SupplyNets(context.Circuit);
        return live.Count == 0
            ? []
            : context
                .Circuit.Elements.Where(element => IsIdle(context, element, live, supply))
                .Select(element => Report(context, context.Circuit.Parts[element.Part]));
    }

    /// <summary>True for a part by itself that is soldered at both ends, to nets of their own, and never live.</summary>
    private static bool IsIdle(CheckContext context, Element element, HashSet<int> live, HashSet<int> supply)
    {
        var nets = context.Circuit.Nets.OneNet;
        return element is Capacitor or Resistor or Inductor
            && context.Circuit.Parts[element.Part].Elements.Length == 1
            && !live.Contains(element.Index)
            && element.Ends.All(context.IsJointed)
            && nets[element.Ends[0]] != nets[element.Ends[1]]
            && !element.Ends.Any(end => supply.Contains(nets[end]));
    }

    /// <summary>What lies at a battery or at a board's supply steadies that, and no signal goes through it.</summary>
    private static HashSet<int> SupplyNets(Circuit circuit)
    {
        var nets = circuit.Nets.OneNet;
        var ground = circuit.Outputs.Select(jack => nets[jack.Sleeve]);
        return
        [
            .. circuit
                .Elements.SelectMany(element =>
                    element switch
                    {
                        Battery battery => battery.Ends,
                        Amplifier { Supply: { } lug } => [lug],
                        _ => [],
                    }
                )
                .Select(lug => nets[lug])
                .Except(ground),
        ];
    }

    private Finding Report(CheckContext context, Part part)
    {
        var allow = $"or write: allow {Description.Id} at {part.Name} \"why\"";
        return Description
            .At(
                part.NameAt,
                $"no position lets the signal through '{part.Name}'",
                $"solder its loose end to where it is meant to lead, {allow}",
                [
                    Subject.Part(part.Name),
                    .. part
                        .Lugs.SelectMany(lead => context.WiresAt(lead))
                        .SelectMany(wire => new[] { wire.From, wire.To })
                        .Where(lug => lug >= 0)
                        .Distinct()
                        .Select(context.Subject),
                ]
            )
            .Seeking(Remedy.Part, allow);
    }
}
