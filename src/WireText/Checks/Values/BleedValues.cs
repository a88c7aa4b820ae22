namespace WireText.Checks.Values;

/// <summary>What a capacitor on a volume is taken for a treble bleed by.</summary>
internal static class BleedValues
{
    /// <summary>The least capacitance, in farads. Chosen: half of the 680 pF that is usual.</summary>
    private const double LeastFarads = 330e-12;

    /// <summary>The most, in farads. Chosen: 2 nF is usual, and tone capacitors begin at 10 nF.</summary>
    private const double MostFarads = 3.3e-9;

    public static bool Holds(double farads) => farads is >= LeastFarads and <= MostFarads;
}
