using System.Collections.Immutable;

namespace WireText.Electrical.Sound;

/// <summary>The highest peak of a response.</summary>
/// <param name="Decibels">Its level over the EMF of one coil.</param>
/// <param name="HeightDecibels">Its level over that at 100 Hz.</param>
public sealed record Resonance(double Hertz, double Decibels, double HeightDecibels)
{
    /// <summary>The lowest note of a guitar is 82 Hz: below it no peak is heard.</summary>
    private const double LowestHertz = 80;

    /// <summary>The end of hearing.</summary>
    private const double HighestHertz = 20e3;

    /// <summary>Half a semitone apart; where the peak lies is found between them. Chosen.</summary>
    private const int PointsPerOctave = 24;

    /// <summary>How far a peak must stand above the lowest point below it, in dB. Chosen.</summary>
    private const double LeastRise = 0.05;

    /// <summary>How closely a peak is found, relative to its frequency. Chosen.</summary>
    private const double Precision = 1e-4;

    /// <summary>Where the height of a peak is counted from: below every resonance of a pickup, above the loss of a coupling capacitor. Chosen.</summary>
    private const double ReferenceHertz = 100;

    private static readonly ImmutableArray<double> Grid = MakeGrid();

    /// <summary>The highest peak between 80 Hz and 20 kHz; null when there is none, or no response.</summary>
    public static Resonance? Find(StringResponse response)
    {
        double[] hertz = [.. Grid, ReferenceHertz];
        if (response.DecibelsAt(hertz) is not { } levels)
        {
            return null;
        }

        var (best, bestLevel) = (0.0, double.NegativeInfinity);
        foreach (var top in Peaks(levels.AsSpan(0, Grid.Length)))
        {
            var (peak, level) = Refine(response, Grid[top - 1], Grid[top + 1]);
            if (level > bestLevel)
            {
                (best, bestLevel) = (peak, level);
            }
        }

        return best > 0 ? new Resonance(best, bestLevel, bestLevel - levels[^1]) : null;
    }

    private static ImmutableArray<double> MakeGrid()
    {
        var grid = ImmutableArray.CreateBuilder<double>();
        for (var i = 0; ; i++)
        {
            var hertz = LowestHertz * Math.Pow(2, (double)i / PointsPerOctave);
            if (hertz > HighestHertz)
            {
                return grid.ToImmutable();
            }

            grid.Add(hertz);
        }
    }

    private static List<int> Peaks(ReadOnlySpan<double> levels)
    {
        var peaks = new List<int>();
        var lowest = levels[0];
        for (var i = 1; i < levels.Length - 1; i++)
        {
            if (levels[i] >= levels[i - 1] && levels[i] > levels[i + 1] && levels[i] >= lowest + LeastRise)
            {
                peaks.Add(i);
            }

            lowest = Math.Min(lowest, levels[i]);
        }

        return peaks;
    }

    /// <summary>
    /// Of four points between two, evenly apart on a logarithmic axis, the highest and its neighbours hold the peak: two fifths are left.
    /// Four, because as many frequencies are solved side by side at the price of one.
    /// </summary>
    private static (double Hertz, double Decibels) Refine(StringResponse response, double low, double high)
    {
        const int Inside = 4;
        var (a, b) = (Math.Log(low), Math.Log(high));
        Span<double> hertz = stackalloc double[Inside];
        while (true)
        {
            var step = (b - a) / (Inside + 1);
            for (var i = 0; i < Inside; i++)
            {
                hertz[i] = Math.Exp(a + ((i + 1) * step));
            }

            if (response.DecibelsAt(hertz) is not { } levels)
            {
                return (Math.Exp((a + b) / 2), double.NegativeInfinity);
            }

            var best = 0;
            for (var i = 1; i < Inside; i++)
            {
                best = levels[i] > levels[best] ? i : best;
            }

            if (2 * step <= Precision)
            {
                return (hertz[best], levels[best]);
            }

            (a, b) = (a + (best * step), a + ((best + 2) * step));
        }
    }
}
