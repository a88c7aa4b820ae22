using System.Numerics;
using MathNet.Numerics.IntegralTransforms;

namespace WireText.Tests.Listening;

/// <summary>What is in finished samples, by the transform of another library.</summary>
internal sealed class Spectrum
{
    private readonly Complex[] bins;
    private readonly double step;

    private Spectrum(Complex[] bins, double step) => (this.bins, this.step) = (bins, step);

    /// <summary>As it is, with zeros behind.</summary>
    /// <param name="size">Points of the transform.</param>
    public static Spectrum Of(ReadOnlySpan<double> samples, int rate, int size) => Of(samples, rate, size, _ => 1);

    /// <summary>Through a window of four cosine terms (Blackman and Harris), whose side lobes lie 92 dB down (Harris, Proceedings of the IEEE 66(1), 1978).</summary>
    public static Spectrum Windowed(ReadOnlySpan<double> samples, int rate, int size)
    {
        var length = samples.Length;
        return Of(samples, rate, size, i => Window((double)i / length));
    }

    public static double Window(double t) =>
        0.35875
        - (0.48829 * Math.Cos(2 * Math.PI * t))
        + (0.14128 * Math.Cos(4 * Math.PI * t))
        - (0.01168 * Math.Cos(6 * Math.PI * t));

    private static Spectrum Of(ReadOnlySpan<double> samples, int rate, int size, Func<int, double> window)
    {
        var points = new Complex[size];
        for (var i = 0; i < samples.Length; i++)
        {
            points[i] = samples[i] * window(i);
        }

        Fourier.Forward(points, FourierOptions.AsymmetricScaling);
        return new Spectrum(points, (double)rate / size);
    }

    /// <summary>At the nearest bin.</summary>
    public Complex At(double hertz) => bins[(int)Math.Round(hertz / step)];

    /// <summary>Where it is strongest between two frequencies.</summary>
    public double PeakBetween(double low, double high)
    {
        var from = (int)Math.Ceiling(low / step);
        var to = (int)Math.Floor(high / step);
        return Enumerable.Range(from, to - from + 1).MaxBy(bin => bins[bin].Magnitude) * step;
    }

    /// <summary>The most between two frequencies.</summary>
    public double MostBetween(double low, double high)
    {
        var from = (int)Math.Ceiling(low / step);
        var to = (int)Math.Floor(high / step);
        return Enumerable.Range(from, to - from + 1).Max(bin => bins[bin].Magnitude);
    }

    /// <summary>What a sinusoid that dies away from the first sample on comes to in this window, at its own frequency and amplitude 1.</summary>
    public static double OfDying(double decay, int length, int rate)
    {
        var sum = 0.0;
        for (var i = 0; i < length; i++)
        {
            sum += Window((double)i / length) * Math.Exp(-decay * i / rate);
        }

        return sum / 2;
    }
}
