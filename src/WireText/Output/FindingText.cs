using System.Globalization;
using WireText.Text;

namespace WireText.Output;

/// <summary>Writes findings for people: where, what, the line itself with the place marked, and how to mend it.</summary>
public static class FindingText
{
    /// <summary>No more of a line is shown, in UTF-16 units.</summary>
    private const int LongestShown = 120;

    /// <summary>So many findings of one check in one file are written; the others are counted.</summary>
    /// <remarks>Whoever gives the program a file of another kind should see what is wrong, not a thousand lines of it.</remarks>
    public const int MostAlike = 12;

    public static void Write(IEnumerable<Finding> findings, TextWriter writer, bool inColour)
    {
        var alike = new Dictionary<(string File, string Check), int>();
        foreach (var finding in findings)
        {
            var key = (finding.Location.Source.Path, finding.Id);
            alike[key] = alike.GetValueOrDefault(key) + 1;
            if (alike[key] <= MostAlike)
            {
                Write(finding, writer, inColour);
            }
        }

        foreach (var ((file, check), count) in alike.Where(many => many.Value > MostAlike))
        {
            writer.Write(string.Create(CultureInfo.InvariantCulture, $"{file}: {count - MostAlike} more [{check}]\n"));
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

    /// <summary>The word for a severity, as in a finding's first line.</summary>
    public static string WordFor(Severity severity) =>
        severity switch
        {
            Severity.Error => "error",
            Severity.Warning => "warning",
            Severity.Note => "note",
            _ => "info",
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

    private static void Write(Finding finding, TextWriter writer, bool inColour)
    {
        var paint = new Paint(inColour, finding.Severity);
        writer.Write(
            $"{PlaceOf(finding.Location)}: {paint.Severity(WordFor(finding.Severity))}: {paint.Strong(finding.Message)}  [{finding.Id}]\n"
        );
        WriteLine(finding.Location, writer, paint);
        foreach (var related in finding.Related)
        {
            writer.Write($"{PlaceOf(related.Location)}: {related.Message}\n");
            WriteLine(related.Location, writer, paint);
        }

        if (finding.Help is { } help)
        {
            writer.Write($"help: {help.Replace("\n", "\n      ", StringComparison.Ordinal)}\n");
        }
    }

    private static string PlaceOf(SourceLocation location)
    {
        var (line, column) = location.Position;
        return string.Create(CultureInfo.InvariantCulture, $"{location.Source.Path}:{line}:{column}");
    }

    /// <summary>The line of the source, and carets under the place. A line too long to read is cut around the place.</summary>
    private static void WriteLine(SourceLocation location, TextWriter writer, Paint paint)
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
        var before = location.Source.Content[start..Math.Max(start, location.Span.Start)];
        var marked = location.Source.Content[
            Math.Min(end, location.Span.Start)..Math.Clamp(location.Span.End, Math.Min(end, location.Span.Start), end)
        ];
        var margin = number.ToString(CultureInfo.InvariantCulture).PadLeft(3);
        var indent = new string(before.Select(c => c == '\t' ? '\t' : ' ').ToArray());
        var padding = new string(' ', Math.Max(0, TextWidth.Of(before) - before.Length));
        var carets = new string('^', Math.Max(1, TextWidth.Of(marked)));
        writer.Write($"{margin} | {TextWidth.Printable(text)}\n");
        writer.Write($"{new string(' ', margin.Length)} | {indent}{padding}{paint.Severity(carets)}\n");
    }

    private readonly record struct Paint(bool InColour, Severity Level)
    {
        public string Severity(string text) =>
            Wrap(
                text,
                Level switch
                {
                    Text.Severity.Error => "1;31",
                    Text.Severity.Warning => "1;33",
                    Text.Severity.Note => "1;34",
                    _ => "36",
                }
            );

        public string Strong(string text) => Wrap(text, "1");

        private string Wrap(string text, string code) => InColour ? $"\u001b[{code}m{text}\u001b[0m" : text;
    }
}
