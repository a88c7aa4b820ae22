namespace WireText.Circuits;

/// <summary>Between what a value lies that nobody knows, in SI units.</summary>
/// <param name="Least">Above 0.</param>
/// <param name="Most">Not below <paramref name="Least"/>.</param>
public sealed record ValueDoubt(double Least, double Most)
{
    /// <summary>Values from end to end, each the same ratio above the one before.</summary>
    /// <param name="count">At least 2.</param>
    public IEnumerable<double> Spread(int count) =>
        Enumerable
            .Range(0, count)
            .Select(i =>
                i == count - 1 ? Most
                : i == 0 ? Least
                : Least * Math.Pow(Most / Least, (double)i / (count - 1))
            );
}
