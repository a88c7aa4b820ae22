using WireText.Electrical.Sound;
using WireText.Text;

namespace WireText.Checks.Intent;

/// <summary>Says what of a circuit is not computed: it must not pass for what was looked at and found right.</summary>
public sealed class NotJudged : IStudyCheck
{
    public CheckDescription Description { get; } =
        new(
            Id: "not-judged",
            Title: "a part of the circuit is not computed",
            Severity: Severity.Warning,
            Group: FindingGroup.Sound,
            Why: """
            What is heard is computed at the first jack, in every position whose network has one solution. What is heard at
            another jack, and where an amplifier feeds its own input, is not: that nothing is found there says nothing.
            """,
            Bad: """
            pickup neck   single-coil
            pickup bridge single-coil
            jack   out    mono
            jack   [|aux|]    mono
            wire   neck.hot to out.tip white
            wire   neck.ground to out.sleeve black
            wire   bridge.hot to aux.tip yellow
            wire   bridge.ground to aux.sleeve black
            wire   out.sleeve to aux.sleeve black
            """,
            Good: """
            pickup neck single-coil
            jack   out  mono
            wire   neck.hot to out.tip white
            wire   neck.ground to out.sleeve black
            """,
            Mend: """
            Put each jack with what leads to it into a file of its own, and check each. Where it is checked by hand, allow it,
            with the reason.
            """
        );

    public IEnumerable<Finding> Find(StudyContext context)
    {
        foreach (var jack in context.Circuit.Outputs.Skip(1).Where(jack => context.IsJointed(jack.Tip)))
        {
            var (first, part) = (
                context.Circuit.Parts[context.Circuit.Outputs[0].Part],
                context.Circuit.Parts[jack.Part]
            );
            yield return Description.At(
                part.NameAt,
                $"what is heard at '{part.Name}' is not computed: '{first.Name}' is the first jack",
                $"check it in a file of its own, or write: allow not-judged at {part.Name} \"why\"",
                Subject.Part(part.Name)
            );
        }

        if (context.Study.Heard.Unmuted.FirstOrDefault(one => one.Sound.Outcome == Outcome.NotComputed) is { } open)
        {
            var output = context.Circuit.Parts[context.Circuit.Outputs[0].Part];
            yield return Description.At(
                output.NameAt,
                $"what is heard at '{output.Name}' is not computed{context.AtText(open.State)}",
                $"look at it by hand, or write: allow not-judged at {output.Name} \"why\"",
                Subject.Part(output.Name)
            );
        }
    }
}
