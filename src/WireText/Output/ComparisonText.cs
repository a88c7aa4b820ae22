using System.Globalization;
using System.Text;
using WireText.Comparing;
using WireText.Text;

namespace WireText.Output;

/// <summary>Writes how two circuits differ for people: what is to be done, and what that does.</summary>
public static class ComparisonText
{
    private const int Widest = 110;

    /// <summary>As text.</summary>
    public static string Write(CircuitComparison circuits, PositionComparison? positions)
    {
        var text = new StringBuilder();
        foreach (var (heading, lines) in ComparisonSheet.Sections(circuits))
        {
            text.Append(heading).Append('\n');
            foreach (var line in lines)
            {
                var wrapped = TextWidth.Wrapped(VisibleText.Line(line), Widest);
                text.Append("  ").Append(string.Join("\n    ", wrapped)).Append('\n');
            }

            text.Append('\n');
        }

        if (circuits.IsSame)
        {
            text.Append("the same circuit\n");
        }
        else if (positions is not null)
        {
            foreach (var block in ComparisonSheet.Positions(positions))
            {
                text.Append(VisibleText.Line(block.State)).Append('\n');
                foreach (var (what, before, after) in block.Lines)
                {
                    text.Append(
                        CultureInfo.InvariantCulture,
                        $"  {what, -7}{VisibleText.Line(before)} → {VisibleText.Line(after)}\n"
                    );
                }
            }

            AppendRest(text, positions);
        }

        return text.ToString();
    }

    /// <summary>As Markdown, for a comment below a change.</summary>
    public static string WriteMarkdown(CircuitComparison circuits, PositionComparison? positions)
    {
        var text = new StringBuilder();
        foreach (var (heading, lines) in ComparisonSheet.Sections(circuits))
        {
            text.Append(CultureInfo.InvariantCulture, $"**{heading}**\n\n");
            foreach (var line in lines)
            {
                text.Append("- ").Append(MarkdownText.Escaped(VisibleText.Line(line))).Append('\n');
            }

            text.Append('\n');
        }

        if (circuits.IsSame)
        {
            text.Append("The same circuit.\n");
        }
        else if (positions is not null)
        {
            text.Append("| position | | before | after |\n| --- | --- | --- | --- |\n");
            foreach (var block in ComparisonSheet.Positions(positions))
            {
                foreach (var (what, before, after) in block.Lines)
                {
                    var cells = new[] { block.State, what, before, after };
                    text.Append("| ")
                        .Append(string.Join(" | ", cells.Select(cell => MarkdownText.Escaped(VisibleText.Line(cell)))))
                        .Append(" |\n");
                }
            }

            text.Append('\n');
            AppendRest(text, positions);
        }

        return text.ToString();
    }

    private static void AppendRest(StringBuilder text, PositionComparison positions)
    {
        var same = positions.Rows.Length - ComparisonSheet.Positions(positions).Count();
        text.Append(
            same == 0 ? "every position differs\n"
            : same == positions.Rows.Length ? "every position does what it did\n"
            : string.Create(
                CultureInfo.InvariantCulture,
                $"{same} of {positions.Rows.Length} positions do what they did\n"
            )
        );
    }
}
