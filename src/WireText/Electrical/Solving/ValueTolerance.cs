using WireText.Circuits;

namespace WireText.Electrical.Solving;

/// <summary>
/// How far values may be off, as a fraction of them, each a limit: what the text says, else what is usual. The one place that knows.
/// </summary>
public static class ValueTolerance
{
    /// <summary>How far the inductance of a coil may be off when nothing is said (assumed, from memory; not measured).</summary>
    public const double CoilInductance = 0.05;

    /// <summary>
    /// How far the capacitance of a winding may be off when nothing is said: it lies in how the wire was scattered (assumed, from
    /// memory; not measured).
    /// </summary>
    public const double CoilCapacitance = 0.10;

    /// <summary>How far a capacitor may be off when nothing is said: ±10 %, letter K of IEC 60062, is usual for film (common practice).</summary>
    public const double Capacitor = 0.10;

    /// <summary>How far a choke's inductance may be off when nothing is said: ±10 %, letter K of IEC 60062 (common practice).</summary>
    public const double Inductor = 0.10;

    /// <summary>Of a resistance to direct current; 0 for what has none.</summary>
    public static double OfOhms(Element element) =>
        element switch
        {
            Coil or Circuits.Inductor => element.Tolerance ?? Ohmmeter.CoilTolerance,
            Track => element.Tolerance ?? Ohmmeter.PotTolerance,
            Resistor => element.Tolerance ?? Ohmmeter.ResistorTolerance,
            _ => 0,
        };

    /// <summary>Of an inductance; 0 for what has none.</summary>
    public static double OfHenries(Element element) =>
        element switch
        {
            Coil => element.Tolerance ?? CoilInductance,
            Circuits.Inductor => element.Tolerance ?? Inductor,
            _ => 0,
        };

    /// <summary>Of a capacitance; 0 for what has none.</summary>
    public static double OfFarads(Element element) =>
        element switch
        {
            Coil => element.Tolerance ?? CoilCapacitance,
            Circuits.Capacitor => element.Tolerance ?? Capacitor,
            _ => 0,
        };
}
