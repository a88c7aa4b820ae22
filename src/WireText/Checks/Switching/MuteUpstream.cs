using WireText.Electrical;
using WireText.Text;

namespace WireText.Checks.Switching;

/// <summary>Finds a mute that shorts the signal before the volume and not at the jack.</summary>
public sealed class MuteUpstream : ICheck
{
    public CheckDescription Description { get; } =
        new(
            Id: "mute-upstream",
            Title: "a mute shorts the signal before the volume",
            Severity: Severity.Warning,
            Group: CheckGroup.Switching,
            Why: """
            The short lies on the pickup's side. With the volume turned down part of its track stays between the short and
            the jack, so the cable is not held and picks up hum. A short across tip and sleeve holds it at any setting.
            """,
            Bad: """
            pickup neck single-coil
            button [|mute|] momentary
            pot    vol  250k audio
            jack   out  mono
            wire   neck.hot to vol.3 white
            wire   neck.ground to vol.case black
            wire   vol.1 to vol.case bare
            wire   vol.2 to out.tip white
            wire   vol.case to out.sleeve black
            wire   mute.1 to vol.3 white
            wire   mute.2 to vol.case black
            """,
            Good: """
            pickup neck single-coil
            button mute momentary
            pot    vol  250k audio
            jack   out  mono
            wire   neck.hot to vol.3 white
            wire   neck.ground to vol.case black
            wire   vol.1 to vol.case bare
            wire   vol.2 to out.tip white
            wire   vol.case to out.sleeve black
            wire   mute.1 to out.tip white
            wire   mute.2 to out.sleeve black
            """,
            Mend: "Move its two wires to tip and sleeve of the jack."
        );

    public IEnumerable<Finding> Find(CheckContext context) =>
        from mute in context.Mutes
        where mute.Kind == MuteKind.Upstream
        let control = context.Circuit.Controls[mute.Control]
        let output = context.Circuit.Outputs[0]
        let lugs = MuteWires.LugsOn(context, mute)
        select Description.At(
            context.PlaceOf(control),
            $"'{control.Name}' shorts the signal before the volume: turned down, part of the track stays on the jack",
            $"move its wires to tip and sleeve: {WireLines.Line(lugs.Signal, context.Circuit.NameOf(output.Tip), WireLines.SignalColour)}; "
                + WireLines.Line(lugs.Ground, context.Circuit.NameOf(output.Sleeve), WireLines.GroundColour),
            Subject.Part(context.Circuit.Parts[control.Part].Name)
        );
}
