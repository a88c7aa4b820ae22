using System.Collections.Immutable;
using System.Text;

namespace WireText.Output;

/// <summary>Writes tables in columns for people, with one column broken into lines where it is long.</summary>
internal static class TextTable
{
    /// <summary>No line is wider where it can be helped. Chosen: two windows side by side.</summary>
    public const int Widest = 110;

    /// <summary>A column is not broken into lines narrower than this.</summary>
    private const int Narrowest = 18;

    private const string Gap = "  ";

    public static void WriteRemarks(StringBuilder text, ImmutableArray<string> remarks)
    {
        foreach (var line in remarks.SelectMany(remark => TextWidth.Wrapped(remark, Widest)))
        {
            text.Append(line).Append('\n');
        }
    }

    /// <summary>Nothing when there are no rows. One column is broken into lines, and has notes below its first part.</summary>
    /// <param name="below">A sentence to stand below each row; empty for none.</param>
    public static void Write(
        StringBuilder text,
        ImmutableArray<string> heading,
        ImmutableArray<ImmutableArray<string>> rows,
        int broken,
        ImmutableArray<string> below
    )
    {
        if (rows.IsEmpty)
        {
            return;
        }

        int[] widths =
        [
            .. heading.Select(
                (name, i) => Math.Max(TextWidth.Of(name), rows.Max(row => TextWidth.Of(FirstPart(row[i]))))
            ),
        ];
        var others = widths.Sum() - widths[broken] + (Gap.Length * (widths.Length - 1));
        widths[broken] = Math.Min(widths[broken], Math.Max(Narrowest, Widest - others));
        AppendRow(text, heading, widths, broken);
        text.Append(new string('-', widths.Sum() + (Gap.Length * (widths.Length - 1)))).Append('\n');
        for (var row = 0; row < rows.Length; row++)
        {
            AppendRow(text, rows[row], widths, broken);
            if (row < below.Length)
            {
                AppendIndented(text, below[row], 2 * Gap.Length);
            }
        }

        text.Append('\n');
    }

    private static string FirstPart(string cell) => cell.Split(PositionSheet.NoteMark)[0];

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
        foreach (var note in parts.Skip(1))
        {
            AppendIndented(text, note, indent);
        }
    }

    private static void AppendIndented(StringBuilder text, string sentence, int indent)
    {
        foreach (var line in TextWidth.Wrapped(sentence, Widest - indent))
        {
            text.Append(' ', indent).Append(line).Append('\n');
        }
    }
}
