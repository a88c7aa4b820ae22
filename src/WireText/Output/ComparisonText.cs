using System.Globalization;
using System.Text;
using WireText.Comparing;
using WireText.Text;

namespace WireText.Output;

/// <summary>Writes how two circuits differ for people: what is to be done, and what that does.</summary>
public static class ComparisonText
{
    private const int Widest = 110;
    private const string Renamed = "positions called otherwise";

    /// <summary>As text.</summary>
    public static string Write(CircuitComparison circuits, PositionComparison? positions)
    {
        var text = new StringBuilder();
        foreach (var (heading, changes) in ComparisonSheet.Sections(circuits))
        {
            Append(text, heading, changes.Select(change => Number(change) + change.Words));
        }

        Append(text, Renamed, ComparisonSheet.Names(circuits));

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
        foreach (var (heading, changes) in ComparisonSheet.Sections(circuits))
        {
            AppendMarkdown(text, heading, changes.Select(change => (Number(change), change.Words)));
        }

        AppendMarkdown(text, Renamed, ComparisonSheet.Names(circuits).Select(name => ("- ", name)));

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

    /// <summary>A heading with its lines; nothing where there is no line.</summary>
    private static void Append(StringBuilder text, string heading, IEnumerable<string> lines)
    {
        var start = text.Length;
        foreach (var line in lines)
        {
            var wrapped = TextWidth.Wrapped(VisibleText.Line(line), Widest);
            text.Append("  ").Append(string.Join("\n     ", wrapped)).Append('\n');
        }

        if (text.Length > start)
        {
            text.Insert(start, heading + "\n").Append('\n');
        }
    }

    private static void AppendMarkdown(
        StringBuilder text,
        string heading,
        IEnumerable<(string Mark, string Words)> lines
    )
    {
        var start = text.Length;
        foreach (var (mark, words) in lines)
        {
            text.Append(mark).Append(MarkdownText.Escaped(VisibleText.Line(words))).Append('\n');
        }

        if (text.Length > start)
        {
            text.Insert(start, $"**{heading}**\n\n").Append('\n');
        }
    }

    private static string Number(ListedChange change) =>
        string.Create(CultureInfo.InvariantCulture, $"{change.Number}. ");

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
