using System.Globalization;

namespace WireText.Quantities;

/// <summary>The marking of IEC 60062: two figures and a power of ten, in picofarads on a capacitor and in ohms on a resistor.</summary>
/// <remarks>A third figure 8 means × 0.01 and 9 means × 0.1. Two figures alone are picofarads. A tolerance letter may follow.</remarks>
public static class MarkingCode
{
    private const string ToleranceLetters = "BCDFGHJKMNPQSTYZWLE";

    /// <summary>The value of a code in farads or ohms, or null when it is none.</summary>
    public static double? Read(string code, Unit unit)
    {
        var figures = EndsWithTolerance(code) ? code[..^1] : code;
        var isComplete = figures.Length == 3 || (figures.Length == 2 && unit == Unit.Farad);
        if (!isComplete || !figures.All(char.IsAsciiDigit))
        {
            return null;
        }

        var power =
            figures.Length == 2 ? 0
            : figures[2] is '8' or '9' ? figures[2] - '9' - 1
            : figures[2] - '0';
        var exponent = power - (unit == Unit.Farad ? 12 : 0);
        return double.Parse(
            string.Create(CultureInfo.InvariantCulture, $"{figures[..2]}e{exponent}"),
            CultureInfo.InvariantCulture
        );
    }

    /// <summary>The code printed on a capacitor of that value; null when two figures cannot say it.</summary>
    public static string? OfCapacitor(double farads) => Of(farads * 1e12);

    /// <summary>The code printed on a resistor of that value; null when two figures cannot say it.</summary>
    public static string? OfResistor(double ohms) => Of(ohms);

    private static string? Of(double value)
    {
        for (var power = 0; power <= 7; power++)
        {
            var figures = value / Math.Pow(10, power);
            var whole = Math.Round(figures);
            if (whole is >= 10 and <= 99 && Math.Abs(figures - whole) < 1e-6)
            {
                return string.Create(CultureInfo.InvariantCulture, $"{whole}{power}");
            }
        }

        return null;
    }

    private static bool EndsWithTolerance(string code) =>
        code.Length > 2 && ToleranceLetters.Contains(char.ToUpperInvariant(code[^1]), StringComparison.Ordinal);
}
