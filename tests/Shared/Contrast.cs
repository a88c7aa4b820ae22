namespace WireText.Testing;

/// <summary>How far two colours stand apart in lightness alone, as on a grey print.</summary>
/// <remarks>WCAG 2.1, "relative luminance" and "contrast ratio".</remarks>
internal static class Contrast
{
    /// <summary>WCAG 2.1, success criterion 1.4.3 (AA): text and what is behind it.</summary>
    public const double OfText = 4.5;

    /// <summary>WCAG 2.1, success criterion 1.4.11 (AA): what is needed to understand a picture, and what is beside it.</summary>
    public const double OfGraphics = 3;

    /// <summary>From 1, alike, to 21, black on white.</summary>
    public static double Between((byte Red, byte Green, byte Blue) one, (byte Red, byte Green, byte Blue) other)
    {
        var (a, b) = (Luminance(one), Luminance(other));
        return (Math.Max(a, b) + 0.05) / (Math.Min(a, b) + 0.05);
    }

    /// <summary>0 for black, 1 for white.</summary>
    public static double Luminance((byte Red, byte Green, byte Blue) colour) =>
        (0.2126 * Linear(colour.Red)) + (0.7152 * Linear(colour.Green)) + (0.0722 * Linear(colour.Blue));

    private static double Linear(byte value)
    {
        var share = value / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.Pow((share + 0.055) / 1.055, 2.4);
    }
}
