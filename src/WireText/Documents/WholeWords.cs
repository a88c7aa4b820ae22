using System.Collections.Frozen;
using System.Globalization;
using System.Text;
using WireText.Drawing.Lettering;
using WireText.Drawing.Shapes;

namespace WireText.Documents;

/// <summary>Breaks text into lines and loses none of it: a word wider than a line is broken where the line ends.</summary>
internal static class WholeWords
{
    /// <summary>The blank at which no line is broken.</summary>
    private const char Bound = '\u00A0';

    private static readonly FrozenSet<string> Units = FrozenSet.ToFrozenSet(
        ["Ω", "kΩ", "MΩ", "Hz", "kHz", "pF", "nF", "µF", "H", "mH", "V", "mV", "dB", "mm", "%", "°C"],
        StringComparer.Ordinal
    );

    /// <summary>At least one line, which may be empty.</summary>
    public static IReadOnlyList<string> Wrap(string text, TextStyle style, double width)
    {
        var words = WithUnits(DrawnText.Clean(text).Split(' ', StringSplitOptions.RemoveEmptyEntries));
        var lines = DrawnText.Wrap(
            string.Join(' ', words.SelectMany(word => Pieces(word, style, width))),
            style.Weight,
            style.Size,
            width
        );
        return lines.Count > 0 ? [.. lines.Select(line => line.Replace(Bound, ' '))] : [""];
    }

    /// <summary>A number and the unit behind it are one word: a line that ends between them is misread.</summary>
    private static IEnumerable<string> WithUnits(string[] words)
    {
        for (var i = 0; i < words.Length; i++)
        {
            var isBound = i + 1 < words.Length && char.IsAsciiDigit(words[i][^1]) && IsUnit(words[i + 1]);
            yield return isBound ? words[i] + Bound + words[++i] : words[i];
        }
    }

    private static bool IsUnit(string word) => Units.Contains(word.TrimEnd(',', ';', '.', ')'));

    private static IEnumerable<string> Pieces(string word, TextStyle style, double width)
    {
        if (style.WidthOf(word) <= width)
        {
            return [word];
        }

        var pieces = new List<string>();
        var piece = new StringBuilder();
        for (var i = 0; i < word.Length; )
        {
            var length = StringInfo.GetNextTextElementLength(word, i);
            var element = word.Substring(i, length);
            if (piece.Length > 0 && style.WidthOf(piece + element) > width)
            {
                pieces.Add(piece.ToString());
                piece.Clear();
            }

            piece.Append(element);
            i += length;
        }

        pieces.Add(piece.ToString());
        return pieces;
    }
}
