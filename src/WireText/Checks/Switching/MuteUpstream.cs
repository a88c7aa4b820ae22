using WireText.Circuits;
using WireText.Electrical.Mutes;
using WireText.Electrical.Situations;
using WireText.Electrical.Sound;
using WireText.Quantities;
using WireText.Text;

namespace WireText.Checks.Switching;

/// <summary>Finds a mute that shorts the signal before the volume and not at the jack.</summary>
public sealed class MuteUpstream : IJackCheck
{
    public CheckDescription Description { get; } =
        new(
            Id: "mute-upstream",
            Title: "a mute shorts the signal before the volume",
            Severity: Severity.Warning,
            Group: FindingGroup.Switching,
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

    public IEnumerable<Finding> Find(StudyContext context) =>
        context.Study.Mutes.Where(mute => mute.Kind == MuteKind.Upstream).Select(mute => Report(context, mute));

    private Finding Report(StudyContext context, Mute mute)
    {
        var circuit = context.Circuit;
        var control = circuit.Controls[mute.Control];
        var output = circuit.Outputs[0];
        var (signal, ground) = MuteWires.LugsOn(context, mute);
        return Description.At(
            context.PlaceOf(control),
            $"'{control.Name}' shorts the signal before the volume{Left(context, mute)}",
            $"move its wires to tip and sleeve: {WireLines.Line(signal, circuit.NameOf(output.Tip), WireLines.SignalColour)}; "
                + WireLines.Line(ground, circuit.NameOf(output.Sleeve), WireLines.GroundColour),
            Subject.Part(circuit.Parts[control.Part].Name)
        );
    }

    /// <summary>What still lies across the jack with the dials at the middle, while it mutes.</summary>
    private static string Left(StudyContext context, Mute mute)
    {
        var state = State.Rest(context.Circuit).At(mute.Control, mute.Muting[0]).AtAll(SituationOutcomes.Middle);
        return JackSound.Of(context.Study.Network, state).SourceOhms is { } ohms
            ? $": with the dials at 5 it leaves {ValueText.Figure(ohms, Unit.Ohm)} at the jack"
            : "";
    }
}
