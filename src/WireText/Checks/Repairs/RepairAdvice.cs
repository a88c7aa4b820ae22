using System.Collections.Immutable;
using WireText.Checks.Intent;
using WireText.Circuits;
using WireText.Electrical.Studies;
using WireText.Text;

namespace WireText.Checks.Repairs;

/// <summary>
/// What a report makes of refuted claims: the one edit that mends them, told by the finding that names the cause where there is
/// one, and made an error there; else by the claim.
/// </summary>
public static class RepairAdvice
{
    /// <summary>The edits that mend what a report says is refuted; null when nothing is.</summary>
    /// <param name="study">Of the circuit or a twin of it.</param>
    /// <param name="settings">What is new in a mended circuit is weighed as the shop weighs it.</param>
    public static RepairResult? Search(
        Circuit circuit,
        Study study,
        CheckReport report,
        CheckSettings settings,
        CancellationToken cancellation = default
    )
    {
        if (report.Findings.All(finding => finding.Id != Expect.Id))
        {
            return null;
        }

        // An edit that leaves nothing comes first; where none does, what is found elsewhere may stay.
        HashSet<(string Id, Subject? At)> others =
        [
            .. report.Findings.Where(finding => finding.Id != Expect.Id).Select(KindOf),
        ];
        var clean = Run([]);
        return clean is { Repairs: not [] } || others.Count == 0 ? clean
            : Run(others) is { } beside ? beside with { LeavesOthers = true }
            : null;

        RepairResult? Run(HashSet<(string Id, Subject? At)> mayStay) =>
            new RepairSearch(
                circuit,
                study,
                report.Findings,
                (edited, rewired) => HasNothingNew(edited, rewired, mayStay, settings, cancellation)
            ).Run(cancellation);
    }

    /// <summary>
    /// The report with what was found told in it. The finding that names the cause stays, and what is refuted becomes its
    /// witness.
    /// </summary>
    public static CheckReport AddTo(CheckReport report, Circuit circuit, RepairResult? result)
    {
        if (report.Findings.FirstOrDefault(finding => finding.Id == Expect.Id) is not { } refuted)
        {
            return report;
        }

        var mistakes = report.Findings.Where(finding => finding != refuted && IsMistake(finding)).ToList();
        var told = result switch
        {
            { IsComplete: true, Repairs: [var only] } =>
            [
                .. Mended(circuit, refuted, mistakes, only),
                .. mistakes.Where(finding => result.LeavesOthers && !Marks(finding, circuit, only)),
            ],
            { IsComplete: true, Repairs: { Length: > 1 and <= RepairSearch.MostShown } repairs } =>
            [
                .. mistakes.Where(_ => result.LeavesOthers),
                refuted with
                {
                    Help = $"{RepairText.Of(circuit, repairs)}\n{refuted.Otherwise}",
                },
            ],
            _ => Unmended(refuted, mistakes, result),
        };
        return report with
        {
            Findings =
            [
                .. report
                    .Findings.Where(finding => finding != refuted && !mistakes.Contains(finding))
                    .Concat(told)
                    .OrderBy(finding => finding.Location.Source.Path, StringComparer.Ordinal)
                    .ThenBy(finding => finding.Location.Span.Start),
            ],
        };
    }

    /// <summary>What one edit mends is told once: by the finding that marks a lug of it, else by the claim.</summary>
    private static ImmutableArray<Finding> Mended(
        Circuit circuit,
        Finding refuted,
        List<Finding> mistakes,
        CircuitEdit edit
    )
    {
        var (words, edits) = (RepairText.Of(circuit, [edit]), RepairText.InText(circuit, edit));
        return mistakes.Find(finding => Marks(finding, circuit, edit)) is not { } cause
            ? [refuted with { Help = $"{words}\n{refuted.Otherwise}", Edits = edits }]
            : [WithWitness(cause, refuted) with { Help = words, Edits = edits }];
    }

    /// <summary>True when a finding marks a lug that an edit touches, or blames the part that it is on.</summary>
    private static bool Marks(Finding finding, Circuit circuit, CircuitEdit edit)
    {
        var lugs = edit.LugsIn(circuit);
        return finding.Subjects.Any(subject =>
                subject.Kind == SubjectKind.Lug && lugs.Any(lug => circuit.NameOf(lug) == subject.Name)
            )
            || finding.Subjects is [{ Kind: SubjectKind.Part } blamed, ..]
                && lugs.Any(lug => circuit.PartOf(circuit.Lugs[lug]).Name == blamed.Name);
    }

    /// <summary>
    /// No one edit is known: an error that stands tells the cause, a warning is named to be mended first, unless a part of another
    /// value is all that is wanted.
    /// </summary>
    private static ImmutableArray<Finding> Unmended(Finding refuted, List<Finding> mistakes, RepairResult? result)
    {
        if (mistakes.Find(finding => finding.Severity == Severity.Error) is { } cause)
        {
            return [.. mistakes.Select(finding => finding == cause ? WithWitness(cause, refuted) : finding)];
        }

        var help =
            refuted.Remedy == Remedy.Value ? refuted.Help
            : mistakes.Count > 0
                ? $"mend first what is found at line {mistakes[0].Location.Position.Line}, {refuted.Otherwise}"
            : result is { IsComplete: true, Repairs.Length: > RepairSearch.MostShown }
                ? $"no single wire explains it: {refuted.Help}"
            : refuted.Help;
        return [.. mistakes, refuted with { Help = help }];
    }

    private static Finding WithWitness(Finding cause, Finding refuted) =>
        cause with
        {
            Severity = Severity.Error,
            Related =
            [
                .. cause.Related,
                new RelatedPlace(refuted.Location, $"refuted: {refuted.Message}"),
                .. refuted.Related,
            ],
        };

    /// <summary>True for what a wrong wire can give; an allowance is none, nor is how a thing is built.</summary>
    internal static bool IsMistake(Finding finding) =>
        finding.Severity >= Severity.Warning
        && finding.Description.Group is not (FindingGroup.Text or FindingGroup.Building)
        && finding.Description != AllowanceFindings.AllowUnused;

    /// <summary>True when nothing is found that was not there before; a mended circuit may need an allowance no more.</summary>
    private static bool HasNothingNew(
        Circuit circuit,
        Study study,
        HashSet<(string Id, Subject? At)> before,
        CheckSettings settings,
        CancellationToken cancellation
    ) =>
        before.Count == 0
            ? Checker.FindsNothing(
                circuit,
                study,
                new CheckRequest(CheckList.Usual, settings),
                _ => false,
                cancellation
            )
            : Checker
                .Examine(circuit, study, new CheckRequest(CheckList.Usual, settings), cancellation)
                .Findings.All(finding =>
                    finding.Severity < Severity.Warning
                    || finding.Description == AllowanceFindings.AllowUnused
                    || before.Contains(KindOf(finding))
                );

    internal static (string Id, Subject? At) KindOf(Finding finding) =>
        (finding.Id, finding.Subjects.IsEmpty ? null : finding.Subjects[0]);
}
