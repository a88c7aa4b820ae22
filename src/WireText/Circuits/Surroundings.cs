namespace WireText.Circuits;

/// <summary>What the instrument is used with and where: the cable and the input on its jack, the mains, the day.</summary>
/// <param name="CableFarads">The capacitance of the cable.</param>
/// <param name="InputOhms">The resistance of the amplifier's input.</param>
/// <param name="MainsHertz">The frequency of the hum.</param>
/// <param name="CoolestCelsius">The lowest temperature of the windings that the ohmmeter may meet.</param>
/// <param name="WarmestCelsius">The highest.</param>
public sealed record Surroundings(
    double CableFarads,
    double InputOhms,
    double MainsHertz,
    double CoolestCelsius,
    double WarmestCelsius
)
{
    /// <summary>
    /// Taken when the text does not say: 4.7 m of cable at 100 pF/m, an input of 1 MΩ (common practice), 50 Hz, 20 °C.
    /// </summary>
    public static readonly Surroundings Usual = new(470e-12, 1e6, 50, 20, 20);

    /// <summary>The length of an open string from nut to bridge, in metres; null when the text does not say.</summary>
    public double? ScaleMetres { get; init; }

    /// <summary>Which strings are on it; null when the text does not say.</summary>
    public StringSet? Strings { get; init; }
}
