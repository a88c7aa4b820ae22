using System.Text;
using WireText.Documents;

namespace WireText.Output;

/// <summary>Writes a document as one HTML file that asks for nothing outside itself and runs no script: to read, to tick and to print.</summary>
public static class DocumentHtml
{
    /// <summary>Follows the reader's choice of dark or light; on paper it is black on white. The drawing keeps its own paper.</summary>
    private const string Style = """
        :root { color-scheme: light dark; --paper: #fcfbf8; --ink: #1d2126; --line: #8a8f96 }
        @media (prefers-color-scheme: dark) { :root { --paper: #15181c; --ink: #e8e6e1; --line: #6a7077 } }
        body { margin: 2rem auto; padding: 0 1rem; max-width: 60rem; background: var(--paper); color: var(--ink); font: 1rem/1.4 Inter, sans-serif }
        h1, h2, h3 { line-height: 1.2; margin: 1.5em 0 .5em; break-after: avoid }
        table { border-collapse: collapse; margin: .5em 0 1em }
        th, td { padding: .2em .8em .2em 0; text-align: left; vertical-align: top; border-bottom: 1px solid var(--line); overflow-wrap: anywhere }
        thead { display: table-header-group }
        tr, li, figure { break-inside: avoid }
        ul.boxes { list-style: none; padding: 0 }
        ul.boxes li { margin: .3em 0 }
        figure { margin: 1em 0 }
        figure svg { max-width: 100%; height: auto }
        footer { margin-top: 2em; color: var(--line) }
        @page { margin: 15mm }
        @media print { :root { --paper: #fff; --ink: #000; --line: #666 } body { margin: 0; max-width: none; font-size: 10pt } }
        """;

    public static string Write(Document document)
    {
        var html = new StringBuilder();
        html.Append("<!DOCTYPE html>\n<html lang=\"")
            .Append(Document.Language)
            .Append("\">\n<head>\n<meta charset=\"utf-8\">\n");
        html.Append(
            "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src 'unsafe-inline'\">\n"
        );
        html.Append("<meta name=\"viewport\" content=\"width=device-width\">\n");
        html.Append("<title>").Append(MarkupText.Escaped(document.Title)).Append("</title>\n");
        html.Append("<style>\n").Append(Style).Append("\n</style>\n</head>\n<body>\n");
        foreach (var block in document.Blocks)
        {
            Append(html, block);
        }

        return html.Append("<footer>")
            .Append(MarkupText.Escaped(document.Foot))
            .Append("</footer>\n</body>\n</html>\n")
            .ToString();
    }

    private static void Append(StringBuilder html, Block block)
    {
        switch (block)
        {
            case Block.Heading heading:
                AppendElement(html, $"h{Digit(heading.Level)}", heading.Text);
                break;
            case Block.Paragraph paragraph:
                AppendElement(html, "p", paragraph.Text);
                break;
            case Block.Bullets bullets:
                AppendList(html, "<ul>\n", "", bullets.Items);
                break;
            case Block.Boxes boxes:
                AppendList(html, "<ul class=\"boxes\">\n", "<input type=\"checkbox\"> ", boxes.Items);
                break;
            case Block.Table table:
                AppendTable(html, table);
                break;
            case Block.Figure figure:
                AppendElement(html, "h2", figure.Title);
                html.Append("<figure>\n").Append(WithoutProlog(SvgWriter.Write(figure.Picture)));
                html.Append("<figcaption>")
                    .Append(MarkupText.Escaped(figure.Caption))
                    .Append("</figcaption>\n</figure>\n");
                break;
            default:
                throw new InvalidOperationException($"No way to write {block.GetType().Name}.");
        }
    }

    private static void AppendList(StringBuilder html, string open, string mark, IEnumerable<string> items)
    {
        html.Append(open);
        foreach (var item in items)
        {
            var words = MarkupText.Escaped(item);
            html.Append("<li>").Append(mark.Length > 0 ? $"<label>{mark}{words}</label>" : words).Append("</li>\n");
        }

        html.Append("</ul>\n");
    }

    private static void AppendTable(StringBuilder html, Block.Table table)
    {
        html.Append("<table>\n");
        if (table.Columns.Any(name => name.Length > 0))
        {
            html.Append("<thead>");
            AppendRow(html, "th", table.Columns);
            html.Append("</thead>\n");
        }

        html.Append("<tbody>\n");
        foreach (var row in table.Rows)
        {
            AppendRow(html, "td", row);
        }

        html.Append("</tbody>\n</table>\n");
    }

    private static void AppendRow(StringBuilder html, string name, IEnumerable<string> cells)
    {
        html.Append("<tr>");
        foreach (var cell in cells)
        {
            html.Append($"<{name}>{MarkupText.Escaped(cell)}</{name}>");
        }

        html.Append("</tr>\n");
    }

    private static void AppendElement(StringBuilder html, string name, string text) =>
        html.Append($"<{name}>{MarkupText.Escaped(text)}</{name}>\n");

    private static char Digit(int level) => (char)('0' + level);

    private static string WithoutProlog(string svg) => svg[svg.IndexOf("<svg", StringComparison.Ordinal)..];
}
