using WireText.Circuits;
using WireText.Text;

namespace WireText.Checks.Controls;

/// <summary>Finds controls that are wired and change nothing.</summary>
public sealed class InertControl : IEveryJackCheck
{
    public CheckDescription Description { get; } =
        new(
            Id: "inert-control",
            Title: "a control does nothing",
            Severity: Severity.Warning,
            Group: FindingGroup.Switching,
            Why: """
            Something is soldered to it, and yet whatever the other controls are set to, no position of it changes what
            comes to the jack. A wire is missing or goes to the lug beside. Or its positions have names, and nothing is
            soldered to it at all: the switch of a push-pull is easily forgotten, for the pot works without it.
            """,
            Bad: """
            pickup neck single-coil
            pot    vol  250k audio
            pot    [|tone|] 250k audio
            cap    dark 22n from tone.2 to tone.3
            jack   out  mono
            wire   neck.hot to vol.3 white
            wire   vol.3 to tone.2 white
            wire   neck.ground to vol.case black
            wire   vol.1 to vol.case to tone.case bare
            wire   vol.2 to out.tip white
            wire   vol.case to out.sleeve black
            """,
            Good: """
            pickup neck single-coil
            pot    vol  250k audio
            pot    tone 250k audio
            cap    dark 22n from tone.1 to tone.case
            jack   out  mono
            wire   neck.hot to vol.3 white
            wire   vol.3 to tone.2 white
            wire   neck.ground to vol.case black
            wire   vol.1 to vol.case to tone.case bare
            wire   vol.2 to out.tip white
            wire   vol.case to out.sleeve black
            """,
            Mend: "Follow its wires: somewhere both of its lugs lie on one net, or one of them leads nowhere."
        )
        {
            Silences = [Silence.Of("part-idle")],
        };

    public IEnumerable<Finding> Find(StudyContext context)
    {
        if (!context.Study.Heard.Sounding.Any() || context.Study.Roles is not { IsComplete: true } roles)
        {
            return [];
        }

        var circuit = context.Circuit;
        var pots =
            from dial in circuit.Dials
            where DialWires.TracksOf(circuit, dial).Any(track => track.Ends.Any(context.IsJointed))
            where roles.EffectiveOf(dial).Count == 0
            select Report(circuit.Parts[dial.Part], dial.Name, "turning it changes nothing at the jack");
        var switches =
            from control in circuit.Controls
            where !control.IsPlug && context.Study.MuteOf(control.Index) is null && IsWired(context, control)
            where ControlEffects.IsInert(context, control)
            select Report(
                circuit.Parts[control.Part],
                control.Name,
                "all its positions give the same, whatever the other controls are set to"
            );
        return [.. pots, .. switches, .. Forgotten(context)];
    }

    /// <summary>Switches of parts in use whose positions the author named, without a wire to any of their lugs.</summary>
    private IEnumerable<Finding> Forgotten(StudyContext context) =>
        from control in context.Circuit.Controls
        where control is { IsPlug: false, NamedAt: not null } && !IsWired(context, control)
        let part = context.Circuit.Parts[control.Part]
        where part.Lugs.Any(context.IsJointed)
        select Report(part, control.Name, "its positions have names, and no lug of it is soldered", control.NamedAt);

    private Finding Report(Part part, string name, string why, SourceLocation? at = null) =>
        Description
            .At(
                at ?? part.NameAt,
                $"'{name}' does nothing: {why}",
                at is null ? $"follow its wires, {Allow(part)}" : $"wire its lugs, or take its names out",
                Subject.Part(part.Name)
            )
            .Seeking(Remedy.Any, Allow(part));

    private static string Allow(Part part) => $"or write: allow inert-control at {part.Name} \"why\"";

    private static bool IsWired(StudyContext context, Control control) =>
        control.Positions.SelectMany(position => position.Closed).SelectMany(group => group).Any(context.IsJointed);
}
