using System.Globalization;

namespace WireText.Drawing.Faces;

/// <summary>The three figures printed on small capacitors: two digits of the value in picofarads, then how many zeros follow (IEC 60062).</summary>
public static class CapacitorMark
{
    private const double PicofaradsPerFarad = 1e12;

    /// <summary>The mark, or null for a value that three figures cannot say.</summary>
    public static string? Of(double farads)
    {
        var picofarads = farads * PicofaradsPerFarad;
        if (!(picofarads >= 10) || picofarads > 99.5e7)
        {
            return null;
        }

        var zeros = 0;
        while (picofarads >= 99.5)
        {
            picofarads /= 10;
            zeros++;
        }

        var figures = Math.Round(picofarads);
        return Math.Abs(figures - picofarads) < 1e-6 * picofarads
            ? string.Create(CultureInfo.InvariantCulture, $"{figures:F0}{zeros}")
            : null;
    }
}
