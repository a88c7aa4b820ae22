namespace WireText.Quantities;

/// <summary>What a value is for: its unit, what is usual there, and what is nonsense.</summary>
/// <remarks>The limits only tell nonsense from sense: they lie a decade or more outside of what is sold (assumed, no standard).</remarks>
/// <param name="What">With an article, as in "a pot": for messages.</param>
/// <param name="Least">The smallest value that can be meant.</param>
/// <param name="Most">The largest value that can be meant.</param>
/// <param name="Usual">A value worth showing as an example.</param>
/// <param name="Letters">The letters that a bare number may lack.</param>
public sealed record ValueUse(string What, Unit Unit, double Least, double Most, string Usual, string Letters)
{
    /// <summary>Written in place of a value that nobody knows.</summary>
    public const string Unknown = "?";

    public static readonly ValueUse Pot = new("a pot", Unit.Ohm, 100, 20e6, "250k", "kM")
    {
        WhenUnknown = (25e3, 250e3, 1e6),
    };
    public static readonly ValueUse Resistor = new("a resistor", Unit.Ohm, 1e-3, 1e9, "4.7k", "RkM")
    {
        WhenUnknown = (1e3, 47e3, 2.2e6),
    };
    public static readonly ValueUse Capacitor = new("a capacitor", Unit.Farad, 0.1e-12, 0.1, "47n", "pnu")
    {
        WhenUnknown = (100e-12, 22e-9, 1e-6),
    };
    public static readonly ValueUse Inductor = new("an inductor", Unit.Henry, 1e-6, 1000, "1.5H", "mH")
    {
        WhenUnknown = (0.2, 1.5, 10),
    };
    public static readonly ValueUse Battery = new("a battery", Unit.Volt, 0.5, 60, "9V", "V");
    public static readonly ValueUse CoilResistance = new("a coil's resistance", Unit.Ohm, 1, 1e6, "6k", "Rk");
    public static readonly ValueUse CoilInductance = new("a coil's inductance", Unit.Henry, 1e-3, 1e3, "2.5H", "mH");
    public static readonly ValueUse CoilCapacitance = new(
        "a coil's capacitance",
        Unit.Farad,
        0.1e-12,
        1e-6,
        "110p",
        "pn"
    );
    public static readonly ValueUse EddyLoss = new("a coil's eddy loss", Unit.Ohm, 1e3, 1e12, "1M", "kM");
    public static readonly ValueUse InductorResistance = new(
        "an inductor's resistance",
        Unit.Ohm,
        1e-3,
        1e6,
        "100R",
        "Rk"
    );
    public static readonly ValueUse TurnLength = new("the length of a turn", Unit.Metre, 1e-3, 1, "152mm", "m");
    public static readonly ValueUse StringPlace = new("a place under the strings", Unit.Metre, 1e-3, 2, "162mm", "m");
    public static readonly ValueUse Aperture = new("the aperture of a coil", Unit.Metre, 1e-4, 0.1, "15mm", "m");
    public static readonly ValueUse ScaleLength = new("a scale length", Unit.Metre, 0.1, 2, "648mm", "m");
    public static readonly ValueUse WireLength = new("the length of a wire", Unit.Metre, 1e-3, 100, "120mm", "m");
    public static readonly ValueUse AmplifierInput = new("an amplifier's input", Unit.Ohm, 1, 1e12, "1M", "kM");
    public static readonly ValueUse AmplifierOutput = new("an amplifier's output", Unit.Ohm, 1e-3, 1e6, "470R", "Rk");
    public static readonly ValueUse SupplyCurrent = new("a supply current", Unit.Ampere, 1e-9, 1, "0.5mA", "mu");
    public static readonly ValueUse CableCapacitance = new("a cable", Unit.Farad, 1e-12, 1e-6, "470p", "pn");
    public static readonly ValueUse MeterReading = new("a reading", Unit.Ohm, 0, 1e9, "6.2k", "RkM");
    public static readonly ValueUse Resonance = new("a resonance", Unit.Hertz, 1, 1e6, "3.4kHz", "k");
    public static readonly ValueUse Frequency = new("a frequency", Unit.Hertz, 1, 1e6, "5kHz", "k");

    /// <summary>
    /// The least, the usual and the most that is built into instruments: what a value is taken for that nobody knows. Null where a
    /// value must be known. From memory; no standard.
    /// </summary>
    public (double Least, double Usual, double Most)? WhenUnknown { get; private init; }
}
