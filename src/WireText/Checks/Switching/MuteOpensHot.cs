using WireText.Electrical.Mutes;
using WireText.Text;

namespace WireText.Checks.Switching;

/// <summary>Finds a mute that opens the signal's way, or its return, and leaves the cable hanging.</summary>
public sealed class MuteOpensHot : IJackCheck
{
    public CheckDescription Description { get; } =
        new(
            Id: "mute-opens-hot",
            Title: "a mute opens the signal",
            Severity: Severity.Error,
            Group: FindingGroup.Switching,
            Why: """
            A mute shorts the signal to ground. This one opens it: the cable then hangs on nothing, hums like a cable without
            a guitar, and clicks at every press.
            """,
            Bad: """
            pickup neck single-coil
            pot    vol  250k audio
            button [|mute|] momentary-nc
            jack   out  mono
            wire   neck.hot to vol.3 white
            wire   neck.ground to vol.case black
            wire   vol.1 to vol.case bare
            wire   vol.case to out.sleeve black
            wire   vol.2 to mute.1 white
            wire   mute.2 to out.tip white
            """,
            Good: """
            pickup neck single-coil
            pot    vol  250k audio
            button mute momentary
            jack   out  mono
            wire   neck.hot to vol.3 white
            wire   neck.ground to vol.case black
            wire   vol.1 to vol.case bare
            wire   vol.case to out.sleeve black
            wire   vol.2 to out.tip white
            wire   mute.1 to out.tip white
            wire   mute.2 to out.sleeve black
            """,
            Mend: """
            Lift both of its wires, join them, and put a button that is open until pressed across tip and sleeve.
            """
        )
        {
            Silences = [Silence.Of("floating-ground"), .. Silence.AllThatIsRead()],
        };

    public IEnumerable<Finding> Find(StudyContext context) =>
        from mute in context.Study.Mutes
        where mute.Kind == MuteKind.Opening
        let control = context.Circuit.Controls[mute.Control]
        let part = context.Circuit.Parts[control.Part]
        let isClosedAtRest = part.Definition.Model.EndsWith("-nc", StringComparison.Ordinal)
        let turned = isClosedAtRest ? $"; {part.Kind} {part.Name} {part.Definition.Model[..^"-nc".Length]}" : ""
        select Description.At(
            context.PlaceOf(control),
            $"'{control.Name}' opens the signal: the cable hangs on nothing and hums",
            part.Dials.IsEmpty
                ? $"lift its wires and write: {string.Join("; ", MuteWires.AcrossTheJack(context, mute))}{turned}"
                : "join what its switch opens, and put the switch across tip and sleeve",
            Subject.Part(part.Name)
        );
}
