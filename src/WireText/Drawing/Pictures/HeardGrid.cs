using System.Globalization;
using WireText.Drawing.Lettering;
using WireText.Drawing.Shapes;

namespace WireText.Drawing.Pictures;

/// <summary>Sets what is heard in every position in columns: one for each control, the last for what is heard.</summary>
internal sealed class HeardGrid
{
    private const string Name = "heard";

    private readonly HeardTable table;
    private readonly Theme theme;

    /// <summary>Where each column begins, from the left edge; in the end the whole width.</summary>
    private readonly double[] starts;

    public HeardGrid(HeardTable table, Theme theme)
    {
        (this.table, this.theme) = (table, theme);
        starts = new double[table.Heading.Length + 1];
        for (var i = 0; i < table.Heading.Length; i++)
        {
            var widest = table
                .Rows.Select(row => WidthOf(row[i], TextWeight.Regular))
                .Append(WidthOf(table.Heading[i], TextWeight.SemiBold))
                .Max();
            starts[i + 1] = starts[i] + widest + (i + 1 < table.Heading.Length ? Tokens.ColumnGap : 0);
        }
    }

    /// <summary>In millimetres; no line of it is broken.</summary>
    public double Width => Lines.Select(line => WidthOf(line, TextWeight.Regular)).Append(starts[^1]).Max();

    /// <summary>What stands below the rows.</summary>
    private IEnumerable<string> Lines
    {
        get
        {
            if (table.Untold > 0)
            {
                yield return string.Create(CultureInfo.InvariantCulture, $"and {table.Untold} more rows");
            }

            if (table.RestsOnAssumed)
            {
                yield return "* assumed: the text does not say";
            }
        }
    }

    /// <summary>Writes it from the left edge of a column, from the top down.</summary>
    public void Write(TextColumn column)
    {
        Row(column, table.Heading, TextStyle.Caption(theme.QuietInk));
        foreach (var row in table.Rows)
        {
            Row(column, row, TextStyle.Note(theme.Ink));
        }

        foreach (var line in Lines)
        {
            column.Line(Name, line, TextStyle.Note(theme.QuietInk));
        }
    }

    private void Row(TextColumn column, IEnumerable<string> cells, TextStyle style)
    {
        var baseline = column.Y + (style.Size * DrawnText.CapHeight);
        foreach (var (cell, start) in cells.Zip(starts))
        {
            column.StartOn(baseline, Name, DrawnText.Clean(cell), style, start);
        }

        column.Skip(style.Size * Tokens.LineHeight);
    }

    private static double WidthOf(string text, TextWeight weight) =>
        DrawnText.Width(DrawnText.Clean(text), weight, Tokens.NoteSize);
}
