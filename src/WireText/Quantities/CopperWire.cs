namespace WireText.Quantities;

/// <summary>Round copper wire by its gauge.</summary>
public static class CopperWire
{
    /// <summary>Resistivity of annealed copper at 20 °C in ohm metres. Source: IEC 60028:1925, 1/58 Ω·mm²/m.</summary>
    public const double ResistivityOhmMetres = 1.0 / 58e6;

    /// <summary>Change of resistance with temperature, per kelvin, referred to 20 °C. Source: IEC 60028:1925.</summary>
    public const double TemperatureCoefficient = 0.00393;

    /// <summary>The exact diameter of an American wire gauge in metres: 0.127 mm × 92^((36 − n)/39). Source: ASTM B258.</summary>
    /// <remarks>Magnet-wire tables round it to 0.1 mil, up to 3 % in resistance away.</remarks>
    public static double DiameterMetres(double gauge) => 0.127e-3 * Math.Pow(92, (36 - gauge) / 39);

    /// <summary>Resistance per metre at 20 °C, in ohms.</summary>
    public static double OhmsPerMetre(double gauge)
    {
        var diameter = DiameterMetres(gauge);
        return ResistivityOhmMetres / (Math.PI * diameter * diameter / 4);
    }

    /// <summary>The resistance of a coil at 20 °C in ohms, from its turns, gauge and the mean length of a turn in metres.</summary>
    public static double CoilOhms(double turns, double gauge, double turnMetres) =>
        turns * turnMetres * OhmsPerMetre(gauge);
}
