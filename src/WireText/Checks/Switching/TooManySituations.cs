using System.Globalization;
using WireText.Electrical.Roles;
using WireText.Electrical.Situations;
using WireText.Text;

namespace WireText.Checks.Switching;

/// <summary>Says so when there are more situations than can be looked at.</summary>
public sealed class TooManySituations : IJackCheck
{
    public CheckDescription Description { get; } =
        new(
            Id: "too-many-situations",
            Title: "too many controls change the signal together",
            Severity: Severity.Warning,
            Group: FindingGroup.Switching,
            Why: """
            What sounds is worked out for every combination of positions that makes a difference. A circuit in which more
            than 65,536 of them do, or more than 4,000 elements lie in the way of the signal, is checked for wires and
            grounds alone: what each position does is not looked at. Nor is what dials do, where there are more than 128.
            """,
            Bad: """
            pickup neck single-coil
            jack   out  mono
            metal  bus
            switch [|a|] rotary-1x12
            switch b rotary-1x12
            switch c rotary-1x12
            switch d rotary-1x12
            switch e rotary-1x12
            cap    ca 1n from a.A1 to bus
            cap    cb 1n from b.A1 to bus
            cap    cc 1n from c.A1 to bus
            cap    cd 1n from d.A1 to bus
            cap    ce 1n from e.A1 to bus
            wire   neck.hot to out.tip white
            wire   neck.ground to bus black
            wire   bus to out.sleeve black
            wire   out.tip to a.A0 to b.A0 to c.A0 to d.A0 to e.A0 white
            """,
            Good: """
            pickup neck single-coil
            jack   out  mono
            switch a rotary-1x12
            switch b rotary-1x12
            cap    ca 1n from a.A1 to out.sleeve
            cap    cb 1n from b.A1 to out.sleeve
            wire   neck.hot to out.tip white
            wire   neck.ground to out.sleeve black
            wire   out.tip to a.A0 to b.A0 white
            """,
            Mend: "Check the circuit with some of these controls left out, a few at a time."
        );

    public IEnumerable<Finding> Find(StudyContext context)
    {
        var dials = context.Circuit.Dials;
        if (dials.Length > DialRoles.MostDials)
        {
            var part = context.Circuit.Parts[dials[DialRoles.MostDials].Part];
            yield return Description.At(
                part.NameAt,
                $"{Count(dials.Length)} dials are there, {Count(DialRoles.MostDials)} at most: what they do is not checked",
                "check a part of the circuit at a time",
                Subject.Part(part.Name)
            );
        }

        if (context.Study.Situations is not { IsComplete: false } tree)
        {
            yield break;
        }

        if (tree.TooManyLive is { } live)
        {
            var jack = context.Circuit.Parts[context.Circuit.Outputs[0].Part];
            yield return Description.At(
                jack.NameAt,
                $"{Count(live)} elements lie in the way of the signal, {Count(SituationTree.MostLive)} at most: what positions do is not checked",
                "check a part of the circuit at a time",
                Subject.Part(jack.Name)
            );
            yield break;
        }

        var names = tree.Crowding.Select(control => control.Name).ToList();
        yield return Description.At(
            context.PlaceOf(tree.Crowding[0]),
            $"{Listing.Of(names)} make more than {Count(SituationTree.Limit)} situations: what positions do is not checked",
            "leave some of these controls out and check the rest, a few at a time",
            [.. tree.Crowding.Select(control => Subject.Part(context.Circuit.Parts[control.Part].Name)).Distinct()]
        );
    }

    private static string Count(int count) => count.ToString("N0", CultureInfo.InvariantCulture);
}
