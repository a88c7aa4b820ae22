using System.Globalization;
using System.Text;

namespace WireText.Drawing.Lettering;

/// <summary>What text takes up on a picture, known without a font: widths add up, for pictures are drawn without kerning or ligatures.</summary>
public static class DrawnText
{
    /// <summary>The height of a capital over its size: 2048 of 2816 units in the typeface.</summary>
    public const double CapHeight = 2048.0 / 2816;

    /// <summary>How far the tails of g, j, p, q and y hang below the line, over the size.</summary>
    private const double Tail = 0.21;

    /// <summary>How far a text hangs below its line, in millimetres.</summary>
    public static double Descent(string text, double size) =>
        text.IndexOfAny(['g', 'j', 'p', 'q', 'y']) < 0 ? 0 : Tail * size;

    /// <summary>What a character outside the table is taken to be wide, over the size of the text: a full square.</summary>
    public const double UnknownWidth = 1;

    private const string Ellipsis = "…";
    private const char Replacement = '\uFFFD';

    /// <summary>The width in millimetres of a text in one line.</summary>
    /// <param name="size">The height of the letters' body, in millimetres.</param>
    public static double Width(string text, TextWeight weight, double size)
    {
        var units = 0.0;
        foreach (var rune in text.EnumerateRunes())
        {
            units += InterAdvances.Of(weight, rune.Value) is { } advance
                ? advance
                : UnknownWidth * InterAdvances.UnitsPerEm;
        }

        return units * size / InterAdvances.UnitsPerEm;
    }

    /// <summary>A text that any drawing can carry: one line, without characters that XML forbids or that turn the direction of others.</summary>
    public static string Clean(string text)
    {
        var clean = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes())
        {
            if (Rune.IsControl(rune) || rune.Value is 0x2028 or 0x2029)
            {
                clean.Append(rune.Value is '\t' or '\n' or '\r' or 0x2028 or 0x2029 ? ' ' : Replacement);
            }
            else if (rune.Value is 0xFFFE or 0xFFFF)
            {
                clean.Append(Replacement);
            }
            else if (!TurnsDirection(rune.Value))
            {
                clean.Append(rune.ToString());
            }
        }

        return clean.ToString();
    }

    /// <summary>The text itself, or as much of its start as fits with an ellipsis after it; clean already or made so.</summary>
    /// <param name="width">In millimetres.</param>
    public static string Fit(string text, TextWeight weight, double size, double width)
    {
        var clean = Clean(text);
        if (Width(clean, weight, size) <= width)
        {
            return clean;
        }

        var room = width - Width(Ellipsis, weight, size);
        var end = 0;
        var used = 0.0;
        while (end < clean.Length)
        {
            var length = StringInfo.GetNextTextElementLength(clean, end);
            used += Width(clean.Substring(end, length), weight, size);
            if (used > room)
            {
                break;
            }

            end += length;
        }

        return clean[..end].TrimEnd() + Ellipsis;
    }

    /// <summary>The text in lines no wider than given, broken at blanks; a word wider than a line is shortened.</summary>
    public static IReadOnlyList<string> Wrap(string text, TextWeight weight, double size, double width)
    {
        var lines = new List<string>();
        var line = "";
        foreach (var word in Clean(text).Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            var longer = line.Length == 0 ? word : line + " " + word;
            if (line.Length > 0 && Width(longer, weight, size) > width)
            {
                lines.Add(line);
                line = Fit(word, weight, size, width);
            }
            else
            {
                line = line.Length == 0 ? Fit(word, weight, size, width) : longer;
            }
        }

        if (line.Length > 0)
        {
            lines.Add(line);
        }

        return lines;
    }

    private static bool TurnsDirection(int value) => value is (>= 0x202A and <= 0x202E) or (>= 0x2066 and <= 0x2069);
}
