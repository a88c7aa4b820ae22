using WireText.Electrical.Mutes;
using WireText.Text;

namespace WireText.Checks.Switching;

/// <summary>Remarks on a mute that lifts the signal as well as shorting the jack.</summary>
public sealed class MuteChangeover : IJackCheck
{
    public CheckDescription Description { get; } =
        new(
            Id: "mute-changeover",
            Title: "a mute also lifts the signal",
            Severity: Severity.Note,
            Group: FindingGroup.Switching,
            Why: """
            This mute takes the tip off the signal and puts it on ground. It works, but between the two the tip hangs on
            nothing, and one contact across tip and sleeve does the same without a gap in the signal's way.
            """,
            Bad: """
            pickup neck single-coil
            switch [|mute|] spdt
            jack   out  mono
            wire   neck.hot to mute.A1 white
            wire   neck.ground to out.sleeve black
            wire   mute.A0 to out.tip white
            wire   mute.A2 to out.sleeve black
            """,
            Good: """
            pickup neck single-coil
            switch mute spdt
            jack   out  mono
            wire   neck.hot to out.tip white
            wire   neck.ground to out.sleeve black
            wire   mute.A0 to out.tip white
            wire   mute.A2 to out.sleeve black
            """,
            Mend: "Join the signal with the tip for good, and leave the contact to the sleeve."
        );

    public IEnumerable<Finding> Find(StudyContext context) =>
        from mute in context.Study.Mutes
        let control = context.Circuit.Controls[mute.Control]
        where mute.Kind == MuteKind.ChangeOver && !mute.Muting.Contains(control.Rest)
        select Description.At(
            context.PlaceOf(control),
            $"'{control.Name}' also lifts the signal off the tip: one contact across tip and sleeve would do",
            help: "join the signal with the tip for good, and leave the contact to the sleeve",
            Subject.Part(context.Circuit.Parts[control.Part].Name)
        );
}
