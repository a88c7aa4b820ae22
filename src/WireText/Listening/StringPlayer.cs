using System.Collections.Immutable;
using System.Numerics;

namespace WireText.Listening;

/// <summary>Plays a phrase through a circuit: each partial of each string is one sinusoid, and what coils and circuit do to it is one complex factor.</summary>
/// <remarks>
/// The answer of a linear circuit to a sinusoid is exact so; to one that dies away, and at the moment of the pluck, it is the
/// answer to the sinusoid alone. σ/ω is below 0.5 % for every partial, and what is left out ends with the resonance, within a few
/// milliseconds.
/// </remarks>
public static class StringPlayer
{
    /// <summary>How a note fades in, so that it begins without a click. Chosen.</summary>
    private const int AttackMilliseconds = 1;

    /// <summary>How a string is damped. Chosen.</summary>
    private const int ReleaseMilliseconds = 40;

    /// <summary>A partial ends where it is this much below the strongest: half a step of 24 bits.</summary>
    private const double Floor = 1.0 / (1 << 24);

    /// <summary>The phrase as the jack hears it, in volts for 1 V of velocity; null when it cannot be computed.</summary>
    /// <param name="spots">Where each coil listens.</param>
    /// <param name="rate">Samples a second.</param>
    public static double[]? Play(
        Phrase phrase,
        CircuitEar ear,
        ImmutableArray<CoilSpot> spots,
        int rate,
        CancellationToken cancellation = default
    )
    {
        var partials = PartialsOf(phrase, rate);
        if (ear.CoilsAt([.. partials.Select(partial => partial.Hertz)]) is not { } answers)
        {
            return null;
        }

        var heard = partials.Select((partial, place) => Heard(partial, place, answers, spots)).ToArray();
        var floor =
            Floor * heard.Select(one => Math.Max(Math.Abs(one.Real), Math.Abs(one.Imaginary))).DefaultIfEmpty(0).Max();
        var samples = new double[Samples(phrase.Milliseconds, rate)];
        var scratch = new double[DyingSine.RoomFor(phrase.Notes.Max(note => Samples(note.End - note.Start, rate)))];
        var next = 0;
        foreach (var note in phrase.Notes)
        {
            cancellation.ThrowIfCancellationRequested();
            var length = Samples(note.End, rate) - Samples(note.Start, rate);
            var room = scratch.AsSpan(0, DyingSine.RoomFor(length));
            room.Clear();
            for (; next < partials.Length && partials[next].Note == note; next++)
            {
                DyingSine.Add(
                    room,
                    heard[next],
                    partials[next].Hertz / rate,
                    PluckedString.DecayOf(partials[next].Hertz) / rate,
                    floor
                );
            }

            Shape(room[..length], rate);
            var at = samples.AsSpan(Samples(note.Start, rate), length);
            for (var i = 0; i < length; i++)
            {
                at[i] += room[i];
            }
        }

        return samples;
    }

    /// <summary>How many samples a time has, the last begun one left out.</summary>
    public static int Samples(int milliseconds, int rate) => (int)((long)milliseconds * rate / 1000);

    private static Partial[] PartialsOf(Phrase phrase, int rate) =>
        [
            .. from note in phrase.Notes
            from n in Enumerable.Range(1, note.String.CountBelow(rate))
            select new Partial(note, n, n * note.String.Hertz),
        ];

    /// <summary>What comes of a partial at the jack: over all coils what each hears of it, times the way from there.</summary>
    private static Complex Heard(
        Partial partial,
        int place,
        ImmutableArray<CoilAnswer> answers,
        ImmutableArray<CoilSpot> spots
    )
    {
        var (real, imaginary) = (0.0, 0.0);
        foreach (var answer in answers)
        {
            var spot = spots.First(one => one.Coil.Index == answer.Coil.Index);
            var share = partial.Note.String.HeardAt(partial.Number, spot.Metres, spot.ApertureMetres);
            real += share * answer.Gains[place].Real;
            imaginary += share * answer.Gains[place].Imaginary;
        }

        var velocity = partial.Note.String.Velocity(partial.Number);
        return new Complex(velocity * real, velocity * imaginary);
    }

    /// <summary>Fades a note in and out by half a period of a cosine.</summary>
    private static void Shape(Span<double> note, int rate)
    {
        var (attack, release) = (Samples(AttackMilliseconds, rate), Samples(ReleaseMilliseconds, rate));
        for (var i = 0; i < attack && i < note.Length; i++)
        {
            note[i] *= Rise(i, attack);
        }

        for (var i = 0; i < release && i < note.Length; i++)
        {
            note[^(i + 1)] *= Rise(i, release);
        }
    }

    /// <summary>From 0 at the first of so many samples to 1 behind the last.</summary>
    private static double Rise(int sample, int of) => (1 - PortableMath.Turn(sample / (2.0 * of)).Cosine) / 2;

    private sealed record Partial(Note Note, int Number, double Hertz);
}
