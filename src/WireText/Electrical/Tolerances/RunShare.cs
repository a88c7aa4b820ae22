namespace WireText.Electrical.Tolerances;

/// <summary>How many instruments of a run something is true of, as a share of them, with the error of saying so from a sample.</summary>
/// <param name="Share">Of those that were drawn, 0 to 1.</param>
/// <param name="Low">The lowest share that the whole may have.</param>
/// <param name="High">The highest.</param>
/// <param name="Count">Instruments that were drawn; 0 where the ends of the tolerances alone decide.</param>
public readonly record struct RunShare(double Share, double Low, double High, int Count)
{
    /// <summary>
    /// How many standard deviations the error covers: outside of it lies one sample in 10,000. Chosen; the normal distribution's
    /// two-sided 99.99 %.
    /// </summary>
    public const double Deviations = 3.89;

    public static readonly RunShare All = new(1, 1, 1, 0);

    public static readonly RunShare None = new(0, 0, 0, 0);

    /// <summary>The score interval of Wilson, "Probable inference, the law of succession, and statistical inference", Journal of the American Statistical Association 22, 1927.</summary>
    /// <param name="hits">Instruments that it is true of.</param>
    /// <param name="count">All that were drawn, at least one.</param>
    public static RunShare Of(int hits, int count)
    {
        var (share, square) = ((double)hits / count, Deviations * Deviations);
        var middle = (share + (square / (2 * count))) / (1 + (square / count));
        var half =
            Deviations
            * Math.Sqrt((share * (1 - share) / count) + (square / (4.0 * count * count)))
            / (1 + (square / count));
        return new RunShare(share, Math.Max(0, middle - half), Math.Min(1, middle + half), count);
    }
}
