using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using WireText.Output;

namespace WireText.Pages;

/// <summary>Writes what stands below the drawing, with scripts or without, and on paper: every position, the coils, what a mod changed, how the figures were made.</summary>
internal static class PageSections
{
    /// <summary>A cell with more letters is broken into lines. Chosen: no figure is as long.</summary>
    private const int LongCell = 32;

    public static void Append(StringBuilder html, PageContents contents)
    {
        var table = contents.Table;
        var positions = PositionSheet.Of(table.Positions);
        Open(html, "positions", "Every position");
        AppendTable(html, positions.Heading, positions.Rows);
        AppendList(html, positions.Remarks);
        Close(html);
        if (CoilSheet.Of(table.Circuit) is { } coils)
        {
            Open(html, "coils", "Coils");
            AppendTable(html, coils.FullHeading, coils.FullRows);
            AppendList(html, coils.Remarks);
            Close(html);
        }

        if (table.Change is { IsSame: false } change)
        {
            Open(html, "change", "What was changed");
            foreach (var (heading, changes) in ComparisonSheet.Sections(change))
            {
                html.Append(CultureInfo.InvariantCulture, $"<h3>{MarkupText.Escaped(heading)}</h3>\n");
                AppendList(html, [.. changes.Select(one => one.Words)]);
            }

            Close(html);
        }

        Open(html, "figures", "How these figures were made");
        AppendList(html, [.. PageWords.Of(contents)]);
        Close(html);
    }

    private static void Open(StringBuilder html, string id, string heading) =>
        html.Append(
            CultureInfo.InvariantCulture,
            $"<section class=\"below\" aria-labelledby=\"{id}\">\n<h2 id=\"{id}\">{heading}</h2>\n"
        );

    private static void Close(StringBuilder html) => html.Append("</section>\n");

    /// <summary>Wider than a small screen: it scrolls by itself, by key too.</summary>
    private static void AppendTable(
        StringBuilder html,
        ImmutableArray<string> heading,
        ImmutableArray<ImmutableArray<string>> rows
    )
    {
        if (rows.IsEmpty)
        {
            return;
        }

        html.Append("<div class=\"wide\" tabindex=\"0\" role=\"group\" aria-label=\"Table\">\n<table>\n<thead>");
        html.Append("<tr>");
        foreach (var name in heading)
        {
            html.Append("<th scope=\"col\">").Append(MarkupText.Escaped(name)).Append("</th>");
        }

        html.Append("</tr>");
        html.Append("</thead>\n<tbody>\n");
        foreach (var row in rows)
        {
            AppendRow(html, row);
        }

        html.Append("</tbody>\n</table>\n</div>\n");
    }

    private static void AppendRow(StringBuilder html, ImmutableArray<string> cells)
    {
        html.Append("<tr>");
        foreach (var cell in cells)
        {
            html.Append(cell.Length > LongCell ? "<td class=\"long\">" : "<td>")
                .Append(MarkupText.Escaped(cell))
                .Append("</td>");
        }

        html.Append("</tr>\n");
    }

    private static void AppendList(StringBuilder html, ImmutableArray<string> lines)
    {
        if (lines.IsEmpty)
        {
            return;
        }

        html.Append("<ul>\n");
        foreach (var line in lines)
        {
            html.Append("<li>").Append(MarkupText.Escaped(line)).Append("</li>\n");
        }

        html.Append("</ul>\n");
    }
}
