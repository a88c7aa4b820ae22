using System.Collections.Immutable;
using WireText.Drawing.Lettering;
using WireText.Drawing.Shapes;
using WireText.Geometry;

namespace WireText.Documents;

/// <summary>Sets a table into a flow of pages: columns as wide as they need, rows that are never broken, the head again on each page.</summary>
internal sealed class TableSetter
{
    private readonly PageFlow flow;
    private readonly Block.Table table;
    private readonly TextStyle head;
    private readonly TextStyle plain;
    private readonly double[] widths;
    private readonly bool hasHead;
    private readonly IReadOnlyList<string>[][] rows;
    private readonly double[] heights;

    public TableSetter(PageFlow flow, Block.Table table, Theme theme)
    {
        this.flow = flow;
        this.table = table;
        head = new TextStyle(TextWeight.SemiBold, PageTokens.CellSize, theme.Ink);
        plain = new TextStyle(TextWeight.Regular, PageTokens.CellSize, theme.Ink);
        hasHead = table.Columns.Any(name => name.Length > 0);
        widths = Widths();
        rows = [.. table.Rows.Select(row => Wrapped(row, plain))];
        heights = [.. rows.Select(HeightOf)];
    }

    /// <summary>How much must fit where it begins, its head included: all of it where it is low, else two rows.</summary>
    public double KeptAtStart =>
        (hasHead ? HeightOf(Wrapped(table.Columns, head)) : 0)
        + (heights.Sum() <= PageTokens.KeptWhole ? heights.Sum() : PageFlow.KeptFrom(heights, 0));

    public void Set()
    {
        for (var i = 0; i < rows.Length; i++)
        {
            var kept = i == 0 ? KeptAtStart : PageFlow.KeptFrom(heights, i);
            if (i == 0 || !flow.Fits(kept))
            {
                flow.Need(kept);
                SetHead();
            }

            SetRow(rows[i], plain, PageTokens.RowLine);
        }
    }

    private void SetHead()
    {
        if (hasHead)
        {
            SetRow(Wrapped(table.Columns, head), head, PageTokens.HeadLine);
        }
    }

    private void SetRow(IReadOnlyList<IReadOnlyList<string>> cells, TextStyle style, double rule)
    {
        var left = PageTokens.Margin;
        for (var column = 0; column < cells.Count; column++)
        {
            for (var line = 0; line < cells[column].Count; line++)
            {
                var baseline =
                    flow.Y
                    + PageTokens.RowPadding
                    + (style.Size * DrawnText.CapHeight)
                    + (line * style.Size * Tokens.LineHeight);
                if (cells[column][line].Length > 0)
                {
                    flow.Add(TextItem.Start("cell", cells[column][line], new Point(left, baseline), style));
                }
            }

            left += widths[column] + PageTokens.CellGap;
        }

        flow.MoveDown(HeightOf(cells));
        flow.Add(
            PathShape.Through(
                "rule",
                Paint.Stroked(style.Colour, rule),
                new Point(PageTokens.Margin, flow.Y),
                new Point(PageTokens.Margin + widths.Sum() + ((widths.Length - 1) * PageTokens.CellGap), flow.Y)
            )
        );
    }

    private static double HeightOf(IReadOnlyList<IReadOnlyList<string>> cells) =>
        ((cells.Max(lines => lines.Count) - 1) * PageTokens.CellSize * Tokens.LineHeight)
        + (PageTokens.CellSize * DrawnText.CapHeight)
        + (2 * PageTokens.RowPadding);

    private IReadOnlyList<string>[] Wrapped(ImmutableArray<string> row, TextStyle style) =>
        [.. row.Select((cell, column) => WholeWords.Wrap(cell, style, widths[column]))];

    /// <summary>Each as wide as its widest cell; where all are too wide together, the widest give way and share what is left.</summary>
    private double[] Widths()
    {
        var natural = table
            .Columns.Select(
                (name, column) =>
                    table
                        .Rows.Select(row => plain.WidthOf(DrawnText.Clean(row[column])))
                        .Append(head.WidthOf(DrawnText.Clean(name)))
                        .Max()
            )
            .ToArray();
        var room = flow.Width - ((natural.Length - 1) * PageTokens.CellGap);
        if (natural.Sum() <= room)
        {
            return natural;
        }

        // From the narrowest on, each takes what it needs or an equal share of what is left.
        var given = new double[natural.Length];
        var left = natural.Length;
        foreach (var column in Enumerable.Range(0, natural.Length).OrderBy(column => natural[column]))
        {
            given[column] = Math.Min(natural[column], room / left);
            room -= given[column];
            left--;
        }

        return given;
    }
}
