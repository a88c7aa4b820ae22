using WireText.Circuits;
using WireText.Text;

namespace WireText.Checks.Intent;

/// <summary>Says so when a claim turns on a value that nobody knows: it must pass neither for proved nor for refuted.</summary>
public sealed class ExpectUnknown : IStudyCheck
{
    public CheckDescription Description { get; } =
        new(
            Id: "expect-unknown",
            Title: "a claim turns on a value that is not known",
            Severity: Severity.Warning,
            Group: FindingGroup.Sound,
            Why: """
            A value that is written as '?' may be any that is usual, one written as '100k..500k' any between. A claim that
            holds with some of them and not with others is neither proved nor refuted. So many values as the page on bounds
            says are tried: the ends, and steps between.
            """,
            Bad: """
            pickup neck single-coil dcr=6.2k l=2.2H c=110p
            pot    vol  ? audio
            jack   out  mono
            wire   neck.hot to vol.3 white
            wire   vol.2 to out.tip red
            wire   neck.ground to vol.case black
            wire   vol.1 to vol.case to out.sleeve bare
            expect rest: [|reads 6k|]
            """,
            Good: """
            pickup neck single-coil dcr=6.2k l=2.2H c=110p
            pot    vol  250k audio measured 236k
            jack   out  mono
            wire   neck.hot to vol.3 white
            wire   vol.2 to out.tip red
            wire   neck.ground to vol.case black
            wire   vol.1 to vol.case to out.sleeve bare
            expect rest: reads 6k
            """,
            Mend: """
            Measure the part and write what the meter read behind 'measured', or narrow what the value may be: 230k..270k.
            A pot is measured from lug 1 to lug 3 with nothing else on one of the two.
            """
        );

    public IEnumerable<Finding> Find(StudyContext context) => context.DoubtfulClaims.Select(Report);

    private Finding Report(DoubtfulClaim doubtful)
    {
        var names = Listing.Of(doubtful.Elements.Select(element => element.Name));
        return Description.At(
            doubtful.Claim.DeclaredAt,
            $"'{doubtful.Claim.Text}' cannot be judged: {names} {(doubtful.Elements.Length == 1 ? "is" : "are")} not known",
            $"measure it and write what the meter read: measured VALUE; it is taken for {string.Join(", ", doubtful.Elements.Select(DoubtText.Of))}",
            [.. doubtful.Elements.Select(element => Subject.Part(element.Name.Split('.')[0]))]
        );
    }
}
