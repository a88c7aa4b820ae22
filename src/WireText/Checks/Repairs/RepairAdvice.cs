using System.Collections.Immutable;
using WireText.Checks.Intent;
using WireText.Circuits;
using WireText.Text;

namespace WireText.Checks.Repairs;

/// <summary>Adds to a refuted expectation the one edit that mends it, where there is one.</summary>
internal static class RepairAdvice
{
    /// <param name="judge">The checks without this advice: a search within the search would never end.</param>
    public static CheckReport AddTo(Circuit circuit, CheckReport report, Func<Circuit, CheckReport> judge)
    {
        var refuted = report.Findings.FirstOrDefault(finding => finding.Id == Expect.Id);
        if (refuted is null)
        {
            return report;
        }

        var result = Search(circuit, report, judge);
        var advised = WithAdvice(circuit, refuted, result);
        return report with
        {
            Findings =
            [
                .. report
                    .Findings.Where(finding => finding == refuted || !HasMend(result) || !IsShadow(finding))
                    .Select(finding => finding == refuted ? advised : finding),
            ],
        };
    }

    /// <summary>True when edits are given: after each of them no error and no warning is left.</summary>
    private static bool HasMend(RepairResult? result) =>
        result is { IsComplete: true, Repairs.Length: > 0 and <= RepairSearch.MostShown };

    /// <summary>True for what vanishes with any of the edits that are given.</summary>
    private static bool IsShadow(Finding finding) =>
        finding.Severity >= Severity.Warning && finding.Description != AllowanceFindings.AllowUnused;

    private static RepairResult? Search(Circuit circuit, CheckReport report, Func<Circuit, CheckReport> judge) =>
        new RepairSearch(
            circuit,
            report.Findings,
            // A mended circuit may need an allowance no more.
            edited =>
                judge(edited)
                    .Findings.All(finding =>
                        finding.Severity < Severity.Warning || finding.Description == AllowanceFindings.AllowUnused
                    )
        ).Run();

    private static Finding WithAdvice(Circuit circuit, Finding refuted, RepairResult? result)
    {
        // What is left of the help is another way out: change the claim.
        var otherwise = refuted.Help![Expect.MendTheWires.Length..];
        return result switch
        {
            { IsComplete: true, Repairs.Length: > RepairSearch.MostShown } => refuted with
            {
                Help = $"no single wire explains it: {refuted.Help}",
            },
            { IsComplete: true, Repairs: { IsEmpty: false } repairs } => refuted with
            {
                Help = $"{RepairText.Of(circuit, repairs)}\n{otherwise}",
                Edits = repairs is [var only] ? InText(circuit, only) : [],
            },
            _ => refuted,
        };
    }

    /// <summary>All the changes of one repair, or none.</summary>
    private static ImmutableArray<TextEdit> InText(Circuit circuit, CircuitEdit repair)
    {
        var edits = LineEdit.Of(circuit, repair).Select(line => line.InText(circuit)).ToList();
        return edits.Exists(line => line.IsEmpty) ? [] : [.. edits.SelectMany(line => line)];
    }
}
