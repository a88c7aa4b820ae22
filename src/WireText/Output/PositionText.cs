using System.Collections.Immutable;
using System.Text;
using WireText.Electrical.Positions;
using WireText.Text;

namespace WireText.Output;

/// <summary>Writes a table of positions for people, as text or as Markdown.</summary>
public static class PositionText
{
    /// <summary>In columns, with what is heard broken into lines where it is long.</summary>
    public static string Write(PositionTable table)
    {
        var sheet = PositionSheet.Of(table);
        var text = new StringBuilder();
        if (table.Circuit.Title is { } title)
        {
            text.Append(VisibleText.Line(title)).Append("\n\n");
        }

        TextTable.Write(text, sheet.Heading, sheet.Rows, sheet.HeardColumn, below: []);
        TextTable.WriteRemarks(text, sheet.Remarks);
        if (CoilSheet.Of(table.Circuit) is { } coils)
        {
            text.Append('\n');
            TextTable.Write(text, coils.Heading, coils.Rows, broken: 0, below: coils.Origins);
            TextTable.WriteRemarks(text, coils.Remarks);
        }

        return text.ToString();
    }

    /// <summary>As a table in Markdown, with the remarks as a list.</summary>
    public static string WriteMarkdown(PositionTable table)
    {
        var sheet = PositionSheet.Of(table);
        var text = new StringBuilder();
        AppendMarkdown(text, sheet.Heading, sheet.Rows, sheet.Remarks);
        if (CoilSheet.Of(table.Circuit) is { } coils)
        {
            text.Append('\n');
            AppendMarkdown(text, coils.FullHeading, coils.FullRows, coils.Remarks);
        }

        return text.ToString();
    }

    private static void AppendMarkdown(
        StringBuilder text,
        ImmutableArray<string> heading,
        ImmutableArray<ImmutableArray<string>> rows,
        ImmutableArray<string> remarks
    )
    {
        if (!rows.IsEmpty)
        {
            AppendMarkdownRow(text, heading);
            AppendMarkdownRow(text, [.. heading.Select(_ => "---")]);
            foreach (var row in rows)
            {
                AppendMarkdownRow(text, row);
            }

            text.Append('\n');
        }

        foreach (var remark in remarks)
        {
            text.Append($"- {MarkdownText.Escaped(remark)}\n");
        }
    }

    private static void AppendMarkdownRow(StringBuilder text, ImmutableArray<string> cells) =>
        text.Append($"| {string.Join(" | ", cells.Select(MarkdownText.Escaped))} |\n");
}
