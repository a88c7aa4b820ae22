namespace WireText.Listening;

/// <summary>The discrete Fourier transform of a power of two of points, in place, the same bits on every machine.</summary>
/// <remarks>Decimation in time with radix 2 (Cooley and Tukey, Mathematics of Computation 19, 1965). Forward is exp(−j…), without a factor; back divides by the count.</remarks>
public sealed class Fft
{
    private readonly double[] cosines;
    private readonly double[] sines;

    /// <param name="size">A power of two.</param>
    public Fft(int size)
    {
        Size = size;
        cosines = new double[size / 2];
        sines = new double[size / 2];
        for (var i = 0; i < size / 2; i++)
        {
            (cosines[i], sines[i]) = PortableMath.Turn((double)i / size);
        }
    }

    public int Size { get; }

    public void Forward(Span<double> real, Span<double> imaginary)
    {
        Reorder(real);
        Reorder(imaginary);
        for (var half = 1; half < Size; half *= 2)
        {
            var stride = Size / (2 * half);
            for (var start = 0; start < Size; start += 2 * half)
            {
                for (var k = 0; k < half; k++)
                {
                    var (low, high) = (start + k, start + k + half);
                    var (c, s) = (cosines[k * stride], -sines[k * stride]);
                    var re = (real[high] * c) - (imaginary[high] * s);
                    var im = (real[high] * s) + (imaginary[high] * c);
                    (real[high], imaginary[high]) = (real[low] - re, imaginary[low] - im);
                    real[low] += re;
                    imaginary[low] += im;
                }
            }
        }
    }

    public void Back(Span<double> real, Span<double> imaginary)
    {
        // The transform with both parts exchanged is the transform back.
        Forward(imaginary, real);
        for (var i = 0; i < Size; i++)
        {
            real[i] /= Size;
            imaginary[i] /= Size;
        }
    }

    private void Reorder(Span<double> values)
    {
        var mirrored = 0;
        for (var i = 0; i < Size - 1; i++)
        {
            if (i < mirrored)
            {
                (values[i], values[mirrored]) = (values[mirrored], values[i]);
            }

            var bit = Size / 2;
            while ((mirrored & bit) != 0)
            {
                mirrored ^= bit;
                bit /= 2;
            }

            mirrored |= bit;
        }
    }
}
