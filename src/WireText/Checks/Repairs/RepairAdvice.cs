using System.Collections.Immutable;
using WireText.Checks.Intent;
using WireText.Circuits;
using WireText.Electrical.Studies;
using WireText.Text;

namespace WireText.Checks.Repairs;

/// <summary>Adds to a refuted expectation the one edit that mends it, where there is one.</summary>
public static class RepairAdvice
{
    /// <summary>The edits that mend what a report says is refuted; null when nothing is.</summary>
    /// <param name="study">Of the circuit or a twin of it.</param>
    /// <param name="settings">A mended circuit must be silent as the shop weighs the checks.</param>
    public static RepairResult? Search(
        Circuit circuit,
        Study study,
        CheckReport report,
        CheckSettings settings,
        CancellationToken cancellation = default
    ) =>
        report.Findings.Any(finding => finding.Id == Expect.Id)
            ? new RepairSearch(
                circuit,
                study,
                report.Findings,
                (edited, rewired) => IsSilent(edited, rewired, settings, cancellation)
            ).Run(cancellation)
            : null;

    /// <summary>The report with what was found told in it.</summary>
    public static CheckReport AddTo(CheckReport report, Circuit circuit, RepairResult? result) =>
        report.Findings.FirstOrDefault(finding => finding.Id == Expect.Id) is { } refuted
            ? report with
            {
                Findings =
                [
                    .. report
                        .Findings.Where(finding => finding == refuted || !HasMend(result) || !IsShadow(finding))
                        .Select(finding => finding == refuted ? WithAdvice(circuit, refuted, result) : finding),
                ],
            }
            : report;

    /// <summary>True when nothing stands but what is harmless; a mended circuit may need an allowance no more.</summary>
    private static bool IsSilent(
        Circuit circuit,
        Study study,
        CheckSettings settings,
        CancellationToken cancellation
    ) =>
        Checker
            .Examine(circuit, study, new CheckRequest(CheckList.Usual, settings), cancellation)
            .Findings.All(finding =>
                finding.Severity < Severity.Warning || finding.Description == AllowanceFindings.AllowUnused
            );

    /// <summary>True when edits are given: after each of them no error and no warning is left.</summary>
    private static bool HasMend(RepairResult? result) =>
        result is { IsComplete: true, Repairs.Length: > 0 and <= RepairSearch.MostShown };

    /// <summary>True for what vanishes with any of the edits that are given.</summary>
    private static bool IsShadow(Finding finding) =>
        finding.Severity >= Severity.Warning && finding.Description != AllowanceFindings.AllowUnused;

    private static Finding WithAdvice(Circuit circuit, Finding refuted, RepairResult? result)
    {
        return result switch
        {
            { IsComplete: true, Repairs.Length: > RepairSearch.MostShown } => refuted with
            {
                Help = $"no single wire explains it: {refuted.Help}",
            },
            { IsComplete: true, Repairs: { IsEmpty: false } repairs } => refuted with
            {
                Help = $"{RepairText.Of(circuit, repairs)}\n{refuted.Otherwise}",
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
