namespace WireText.Listening;

/// <summary>
/// Sine, cosine and the exponential from additions and multiplications alone: those of a machine's own library may differ in
/// the last bit from the next machine's.
/// </summary>
/// <remarks>Series of Taylor, cut where a term no longer moves a double of this size: held to 1e-15 by a test.</remarks>
public static class PortableMath
{
    private const int Terms = 18;

    /// <summary>The natural logarithm of 2, to a double.</summary>
    private const double LogOfTwo = 0.693147180559945309;

    private const double LogOfTen = 2.302585092994045684;

    /// <summary>Cosine and sine of an angle in whole turns: 1 is 2π.</summary>
    /// <param name="turns">Any finite number; far from 0 its own last digit is what limits the answer.</param>
    public static (double Cosine, double Sine) Turn(double turns)
    {
        var rest = turns - Math.Round(turns);
        var quarter = (int)Math.Round(4 * rest);
        var angle = 2 * Math.PI * (rest - (quarter / 4.0));
        var (cosine, sine, term) = (1.0, angle, angle);
        for (var n = 2; n <= Terms; n += 2)
        {
            cosine += n % 4 == 2 ? -(term * angle / n) : term * angle / n;
            term *= angle * angle / (n * (n + 1));
            sine += n % 4 == 2 ? -term : term;
        }

        return (quarter & 3) switch
        {
            0 => (cosine, sine),
            1 => (-sine, cosine),
            2 => (-cosine, -sine),
            _ => (sine, -cosine),
        };
    }

    /// <summary>e to a power from −700 to 700.</summary>
    public static double Exp(double power)
    {
        var doublings = (int)Math.Round(power / LogOfTwo);
        var rest = power - (doublings * LogOfTwo);
        var (sum, term) = (1.0, 1.0);
        for (var n = 1; n <= Terms; n++)
        {
            term *= rest / n;
            sum += term;
        }

        return Math.ScaleB(sum, doublings);
    }

    /// <summary>The ratio of two amplitudes that are so many decibels apart.</summary>
    public static double RatioOf(double decibels) => Exp(decibels / 20 * LogOfTen);
}
