using WireText.Electrical.Mutes;
using WireText.Text;

namespace WireText.Checks.Switching;

/// <summary>Finds a mute that silences the instrument while nobody touches it.</summary>
public sealed class MuteAtRest : IJackCheck
{
    public CheckDescription Description { get; } =
        new(
            Id: "mute-at-rest",
            Title: "a mute is closed at rest",
            Severity: Severity.Error,
            Group: FindingGroup.Switching,
            Why: """
            The position in which this control rests is the one that silences. Mostly a button that is closed until pressed
            was taken where one that is open until pressed belongs.
            """,
            Bad: """
            pickup neck single-coil
            button [|mute|] momentary-nc
            jack   out  mono
            wire   neck.hot to out.tip white
            wire   neck.ground to out.sleeve black
            wire   mute.1 to out.tip white
            wire   mute.2 to out.sleeve black
            """,
            Good: """
            pickup neck single-coil
            button mute momentary
            jack   out  mono
            wire   neck.hot to out.tip white
            wire   neck.ground to out.sleeve black
            wire   mute.1 to out.tip white
            wire   mute.2 to out.sleeve black
            """,
            Mend: "Take a button that is open until pressed, wire the other throw, or say where the control rests."
        )
        {
            Silences = [Silence.Of("no-sound"), Silence.Everywhere("expect")],
        };

    public IEnumerable<Finding> Find(StudyContext context) =>
        from mute in context.Study.Mutes
        where mute.Kind != MuteKind.Opening
        let control = context.Circuit.Controls[mute.Control]
        where mute.Muting.Contains(control.Rest)
        let part = context.Circuit.Parts[control.Part]
        let isButton = part.Definition.Model.EndsWith("-nc", StringComparison.Ordinal)
        select Description.At(
            context.PlaceOf(control),
            isButton
                ? $"'{control.Name}' silences until it is pressed: it is normally closed"
                : $"'{control.Name}' silences where it rests, at {context.PositionName(mute.Control, control.Rest)}",
            isButton
                ? $"take one that is open until pressed: {part.Kind} {part.Name} {part.Definition.Model[..^"-nc".Length]}"
                : $"use the other throw, or write: rest {control.Name}={control.Positions[Enumerable.Range(0, control.Positions.Length).First(p => !mute.Muting.Contains(p))].Name}",
            Subject.Part(part.Name)
        );
}
