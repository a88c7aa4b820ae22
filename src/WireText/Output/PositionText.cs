using System.Collections.Immutable;
using System.Text;
using WireText.Electrical.Positions;

namespace WireText.Output;

/// <summary>Writes a table of positions for people, as text or as Markdown.</summary>
public static class PositionText
{
    /// <summary>No line is wider where it can be helped. Chosen: two windows side by side.</summary>
    private const int Widest = 110;

    /// <summary>What is heard is not broken into columns narrower than this.</summary>
    private const int Narrowest = 18;

    private const string Gap = "  ";

    /// <summary>In columns, with what is heard broken into lines where it is long.</summary>
    public static string Write(PositionTable table)
    {
        var sheet = PositionSheet.Of(table);
        var text = new StringBuilder();
        if (table.Circuit.Title is { } title)
        {
            text.Append(TextWidth.Printable(title)).Append("\n\n");
        }

        if (!sheet.Rows.IsEmpty)
        {
            WriteTable(text, sheet);
        }

        foreach (var line in sheet.Remarks.SelectMany(remark => TextWidth.Wrapped(remark, Widest)))
        {
            text.Append(line).Append('\n');
        }

        return text.ToString();
    }

    /// <summary>As a table in Markdown, with the remarks as a list.</summary>
    public static string WriteMarkdown(PositionTable table)
    {
        var sheet = PositionSheet.Of(table);
        var text = new StringBuilder();
        if (!sheet.Rows.IsEmpty)
        {
            AppendMarkdownRow(text, sheet.Heading);
            AppendMarkdownRow(text, [.. sheet.Heading.Select(_ => "---")]);
            foreach (var row in sheet.Rows)
            {
                AppendMarkdownRow(text, row);
            }

            text.Append('\n');
        }

        foreach (var remark in sheet.Remarks)
        {
            text.Append($"- {Escaped(remark)}\n");
        }

        return text.ToString();
    }

    private static void WriteTable(StringBuilder text, PositionSheet sheet)
    {
        var widths = sheet
            .Heading.Select((name, i) => sheet.Rows.Max(row => TextWidth.Of(row[i])))
            .Zip(sheet.Heading, (width, name) => Math.Max(width, TextWidth.Of(name)))
            .ToArray();
        var others = widths.Sum() - widths[sheet.HeardColumn] + (Gap.Length * (widths.Length - 1));
        widths[sheet.HeardColumn] = Math.Min(widths[sheet.HeardColumn], Math.Max(Narrowest, Widest - others));
        AppendRow(text, sheet.Heading, widths, sheet.HeardColumn);
        text.Append(new string('-', widths.Sum() + (Gap.Length * (widths.Length - 1)))).Append('\n');
        foreach (var row in sheet.Rows)
        {
            AppendRow(text, row, widths, sheet.HeardColumn);
        }

        text.Append('\n');
    }

    private static void AppendRow(StringBuilder text, ImmutableArray<string> cells, int[] widths, int heard)
    {
        var parts = cells[heard].Split(PositionSheet.NoteMark);
        var lines = TextWidth.Wrapped(parts[0], widths[heard]);
        for (var line = 0; line < lines.Count; line++)
        {
            var words = cells.Select(
                (cell, i) =>
                    i == heard ? lines[line]
                    : line == 0 ? cell
                    : ""
            );
            text.Append(string.Join(Gap, words.Select((word, i) => TextWidth.Padded(word, widths[i]))).TrimEnd())
                .Append('\n');
        }

        // A note has the rest of its line to itself.
        var indent = widths.Take(heard).Sum(width => width + Gap.Length) + Gap.Length;
        foreach (var line in parts.Skip(1).SelectMany(note => TextWidth.Wrapped(note, Widest - indent)))
        {
            text.Append(' ', indent).Append(line).Append('\n');
        }
    }

    private static void AppendMarkdownRow(StringBuilder text, ImmutableArray<string> cells) =>
        text.Append($"| {string.Join(" | ", cells.Select(Escaped))} |\n");

    private static string Escaped(string text) =>
        text.Replace("\\", "\\\\", StringComparison.Ordinal)
            .Replace("|", "\\|", StringComparison.Ordinal)
            .Replace("*", "\\*", StringComparison.Ordinal)
            .Replace("<", "\\<", StringComparison.Ordinal);
}
