using System.Globalization;

namespace WireText.Parts;

/// <summary>Plain numbers in a <c>define</c>: ratios, travels and shares, none of them with a unit.</summary>
internal static class DefinitionNumbers
{
    /// <summary>The full travel of a dial.</summary>
    private const double FullTravel = 10;

    public static bool TryNumber(string text, out double number) =>
        double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out number);

    public static bool TryTravel(string text, out double travel) =>
        TryNumber(text, out travel) && travel is >= 0 and <= FullTravel;

    /// <summary>A share of one, written in percent.</summary>
    public static bool TryPercent(string text, out double share)
    {
        share = 0;
        var isPercent = text.EndsWith('%') && TryNumber(text[..^1], out share) && share <= 100;
        share /= 100;
        return isPercent;
    }
}
