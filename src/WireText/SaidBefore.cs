using WireText.Checks;
using WireText.Text;

namespace WireText;

/// <summary>What was said of a text: of a twin of it the same is said, in its places, without reading it.</summary>
/// <param name="Source">The text, which includes no other file: another file may have changed since.</param>
/// <param name="Report">What the checks found.</param>
/// <param name="Told">The same with the findings of reading and the repairs.</param>
internal sealed record SaidBefore(SourceText Source, CheckReport Report, CheckReport Told)
{
    /// <summary>The same of a twin; null of any other text, and where an edit is offered: that may reach into a comment.</summary>
    public SaidBefore? Of(SourceText twin) =>
        TextTwins.Are(Source, twin) && Findings.All(finding => finding.Edits.IsEmpty)
            ? new SaidBefore(twin, In(twin, Report), In(twin, Told))
            : null;

    private IEnumerable<Finding> Findings =>
        Report.Findings.Concat(Told.Findings).Concat(Told.Allowed.Select(allowed => allowed.Finding));

    private CheckReport In(SourceText twin, CheckReport report) =>
        report with
        {
            Findings = [.. report.Findings.Select(finding => In(twin, finding))],
            Allowed =
            [
                .. report.Allowed.Select(allowed => new AllowedFinding(
                    In(twin, allowed.Finding),
                    allowed.Allowance with
                    {
                        DeclaredAt = In(twin, allowed.Allowance.DeclaredAt),
                    }
                )),
            ],
        };

    private Finding In(SourceText twin, Finding finding) =>
        finding with
        {
            Location = In(twin, finding.Location),
            Related = [.. finding.Related.Select(related => related with { Location = In(twin, related.Location) })],
        };

    /// <summary>A place in another source, such as the standard parts, stays where it is.</summary>
    private SourceLocation In(SourceText twin, SourceLocation place) =>
        place.Source == Source ? TextTwins.In(twin, place) : place;
}
