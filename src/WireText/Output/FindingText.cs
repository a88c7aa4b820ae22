using System.Globalization;
using WireText.Text;

namespace WireText.Output;

/// <summary>Writes findings for people: where, what, the line itself with the place marked, and how to mend it.</summary>
public static class FindingText
{
    /// <summary>No more of a line is shown, in UTF-16 units.</summary>
    private const int LongestShown = 120;

    /// <summary>Of Select Graphic Rendition (ECMA-48).</summary>
    private const string Bold = "1";

    /// <summary>So many findings of one check in one file are written; the others are counted.</summary>
    /// <remarks>Whoever gives the program a file of another kind should see what is wrong, not a thousand lines of it.</remarks>
    public const int MostAlike = 12;

    /// <summary>Writes what is to be mended or thought over; what is right has its own place.</summary>
    public static void Write(IEnumerable<Finding> findings, MessageWriter writer)
    {
        var alike = new Dictionary<(string File, string Check), int>();
        foreach (var finding in findings.Where(finding => finding.Severity > Severity.Right))
        {
            var key = (finding.Location.Source.Path, finding.Id);
            alike[key] = alike.GetValueOrDefault(key) + 1;
            if (alike[key] <= MostAlike)
            {
                Write(finding, writer);
            }
        }

        foreach (var ((file, check), count) in alike.Where(many => many.Value > MostAlike))
        {
            writer.WriteLine(
                string.Create(CultureInfo.InvariantCulture, $"{file}: {count - MostAlike} more [{check}]")
            );
        }
    }

    /// <summary>Writes what is as it should be, a line each: it stands behind the count of what is found.</summary>
    public static void WriteRight(IEnumerable<Finding> findings, MessageWriter writer)
    {
        foreach (var finding in findings.Where(finding => finding.Severity == Severity.Right))
        {
            WriteHead(finding, writer);
        }
    }

    /// <summary>One line that counts: <c>2 errors and 1 warning in 3 files</c>, or that nothing was found.</summary>
    public static string Summary(IReadOnlyCollection<Finding> findings, int files)
    {
        var counts = new[]
        {
            Count(findings, Severity.Error, "error"),
            Count(findings, Severity.Warning, "warning"),
            Count(findings, Severity.Note, "note"),
        }
            .OfType<string>()
            .ToList();
        var what = counts.Count switch
        {
            0 => "nothing found",
            1 => counts[0],
            _ => $"{string.Join(", ", counts.Take(counts.Count - 1))} and {counts[^1]}",
        };
        return files == 1 ? what : string.Create(CultureInfo.InvariantCulture, $"{what} in {files} files");
    }

    /// <summary>One line on what is not told yet; null when nothing waits.</summary>
    public static string? Waiting(CheckedFile file) =>
        file.Waiting switch
        {
            [] => null,
            [var only] => $"{file.Path}: 1 more check waits until this is mended: {only}",
            var many => string.Create(
                CultureInfo.InvariantCulture,
                $"{file.Path}: {many.Length} more checks wait until this is mended: {string.Join(", ", many)}"
            ),
        };

    /// <summary>The word for a severity, as in a finding's first line.</summary>
    public static string WordFor(Severity severity) =>
        severity switch
        {
            Severity.Error => "error",
            Severity.Warning => "warning",
            Severity.Note => "note",
            _ => "right",
        };

    private static string? Count(IReadOnlyCollection<Finding> findings, Severity severity, string word)
    {
        var count = findings.Count(f => f.Severity == severity);
        return count switch
        {
            0 => null,
            1 => $"1 {word}",
            _ => string.Create(CultureInfo.InvariantCulture, $"{count} {word}s"),
        };
    }

    private static void Write(Finding finding, MessageWriter writer)
    {
        var style = StyleOf(finding.Severity);
        WriteHead(finding, writer);
        WriteLine(finding.Location, writer, style);
        foreach (var related in finding.Related)
        {
            writer.WriteLine($"{PlaceOf(related.Location)}: {related.Message}");
            WriteLine(related.Location, writer, style);
        }

        if (finding.Help is { } help)
        {
            writer.Write($"help: {help.Replace("\n", "\n      ", StringComparison.Ordinal)}\n");
        }
    }

    private static void WriteHead(Finding finding, MessageWriter writer)
    {
        writer.Write($"{PlaceOf(finding.Location)}: ");
        writer.WriteStyled(WordFor(finding.Severity), StyleOf(finding.Severity));
        writer.Write(": ");
        writer.WriteStyled(VisibleText.Line(finding.Message), Bold);
        writer.WriteLine($"  [{finding.Id}]");
    }

    private static string PlaceOf(SourceLocation location)
    {
        var (line, column) = location.Position;
        return VisibleText.Line(string.Create(CultureInfo.InvariantCulture, $"{location.Source.Path}:{line}:{column}"));
    }

    /// <summary>The line of the source, and carets under the place. A line too long to read is cut around the place.</summary>
    private static void WriteLine(SourceLocation location, MessageWriter writer, string style)
    {
        var (number, column) = location.Position;
        var line = location.Source.LineSpan(number);
        var (start, end) = (line.Start, line.End);
        if (line.Length > LongestShown)
        {
            start = Math.Max(line.Start, line.Start + column - 1 - (LongestShown / 3));
            end = Math.Min(line.End, start + LongestShown);
        }

        var text = location.Source.Content[start..end];
        var before = VisibleText.Line(location.Source.Content[start..Math.Max(start, location.Span.Start)]);
        var marked = VisibleText.Line(
            location.Source.Content[
                Math.Min(end, location.Span.Start)..Math.Clamp(
                    location.Span.End,
                    Math.Min(end, location.Span.Start),
                    end
                )
            ]
        );
        var margin = number.ToString(CultureInfo.InvariantCulture).PadLeft(3);
        var indent = new string(before.Select(c => c == '\t' ? '\t' : ' ').ToArray());
        var padding = new string(' ', Math.Max(0, TextWidth.Of(before) - before.Length));
        writer.WriteLine($"{margin} | {text}");
        writer.Write($"{new string(' ', margin.Length)} | {indent}{padding}");
        writer.WriteStyled(new string('^', Math.Max(1, TextWidth.Of(marked))), style);
        writer.WriteLine();
    }

    /// <summary>Parameters of Select Graphic Rendition (ECMA-48).</summary>
    private static string StyleOf(Severity severity) =>
        severity switch
        {
            Severity.Error => "1;31",
            Severity.Warning => "1;33",
            Severity.Note => "1;34",
            _ => "36",
        };
}
