using System.Collections.Immutable;
using WireText.Checks;
using WireText.Text;

namespace WireText;

/// <summary>What came of mending one file.</summary>
/// <param name="Source">The text after it; the one given when nothing was mended.</param>
/// <param name="Mended">What is found no more, in the order in which it was mended.</param>
/// <param name="Left">What checking the text comes to now.</param>
public sealed record MendResult(SourceText Source, ImmutableArray<Finding> Mended, Compilation Left);

/// <summary>Makes the edits that findings carry: one finding after another, each kept only when it helped.</summary>
/// <remarks>Every edit is checked before the next is made, so of two that overlap the first wins, and the other is judged anew.</remarks>
public static class Mender
{
    private static readonly ImmutableHashSet<string> OfReading =
    [
        .. FindingCatalogue.OfReading.Where(one => one.Severity == Severity.Error).Select(one => one.Id),
    ];

    public static MendResult Mend(SourceText source, ISourceProvider sources, bool withHarmless, CheckSettings settings)
    {
        var mended = ImmutableArray.CreateBuilder<Finding>();
        var tried = new HashSet<(string Id, string Message)>();
        var now = Compilation.Of(source, sources, withHarmless, settings);
        while (Next(now, source, tried) is { } finding)
        {
            var edited = new SourceText(source.Path, TextEdit.Apply(source.Content, finding.Edits));
            var then = Compilation.Of(edited, sources, withHarmless, settings);
            var isBetter = IsBetter(now, then, finding);
            if (isBetter)
            {
                mended.Add(finding);
                (source, now) = (edited, then);
            }

            // The same slip may stand in several lines, and the same allowance; what a check says is mended once.
            if (!isBetter || !MayStandTwice(finding))
            {
                tried.Add(KeyOf(finding));
            }
        }

        return new MendResult(source, mended.ToImmutable(), now);
    }

    /// <summary>The first finding that can be mended in this file alone.</summary>
    private static Finding? Next(Compilation now, SourceText source, HashSet<(string Id, string Message)> tried) =>
        now.Findings.FirstOrDefault(finding =>
            !finding.Edits.IsEmpty
            && finding.Edits.All(edit => edit.At.Source == source)
            && TextEdit.AreApart(finding.Edits)
            && !tried.Contains(KeyOf(finding))
        );

    /// <summary>
    /// True when the finding is gone, nothing has come and nothing fell silent. While a line cannot be read the circuit is not checked: mended, it
    /// may show what was hidden, so there the lines that cannot be read count.
    /// </summary>
    private static bool IsBetter(Compilation before, Compilation after, Finding finding)
    {
        if (finding.Id == AllowanceFindings.AllowUnused.Id)
        {
            // A line that did nothing is gone; another like it says the same.
            return after.Findings.Count(one => KeyOf(one) == KeyOf(finding))
                    < before.Findings.Count(one => KeyOf(one) == KeyOf(finding))
                && HasNoNewError(before, after);
        }

        if (OfReading.Contains(finding.Id))
        {
            return after.Findings.Count(one => OfReading.Contains(one.Id))
                < before.Findings.Count(one => OfReading.Contains(one.Id));
        }

        return !after.Findings.Select(KeyOf).Contains(KeyOf(finding))
            && HasNothingNew(before, after, Severity.Warning)
            && SoundsAsOften(before, after);
    }

    /// <summary>True when no situation fell silent: a wire of ours must not short the signal.</summary>
    private static bool SoundsAsOften(Compilation before, Compilation after) =>
        Sounding(before) is not { } was || Sounding(after) is not { } now || now >= was;

    private static int? Sounding(Compilation compiled) =>
        compiled.Study is { Outcomes: not null } study ? study.Heard.Sounding.Count() : null;

    private static bool HasNoNewError(Compilation before, Compilation after) =>
        HasNothingNew(before, after, Severity.Error);

    private static bool HasNothingNew(Compilation before, Compilation after, Severity from)
    {
        var known = before.Findings.Select(KeyOf).ToHashSet();
        return after.Findings.All(one => one.Severity < from || known.Contains(KeyOf(one)));
    }

    private static bool MayStandTwice(Finding finding) =>
        OfReading.Contains(finding.Id) || finding.Id == AllowanceFindings.AllowUnused.Id;

    private static (string Id, string Message) KeyOf(Finding finding) => (finding.Id, finding.Message);
}
