namespace WireText.Electrical.Sound;

/// <summary>Ratios of voltages in decibels.</summary>
public static class Decibels
{
    /// <summary>The lowest level that is told: nothing lies below.</summary>
    public const double Floor = -120;

    /// <summary>20·log10 of a voltage ratio, at least <see cref="Floor"/>.</summary>
    public static double Of(double ratio) => ratio > 1e-6 ? 20 * Math.Log10(ratio) : Floor;

    /// <summary>The voltage ratio of a level.</summary>
    public static double ToRatio(double decibels) => Math.Pow(10, decibels / 20);
}
