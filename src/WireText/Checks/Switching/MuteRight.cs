using WireText.Electrical.Mutes;
using WireText.Text;

namespace WireText.Checks.Switching;

/// <summary>Tells of a mute that it is wired right.</summary>
public sealed class MuteRight : IJackCheck
{
    public CheckDescription Description { get; } =
        new(
            Id: "mute",
            Title: "a mute shorts the jack",
            Severity: Severity.Right,
            Group: FindingGroup.Switching,
            Why: """
            A mute joins tip and sleeve. The amplifier then has a short at its input: silence without hum, whatever the
            volume stands at. Opening the signal instead leaves the cable hanging on nothing, and it hums. A mute that
            is wired right is told as right, and weighs nothing.
            """,
            Bad: """
            pickup neck single-coil
            button [|mute|] momentary
            jack   out  mono
            wire   neck.hot to out.tip white
            wire   neck.ground to out.sleeve black
            wire   mute.1 to out.tip white
            wire   mute.2 to out.sleeve black
            """,
            Good: """
            pickup neck single-coil
            jack   out  mono
            wire   neck.hot to out.tip white
            wire   neck.ground to out.sleeve black
            """,
            Mend: "Nothing is to be done."
        );

    public IEnumerable<Finding> Find(StudyContext context) =>
        from mute in context.Study.Mutes
        let control = context.Circuit.Controls[mute.Control]
        where mute.Kind == MuteKind.AcrossTheJack && !mute.Muting.Contains(control.Rest)
        select Description.At(
            context.PlaceOf(control),
            $"'{control.Name}' mutes as it should: it shorts the signal at the jack",
            help: null,
            Subject.Part(context.Circuit.Parts[control.Part].Name)
        );
}
