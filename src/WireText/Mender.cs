using System.Collections.Immutable;
using WireText.Text;

namespace WireText;

/// <summary>What came of mending one file.</summary>
/// <param name="Source">The text after it; the one given when nothing was mended.</param>
/// <param name="Mended">What is found no more, in the order in which it was mended.</param>
/// <param name="Left">What checking the text comes to now.</param>
public sealed record MendResult(SourceText Source, ImmutableArray<Finding> Mended, Compilation Left);

/// <summary>Makes the edits that findings carry, each kept only when it helped.</summary>
/// <remarks>
/// What a check says is mended alone, and judged before the next. Slips in reading are mended together, a line each; where not every
/// one of them helped, half as many are tried, down to the one that does not. So a file of a thousand slips is checked a few times.
/// What checks say is mended last, and only where no edit leaves anything to be warned of: a wire that went astray is missed in one
/// place and found in another, and the one alone is half of the mend.
/// </remarks>
public static class Mender
{
    /// <summary>
    /// Lines that are checked anew, counted in every text that is tried: a text of a hundred lines is tried five thousand times, one of a
    /// hundred thousand five times. Chosen: many times what a harness takes.
    /// </summary>
    public const int MostLines = 500_000;

    /// <param name="compiled">Of the text to be mended.</param>
    public static MendResult Mend(Compilation compiled)
    {
        var (now, source) = (compiled, compiled.Source);
        var mended = ImmutableArray.CreateBuilder<Finding>();
        var tried = new HashSet<(string Id, string Message)>();
        var together = int.MaxValue;
        var lines = 0;
        MendResult? asRead = null;
        while (MendBatch.Next(now, tried, together) is { } batch && (lines += source.LineCount) <= MostLines)
        {
            if (batch.IsOfTheCircuit)
            {
                asRead ??= new MendResult(source, mended.ToImmutable(), now);
            }

            var edited = new SourceText(source.Path, TextEdit.Apply(source.Content, batch.Edits));
            var then = now.With(edited);
            var isBetter = batch.IsBetter(now, then);
            if (isBetter)
            {
                mended.AddRange(batch.Findings);
                (source, now) = (edited, then);
                together = Math.Min(together, int.MaxValue / 2) * 2;
            }
            else if (batch.Findings.Length > 1)
            {
                together = batch.Findings.Length / 2;
                continue;
            }

            // The same slip may stand in several lines, and the same allowance; what a check says is mended once.
            if (!isBetter || !batch.MayStandTwice)
            {
                tried.UnionWith(batch.Findings.Select(MendBatch.KeyOf));
            }
        }

        var staysWrong = now.Findings.Any(finding =>
            finding.Severity >= Severity.Warning && !MendBatch.IsMendable(finding, source, tried)
        );
        return asRead is not null && staysWrong ? asRead : new MendResult(source, mended.ToImmutable(), now);
    }
}
