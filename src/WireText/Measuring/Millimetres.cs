using System.Globalization;

namespace WireText.Measuring;

/// <summary>Distances that count as none, because the drawing's numbers are rounded.</summary>
internal static class Tolerance
{
    /// <summary>Two points this near are one.</summary>
    public const double SamePoint = 0.004;

    /// <summary>Shapes may share a strip of this width without overlapping.</summary>
    public const double Touch = 0.02;
}

/// <summary>Reads the drawing's numbers.</summary>
internal static class Millimetres
{
    /// <summary>Ten metres: no drawing of a guitar is larger, and larger numbers could fill memory.</summary>
    public const double Most = 10_000;

    /// <exception cref="UnreadablePictureException">It is no number, not finite or too large.</exception>
    public static double Parse(ReadOnlySpan<char> text)
    {
        if (
            !double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var value)
            || !double.IsFinite(value)
        )
        {
            throw new UnreadablePictureException($"'{Shortened(text)}' is not a number");
        }

        return Math.Abs(value) <= Most
            ? value
            : throw new UnreadablePictureException($"'{Shortened(text)}' is too large; the most is 10000 mm");
    }

    private static string Shortened(ReadOnlySpan<char> text) =>
        text.Length <= 24 ? text.ToString() : string.Concat(text[..24], "…");
}
