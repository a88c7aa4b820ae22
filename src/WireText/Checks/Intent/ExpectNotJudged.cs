using System.Globalization;
using WireText.Electrical.Expectations;
using WireText.Text;

namespace WireText.Checks.Intent;

/// <summary>Says so when a claim means more states than can be looked at: it must not pass for one that holds.</summary>
public sealed class ExpectNotJudged : IStudyCheck
{
    public CheckDescription Description { get; } =
        new(
            Id: "expect-not-judged",
            Title: "a claim means too many states to be judged",
            Severity: Severity.Warning,
            Group: FindingGroup.Sound,
            Why: """
            With 'any' a line speaks of each position of a control, and of all of them together with those of the others.
            Where more than 65,536 combinations make a difference (4,096 for 'battery on' and 'battery off'), not all are
            looked at. Such a claim is neither proved nor refuted.
            """,
            Bad: """
            pickup neck single-coil
            jack   out  mono
            metal  bus
            switch a rotary-1x12
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
            expect others=any: [|neck|]
            allow  too-many-situations "what five rotary switches do is checked by hand"
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
            expect others=any: neck
            """,
            Mend: """
            Name a position for some of the controls, and leave only those at 'any' that matter to the claim. Several
            such lines can do what one line cannot.
            """
        );

    public IEnumerable<Finding> Find(StudyContext context) =>
        context
            .JudgedExpectations.SelectMany(one => context.Study.JudgeOf(one).Unjudged(one, context.Cancellation))
            .Select(Report);

    private Finding Report(UnjudgedClaim unjudged)
    {
        var names = Listing.Of(unjudged.States.Crowding.Select(control => control.Name));
        var limit = unjudged.States.Limit.ToString("N0", CultureInfo.InvariantCulture);
        return Description.At(
            unjudged.Claim.DeclaredAt,
            $"'{unjudged.Claim.Text}' is not judged: {names} at any position make more than {limit} states",
            $"name fewer controls as any: write a position for some of {names}"
        );
    }
}
