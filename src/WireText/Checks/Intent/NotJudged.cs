using WireText.Electrical.Sound;
using WireText.Text;

namespace WireText.Checks.Intent;

/// <summary>Says what of a circuit is not computed: it must not pass for what was looked at and found right.</summary>
public sealed class NotJudged : IJackCheck
{
    public CheckDescription Description { get; } =
        new(
            Id: "not-judged",
            Title: "a part of the circuit is not computed",
            Severity: Severity.Warning,
            Group: FindingGroup.Sound,
            Why: """
            What is heard is computed between the tip and the sleeve of every jack, in every position whose network has one
            solution. What comes to a ring for a plug that has one, and what is heard where an amplifier feeds its own input,
            is not: that nothing is found there says nothing.
            """,
            Bad: """
            pickup neck   single-coil
            pickup bridge single-coil
            jack   [|out|]    stereo
            wire   neck.hot to out.tip white
            wire   neck.ground to out.sleeve black
            wire   bridge.hot to out.ring yellow
            wire   bridge.ground to out.sleeve black
            """,
            Good: """
            pickup neck   single-coil
            pickup bridge single-coil
            jack   out    mono
            jack   aux    mono
            wire   neck.hot to out.tip white
            wire   neck.ground to out.sleeve black
            wire   bridge.hot to aux.tip yellow
            wire   bridge.ground to aux.sleeve black
            wire   out.sleeve to aux.sleeve black
            """,
            Mend: """
            Give what leads to the ring a jack of its own in a copy of the file, and check that. Where it is checked by hand,
            allow it, with the reason.
            """
        );

    public IEnumerable<Finding> Find(StudyContext context)
    {
        if (RingSignal.CoilsOn(context).Count > 0)
        {
            yield return Description.At(
                context.Circuit.Parts[context.Circuit.Outputs[0].Part].NameAt,
                $"what comes to the ring of '{context.JackName}' is not computed: a mono plug joins it to the sleeve",
                $"look at it by hand, or write: allow not-judged at {context.JackName} \"why\"",
                Subject.Part(context.JackName)
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
