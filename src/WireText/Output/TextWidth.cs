using System.Globalization;
using System.Text;

namespace WireText.Output;

/// <summary>How text stands on a terminal.</summary>
internal static class TextWidth
{
    /// <summary>How many columns a terminal gives the text: two to wide characters, none to combining marks.</summary>
    public static int Of(string text)
    {
        var width = 0;
        foreach (var rune in text.EnumerateRunes())
        {
            var category = Rune.GetUnicodeCategory(rune);
            width +=
                category is UnicodeCategory.NonSpacingMark or UnicodeCategory.EnclosingMark or UnicodeCategory.Format
                    ? 0
                : IsWide(rune.Value) ? 2
                : 1;
        }

        return width;
    }

    /// <summary>The text with blanks after it, as wide as asked.</summary>
    public static string Padded(string text, int width) => text + new string(' ', Math.Max(0, width - Of(text)));

    /// <summary>The text broken between words; a word that is too long keeps a line of its own.</summary>
    public static List<string> Wrapped(string text, int width)
    {
        var lines = new List<string>();
        var line = "";
        foreach (var word in text.Split(' '))
        {
            if (line.Length > 0 && Of(line) + 1 + Of(word) > width)
            {
                lines.Add(line);
                line = word;
            }
            else
            {
                line = line.Length == 0 ? word : $"{line} {word}";
            }
        }

        lines.Add(line);
        return lines;
    }

    /// <summary>The blocks of East Asian wide characters and of pictographs (Unicode Standard Annex 11).</summary>
    private static bool IsWide(int code) =>
        code
            is (>= 0x1100 and <= 0x115F)
                or (>= 0x2E80 and <= 0xA4CF)
                or (>= 0xAC00 and <= 0xD7A3)
                or (>= 0xF900 and <= 0xFAFF)
                or (>= 0xFE30 and <= 0xFE6F)
                or (>= 0xFF00 and <= 0xFF60)
                or (>= 0x1F300 and <= 0x1FAFF)
                or (>= 0x20000 and <= 0x3FFFD);
}
