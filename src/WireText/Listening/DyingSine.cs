using System.Numerics;
using System.Runtime.Intrinsics;
using Lanes = System.Runtime.Intrinsics.Vector256<double>;

namespace WireText.Listening;

/// <summary>A sinusoid that dies away, from one multiplication a sample: z ← z·exp(−σ + jω).</summary>
/// <remarks>Eight samples side by side, each lane eight further in a step. The order of every addition is fixed, so that every machine adds the same.</remarks>
internal static class DyingSine
{
    private const int Side = 8;

    /// <summary>After how many samples it is asked whether anything is left.</summary>
    private const int Block = 1024;

    /// <summary>Adds the imaginary part of amplitude·exp((−σ + jω)t) to samples, as long as it is above a floor.</summary>
    /// <param name="into">A whole number of times eight samples.</param>
    /// <param name="turns">Turns a sample: the frequency over the rate.</param>
    /// <param name="decay">σ over the rate.</param>
    /// <param name="floor">Below this amplitude nothing is added.</param>
    public static void Add(Span<double> into, Complex amplitude, double turns, double decay, double floor)
    {
        Span<double> real = stackalloc double[Side];
        Span<double> imaginary = stackalloc double[Side];
        for (var k = 0; k < Side; k++)
        {
            (real[k], imaginary[k]) = Times(amplitude, Power(turns, decay, k));
        }

        var (stepReal, stepImaginary) = Power(turns, decay, Side) is var step
            ? (Vector256.Create(step.Real), Vector256.Create(step.Imaginary))
            : default;
        var (lowReal, lowImaginary) = (LanesOf(real, 0), LanesOf(imaginary, 0));
        var (highReal, highImaginary) = (LanesOf(real, 1), LanesOf(imaginary, 1));
        for (var block = 0; block < into.Length; block += Block)
        {
            if (SizeOf(lowReal[0], lowImaginary[0]) < floor * floor)
            {
                return;
            }

            var end = Math.Min(into.Length, block + Block);
            for (var at = block; at < end; at += Side)
            {
                var low = into.Slice(at, Lanes.Count);
                var high = into.Slice(at + Lanes.Count, Lanes.Count);
                (Vector256.Create<double>(low) + lowImaginary).CopyTo(low);
                (Vector256.Create<double>(high) + highImaginary).CopyTo(high);
                (lowReal, lowImaginary) = (
                    (lowReal * stepReal) - (lowImaginary * stepImaginary),
                    (lowReal * stepImaginary) + (lowImaginary * stepReal)
                );
                (highReal, highImaginary) = (
                    (highReal * stepReal) - (highImaginary * stepImaginary),
                    (highReal * stepImaginary) + (highImaginary * stepReal)
                );
            }
        }
    }

    /// <summary>The least length that has room for so many samples.</summary>
    public static int RoomFor(int samples) => (samples + Side - 1) / Side * Side;

    private static Complex Power(double turns, double decay, int samples)
    {
        var (cosine, sine) = PortableMath.Turn(turns * samples);
        var size = PortableMath.Exp(-decay * samples);
        return new Complex(size * cosine, size * sine);
    }

    private static (double Real, double Imaginary) Times(Complex a, Complex b) =>
        ((a.Real * b.Real) - (a.Imaginary * b.Imaginary), (a.Real * b.Imaginary) + (a.Imaginary * b.Real));

    private static double SizeOf(double real, double imaginary) => (real * real) + (imaginary * imaginary);

    private static Lanes LanesOf(ReadOnlySpan<double> values, int half) =>
        Vector256.Create(values.Slice(half * Lanes.Count, Lanes.Count));
}
