using System.Text;
using WireText.Documents;
using WireText.Drawing.Lettering;

namespace WireText.Output;

/// <summary>Writes a document as Markdown with tables and task lists.</summary>
public static class DocumentMarkdown
{
    /// <summary>What would make a line more than words where it begins.</summary>
    private const string LineMarks = "#-+=>~0123456789";

    /// <param name="figure">The file that shows the figure, beside the document; null for none.</param>
    public static string Write(Document document, string? figure)
    {
        var text = new StringBuilder();
        foreach (var block in document.Blocks)
        {
            Append(text, block, figure);
            text.Append('\n');
        }

        return text.Append(Line(document.Foot)).Append('\n').ToString();
    }

    private static void Append(StringBuilder text, Block block, string? figure)
    {
        switch (block)
        {
            case Block.Heading heading:
                text.Append('#', heading.Level).Append(' ').Append(Words(heading.Text)).Append('\n');
                break;
            case Block.Paragraph paragraph:
                text.Append(Line(paragraph.Text)).Append('\n');
                break;
            case Block.Bullets bullets:
                AppendList(text, "- ", bullets.Items);
                break;
            case Block.Boxes boxes:
                AppendList(text, "- [ ] ", boxes.Items);
                break;
            case Block.Table table:
                AppendRow(text, table.Columns);
                AppendRow(text, table.Columns.Select(_ => "---"));
                foreach (var row in table.Rows)
                {
                    AppendRow(text, row);
                }

                break;
            case Block.Figure shown:
                text.Append("## ").Append(Words(shown.Title)).Append("\n\n");
                text.Append(
                    figure is null ? Line(shown.Caption) : $"![{Words(shown.Caption)}]({Uri.EscapeDataString(figure)})"
                );
                text.Append('\n');
                break;
            default:
                throw new InvalidOperationException($"No way to write {block.GetType().Name}.");
        }
    }

    private static void AppendList(StringBuilder text, string mark, IEnumerable<string> items)
    {
        foreach (var item in items)
        {
            text.Append(mark).Append(Line(item)).Append('\n');
        }
    }

    private static void AppendRow(StringBuilder text, IEnumerable<string> cells) =>
        text.Append("| ").AppendJoin(" | ", cells.Select(Words)).Append(" |\n");

    /// <summary>Words at the start of a line.</summary>
    private static string Line(string text)
    {
        var words = Words(text).TrimStart();
        return words.Length > 0 && LineMarks.Contains(words[0], StringComparison.Ordinal) ? MarkedOff(words) : words;
    }

    /// <summary>A number before a full stop or a bracket would start a list: there the stop is marked, else the first character.</summary>
    private static string MarkedOff(string words)
    {
        var figures = words.TakeWhile(char.IsAsciiDigit).Count();
        return figures == 0 ? "\\" + words
            : figures < words.Length && words[figures] is ('.' or ')') ? words.Insert(figures, "\\")
            : words;
    }

    private static string Words(string text) => MarkdownText.Escaped(DrawnText.Clean(text));
}
