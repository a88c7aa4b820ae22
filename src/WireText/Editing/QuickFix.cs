using System.Collections.Immutable;
using WireText.Text;

namespace WireText.Editing;

/// <summary>An edit that mends a finding, for who looks at it.</summary>
/// <param name="Title">What it does.</param>
/// <param name="IsCertain">True where it is the one mend, and not one of a few.</param>
public sealed record QuickFix(string Title, Finding Finding, ImmutableArray<TextEdit> Edits, bool IsCertain);

/// <summary>The edits that come with what is found in a stretch of a text.</summary>
public static class QuickFixes
{
    public static ImmutableArray<QuickFix> In(Compilation compiled, TextSpan stretch) =>
        [
            .. compiled
                .Findings.Where(finding =>
                    finding.Location.Source == compiled.Source
                    && finding.Location.Span.Start <= stretch.End
                    && stretch.Start <= finding.Location.Span.End
                )
                .SelectMany(Of),
        ];

    /// <summary>The edits that come with one finding.</summary>
    public static IEnumerable<QuickFix> Of(Finding finding)
    {
        if (!finding.Edits.IsEmpty)
        {
            yield return new QuickFix(TitleOf(finding), finding, finding.Edits, IsCertain: true);
        }

        foreach (var suggestion in finding.Suggestions.Where(suggestion => !suggestion.Edits.IsEmpty))
        {
            yield return new QuickFix(suggestion.Words, finding, suggestion.Edits, finding.Suggestions.Length == 1);
        }
    }

    private static string TitleOf(Finding finding) =>
        finding.Edits is [{ NewText: var text, At.Span.Length: > 0 }] && !text.Contains('\n', StringComparison.Ordinal)
            ? text.Trim().Length == 0
                ? "take the line out"
                : $"write '{text}'"
            : finding.Help ?? "mend it";
}
