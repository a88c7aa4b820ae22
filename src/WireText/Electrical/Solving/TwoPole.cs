namespace WireText.Electrical.Solving;

/// <summary>
/// What lies between two nodes: a resistance and an inductance in series, with a capacitance and a conductance across
/// both. Every part's inside is one or two of these. SI units.
/// </summary>
/// <param name="From">The minus node: a coil's start.</param>
/// <param name="To">The plus node: a coil's finish.</param>
/// <param name="Ohms">Infinite when nothing but the capacitance and the conductance joins the nodes.</param>
/// <param name="EddyOhms">A loss across the inductance alone; infinite for none.</param>
/// <param name="Farads">Across both; 0 for none.</param>
/// <param name="Siemens">Across both, for signals only: a meter does not see it; 0 for none.</param>
public readonly record struct TwoPole(
    int From,
    int To,
    double Ohms,
    double Henries,
    double EddyOhms,
    double Farads,
    double Siemens
)
{
    public static TwoPole Resistance(int from, int to, double ohms) =>
        new(from, to, ohms, 0, double.PositiveInfinity, 0, 0);

    public static TwoPole Capacitance(int from, int to, double farads) =>
        new(from, to, double.PositiveInfinity, 0, double.PositiveInfinity, farads, 0);

    public static TwoPole Winding(int from, int to, double ohms, double henries) =>
        new(from, to, ohms, henries, double.PositiveInfinity, 0, 0);

    /// <summary>True when a direct current can flow.</summary>
    public bool ConductsDirectCurrent => double.IsFinite(Ohms);
}
