namespace WireText.Electrical.Tolerances;

/// <summary>Percentiles of what was met.</summary>
public static class Percentile
{
    /// <summary>
    /// Between the two values nearest to the rank 1 + (n − 1)·p, in proportion: definition 7 of Hyndman and Fan, "Sample
    /// quantiles in statistical packages", The American Statistician 50, 1996.
    /// </summary>
    /// <param name="sorted">At least one, from the lowest on.</param>
    /// <param name="percent">0 to 100.</param>
    public static double Of(ReadOnlySpan<double> sorted, double percent)
    {
        var rank = (sorted.Length - 1) * percent / 100;
        var below = (int)Math.Floor(rank);
        var above = Math.Min(below + 1, sorted.Length - 1);
        return sorted[below] + ((rank - below) * (sorted[above] - sorted[below]));
    }
}
