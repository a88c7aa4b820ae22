namespace WireText.Listening;

/// <summary>Sends a recording through a circuit: every coil gets the same voltage, that of the recording.</summary>
/// <remarks>
/// The response is taken at evenly spaced frequencies, made a row of factors by a transform back, and the recording is convolved with
/// it block by block (overlap-add: Oppenheim and Schafer, Discrete-Time Signal Processing, chapter 8). It is cut after half of the
/// transform, which is more than half a second at every rate.
/// </remarks>
public sealed class RecordingFilter
{
    private const int Size = 1 << 17;

    /// <summary>Room for what comes before the pluck where a response is cut off at half of the rate, in samples.</summary>
    private const int Before = 2048;

    /// <summary>Where the response at 0 Hz is taken, as a share of the step from one frequency to the next.</summary>
    private const double NearNothing = 1e-3;

    private readonly Fft fft;
    private readonly double[] real;
    private readonly double[] imaginary;

    private RecordingFilter(Fft fft, double[] real, double[] imaginary) =>
        (this.fft, this.real, this.imaginary) = (fft, real, imaginary);

    /// <summary>The filter that a circuit is; null when its response cannot be computed.</summary>
    /// <param name="rate">Samples a second.</param>
    public static RecordingFilter? Of(CircuitEar ear, int rate)
    {
        var hertz = new double[(Size / 2) + 1];
        for (var i = 0; i < hertz.Length; i++)
        {
            hertz[i] = (i == 0 ? NearNothing : i) * rate / Size;
        }

        if (ear.TogetherAt(hertz) is not { } response)
        {
            return null;
        }

        var (real, imaginary) = (new double[Size], new double[Size]);
        for (var i = 0; i < hertz.Length; i++)
        {
            var (re, im) = (response[i].Real, i is 0 or Size / 2 ? 0 : response[i].Imaginary);
            (real[i], imaginary[i]) = (re, im);
            if (i is not (0 or Size / 2))
            {
                (real[Size - i], imaginary[Size - i]) = (re, -im);
            }
        }

        var transform = new Fft(Size);
        transform.Back(real, imaginary);
        Cut(real, imaginary);
        transform.Forward(real, imaginary);
        return new RecordingFilter(transform, real, imaginary);
    }

    /// <summary>The recording through the circuit, as long as it was.</summary>
    public double[] Through(ReadOnlySpan<double> recording, CancellationToken cancellation = default)
    {
        var samples = new double[recording.Length];
        var (re, im) = (new double[Size], new double[Size]);
        for (var start = 0; start < recording.Length; start += Size / 2)
        {
            cancellation.ThrowIfCancellationRequested();
            Array.Clear(re);
            Array.Clear(im);
            recording.Slice(start, Math.Min(Size / 2, recording.Length - start)).CopyTo(re);
            fft.Forward(re, im);
            for (var i = 0; i < Size; i++)
            {
                (re[i], im[i]) = (
                    (re[i] * real[i]) - (im[i] * imaginary[i]),
                    (re[i] * imaginary[i]) + (im[i] * real[i])
                );
            }

            fft.Back(re, im);
            for (var i = Math.Max(0, Before - start); i < Size && start + i - Before < samples.Length; i++)
            {
                samples[start + i - Before] += re[i];
            }
        }

        return samples;
    }

    /// <summary>Turned so that what comes before stands at the beginning, and cut where half of the transform is full.</summary>
    private static void Cut(double[] real, double[] imaginary)
    {
        var turned = new double[Size];
        for (var i = 0; i < Size / 2; i++)
        {
            turned[i] = real[(i - Before + Size) % Size];
        }

        turned.CopyTo(real, 0);
        Array.Clear(imaginary);
    }
}
