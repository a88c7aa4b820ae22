using System.Globalization;
using WireText.Quantities;

namespace WireText.Drawing.Charts;

/// <summary>Numbers as a chart writes them.</summary>
internal static class ChartText
{
    /// <summary><c>+4.6 dB</c>, <c>−0.3 dB</c>; the true minus sign, as wide as the plus.</summary>
    public static string Decibels(double value) =>
        Signed(value.ToString("+0.0;-0.0;0.0", CultureInfo.InvariantCulture)) + " dB";

    /// <summary>A level of the axis, without a unit: <c>+6</c>, <c>0</c>, <c>−12</c>.</summary>
    public static string Level(double value) => Signed(value.ToString("+0;-0;0", CultureInfo.InvariantCulture));

    /// <summary><c>3.99 kHz</c>.</summary>
    public static string Hertz(double value) => ValueText.Figure(value, Unit.Hertz);

    /// <summary>A frequency of the axis: <c>50</c>, <c>2k</c>.</summary>
    public static string Tick(double hertz) =>
        hertz < 1000
            ? hertz.ToString("0", CultureInfo.InvariantCulture)
            : (hertz / 1000).ToString("0", CultureInfo.InvariantCulture) + "k";

    private static string Signed(string number) => number.Replace('-', '−');
}
