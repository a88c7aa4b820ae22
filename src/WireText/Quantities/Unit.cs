namespace WireText.Quantities;

/// <summary>What a value measures. Values are kept in SI units without prefixes.</summary>
public enum Unit
{
    Ohm,
    Farad,
    Henry,
    Volt,
    Ampere,
    Hertz,
    Metre,
}

public static class Units
{
    /// <summary>The letter or word after the prefix: <c>F</c>, <c>Hz</c>, <c>Ω</c>.</summary>
    public static string SymbolOf(Unit unit) =>
        unit switch
        {
            Unit.Ohm => "Ω",
            Unit.Farad => "F",
            Unit.Henry => "H",
            Unit.Volt => "V",
            Unit.Ampere => "A",
            Unit.Hertz => "Hz",
            _ => "m",
        };

    /// <summary>The plural in plain words: <c>ohms</c>, <c>farads</c>.</summary>
    public static string NameOf(Unit unit) =>
        unit switch
        {
            Unit.Ohm => "ohms",
            Unit.Farad => "farads",
            Unit.Henry => "henries",
            Unit.Volt => "volts",
            Unit.Ampere => "amperes",
            Unit.Hertz => "hertz",
            _ => "metres",
        };
}
