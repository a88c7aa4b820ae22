namespace WireText.Electrical.Sound;

/// <summary>What the magnetic field of the mains induces in a loop, and in a coil.</summary>
public static class StrayField
{
    /// <summary>A usual field in a room, in tesla (rms): the mean of a survey of 91 sites was about 0.1 µT.</summary>
    public const double UsualTesla = 0.1e-6;

    /// <summary>Turns of a usual single coil. Published: 7,000 to 10,000.</summary>
    public const double UsualCoilTurns = 8_000;

    /// <summary>
    /// The mean area of one of its turns in square metres: straight sides of 46 mm and a mean radius of 4.5 mm, so
    /// 46·9 mm² + π·4.5² mm².
    /// </summary>
    public const double UsualTurnSquareMetres = 477.6e-6;

    /// <summary>The voltage in volts (rms) with the plane square to the field and no iron inside: 2πf·B·A·N (Faraday).</summary>
    public static double InducedVolts(double hertz, double tesla, double squareMetres, double turns = 1) =>
        2 * Math.PI * hertz * tesla * squareMetres * turns;
}
