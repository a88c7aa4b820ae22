using System.Globalization;
using System.Text;
using SkiaSharp;
using WireText.Raster.Fonts;

namespace WireText.Raster;

/// <summary>Writes the table of widths that the core uses, from the packaged typeface as Skia reads it.</summary>
internal static class AdvanceTable
{
    /// <summary>Latin with its accents, Greek, Cyrillic, punctuation, and the signs that wirings use.</summary>
    public static IReadOnlyList<(int First, int Last)> Ranges { get; } =
    [
        (0x0020, 0x007E),
        (0x00A0, 0x017F),
        (0x0218, 0x021B),
        (0x0386, 0x03CE),
        (0x0400, 0x045F),
        (0x1E9E, 0x1E9E),
        (0x2010, 0x2027),
        (0x2030, 0x203A),
        (0x2044, 0x2044),
        (0x20AC, 0x20AC),
        (0x2116, 0x2116),
        (0x2122, 0x2126),
        (0x2150, 0x215E),
        (0x2190, 0x2199),
        (0x2206, 0x2206),
        (0x2212, 0x221E),
        (0x2248, 0x2265),
        (0x25A0, 0x25CF),
        (0xFFFD, 0xFFFD),
    ];

    public static string Write()
    {
        var code = new StringBuilder();
        code.Append(
            """
            namespace WireText.Drawing.Lettering;

            /// <summary>How far the typeface moves on after each character. Written by the test AdvanceTable_OfThePackagedTypeface_IsWhatTheCoreHas; change nothing by hand.</summary>
            internal static class InterAdvances
            {
                public const int UnitsPerEm = 2816;

                private static readonly Lazy<Dictionary<int, int>> Regular = new(() => Read(RegularRows));
                private static readonly Lazy<Dictionary<int, int>> Medium = new(() => Read(MediumRows));
                private static readonly Lazy<Dictionary<int, int>> SemiBold = new(() => Read(SemiBoldRows));

                /// <summary>The width of one character in units, or null when the table lacks it.</summary>
                public static int? Of(TextWeight weight, int codePoint)
                {
                    var table = weight switch
                    {
                        TextWeight.Regular => Regular.Value,
                        TextWeight.Medium => Medium.Value,
                        _ => SemiBold.Value,
                    };
                    return table.TryGetValue(codePoint, out var units) ? units : null;
                }

                private static Dictionary<int, int> Read(string rows)
                {
                    var table = new Dictionary<int, int>();
                    foreach (var row in rows.Split('\n'))
                    {
                        var words = row.Split(' ');
                        var first = Convert.ToInt32(words[0], 16);
                        for (var i = 1; i < words.Length; i++)
                        {
                            if (words[i] != "-")
                            {
                                table[first + i - 1] = int.Parse(words[i], CultureInfo.InvariantCulture);
                            }
                        }
                    }

                    return table;
                }

            """
        );
        code.Insert(0, "using System.Globalization;\n\n");
        foreach (var (name, weight) in new[] { ("Regular", 400), ("Medium", 500), ("SemiBold", 600) })
        {
            code.Append(CultureInfo.InvariantCulture, $"\n    private const string {name}Rows = \"\"\"\n");
            Rows(code, InterTypefaces.OfWeight(weight));
            code.Append("        \"\"\";\n");
        }

        return code.Append("}\n").ToString();
    }

    private static void Rows(StringBuilder code, SKTypeface face)
    {
        using var font = new SKFont(face, face.UnitsPerEm) { Hinting = SKFontHinting.None, LinearMetrics = true };
        foreach (var (first, last) in Ranges)
        {
            for (var start = first; start <= last; start += 16)
            {
                code.Append(CultureInfo.InvariantCulture, $"        {start:X4}");
                for (var value = start; value <= Math.Min(last, start + 15); value++)
                {
                    code.Append(' ').Append(Advance(font, value));
                }

                code.Append('\n');
            }
        }
    }

    private static string Advance(SKFont font, int value)
    {
        if (!font.ContainsGlyph(value))
        {
            return "-";
        }

        return Math.Round(font.MeasureText(char.ConvertFromUtf32(value))).ToString(CultureInfo.InvariantCulture);
    }
}
