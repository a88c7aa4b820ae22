using WireText.Checks.Repairs;
using WireText.Circuits;
using WireText.Electrical.Studies;
using WireText.Tests.Judging;
using WireText.Text;

namespace WireText.Tests.Checks.Mutants.Harnesses;

/// <summary>A harness with one slip, and what is found of it.</summary>
/// <param name="Slip">Which kind of slip it is, in words that many share.</param>
/// <param name="Verdict">Whether it does what the right harness does, by the judge.</param>
/// <param name="IsSilent">True when no position gives a sound, by the judge.</param>
/// <param name="Bare">Errors and warnings without any claim.</param>
/// <param name="IsClaimed">True when an error or a warning is found with the claims of the bench.</param>
/// <param name="IsPinned">The same with the claims that the program writes of the right harness.</param>
internal sealed record HarnessMutant(
    string Name,
    string Slip,
    Verdict Verdict,
    bool IsSilent,
    IReadOnlyList<Finding> Bare,
    bool IsClaimed,
    bool IsPinned
)
{
    public bool IsEqual => Verdict != Verdict.Different;

    /// <summary>True when nothing makes the check fail: a warning does not.</summary>
    public bool PassesAsRight => Bare.All(finding => finding.Severity < Severity.Error);

    /// <param name="study">Of the right harness, with no claims.</param>
    /// <param name="claimed">The same with the claims of a bench.</param>
    /// <param name="pinned">The same with the claims that the program writes.</param>
    public static HarnessMutant Of(Study study, Circuit claimed, Circuit pinned, Judge judge, CircuitEdit slip)
    {
        var right = study.Circuit;
        var circuit = slip.Apply(right);
        var slipped = study.Rewired(circuit);
        var verdict = judge.Compare(circuit);
        return new HarnessMutant(
            WireMutants.NameOf(right, slip),
            SlipText.Of(right, slip),
            verdict,
            verdict == Verdict.Different && !Sounding.IsHeardAnywhere(circuit),
            Alarms(circuit, slipped),
            Alarms(slip.Apply(claimed), slipped).Count > 0,
            Alarms(slip.Apply(pinned), slipped).Count > 0
        );
    }

    private static List<Finding> Alarms(Circuit circuit, Study study) =>
        [
            .. Checked
                .Report(circuit, study.Rewired(circuit))
                .Findings.Where(finding => finding.Severity >= Severity.Warning),
        ];
}
