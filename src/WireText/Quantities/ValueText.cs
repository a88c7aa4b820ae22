using System.Globalization;

namespace WireText.Quantities;

/// <summary>Writes values as the trade reads them.</summary>
public static class ValueText
{
    /// <summary>As a part is labelled: <c>250k</c>, <c>47n</c>, <c>4.7k</c>, <c>470R</c>, <c>2.2H</c>, <c>9V</c>.</summary>
    /// <param name="figures">Significant figures, trailing zeros dropped.</param>
    public static string Label(double value, Unit unit, int figures = 4)
    {
        if (unit == Unit.Ohm && Math.Abs(value) < 1)
        {
            return value.ToString("0.####", CultureInfo.InvariantCulture) + "R";
        }

        var (number, prefix) = Scale(value, figures, keepZeros: false);
        return number
            + (unit, prefix.Letter) switch
            {
                (Unit.Ohm, "") => "R",
                (Unit.Ohm or Unit.Farad, { Length: > 0 } letter) => letter,
                (_, var letter) => letter + Units.SymbolOf(unit),
            };
    }

    /// <summary>With a unit's symbol, for figures: <c>5.86 kΩ</c>, <c>3.99 kHz</c>.</summary>
    public static string Figure(double value, Unit unit, int figures = 3)
    {
        var (number, prefix) = Scale(value, figures, keepZeros: true);
        return $"{number} {(prefix.Letter == "u" ? "µ" : prefix.Letter)}{Units.SymbolOf(unit)}";
    }

    /// <summary>In plain words, for messages: <c>500 milliohms</c>, <c>47 nanofarads</c>, <c>1 megohm</c>.</summary>
    public static string InWords(double value, Unit unit)
    {
        var (number, prefix) = Scale(value, 4, keepZeros: false);
        var name = (prefix.Name, unit) switch
        {
            ("kilo", Unit.Ohm) => "kilohms",
            ("mega", Unit.Ohm) => "megohms",
            ("giga", Unit.Ohm) => "gigohms",
            _ => prefix.Name + Units.NameOf(unit),
        };
        return number == "1" ? $"1 {Singular(name, unit)}" : $"{number} {name}";
    }

    private static string Singular(string plural, Unit unit) =>
        unit switch
        {
            Unit.Hertz => plural,
            Unit.Henry => plural[..^3] + "y",
            _ => plural[..^1],
        };

    private static (string Number, SiPrefix Prefix) Scale(double value, int figures, bool keepZeros)
    {
        // Rounded first: 999.96 is 1.000 k to four figures.
        var scientific = value.ToString("E" + (figures - 1), CultureInfo.InvariantCulture).Split('E');
        var exponent = int.Parse(scientific[1], CultureInfo.InvariantCulture);
        var prefix =
            value == 0 ? SiPrefix.None : SiPrefix.All.LastOrDefault(p => p.Power <= exponent) ?? SiPrefix.All[0];
        var mantissa = decimal.Parse(scientific[0], CultureInfo.InvariantCulture);
        var shift = Math.Clamp(exponent - prefix.Power, -20, 20);
        var decimals = Math.Max(0, figures - 1 - shift);
        var number = decimal.Round(mantissa * PowerOfTen(shift), Math.Min(decimals, 28));
        var format = keepZeros ? "F" + decimals : "0.####################";
        return (number.ToString(format, CultureInfo.InvariantCulture), prefix);
    }

    private static decimal PowerOfTen(int power)
    {
        var result = 1m;
        for (var i = 0; i < Math.Abs(power); i++)
        {
            result = power > 0 ? result * 10 : result / 10;
        }

        return result;
    }
}
