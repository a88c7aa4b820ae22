using System.Collections.Immutable;
using WireText.Electrical.Responses;
using WireText.Electrical.Sound;
using WireText.Electrical.Studies;

namespace WireText.Listening;

/// <summary>What is listened to: states of a circuit one after another, each with other values or as it is wired.</summary>
/// <param name="Study">The response in the same states: its labels and its assumptions are those of the sound.</param>
/// <param name="Wirings">For each of its curves the study of the circuit that it is about.</param>
public sealed record HeardSequence(ResponseStudy Study, ImmutableArray<Study> Wirings)
{
    /// <summary>Samples of one sound: 250 s at 48 kHz. Chosen: with its file it is 150 MB at most.</summary>
    public const int MostSamples = 12_000_000;

    /// <summary>Silence between one passage and the next. Chosen.</summary>
    public const int GapMilliseconds = 500;

    /// <param name="study">That of the circuit as it is wired.</param>
    /// <param name="response">Its curves, with these changes beside.</param>
    public static HeardSequence Of(Study study, ResponseStudy response, IReadOnlyList<CircuitChange> changes)
    {
        var beside = changes
            .DistinctBy(change => change.Words)
            .ToDictionary(change => change.Words, change => study.Beside(change.Circuit), StringComparer.Ordinal);
        return new HeardSequence(
            response,
            [.. response.Curves.Select(curve => curve.Change is { } words ? beside[words] : study)]
        );
    }

    /// <summary>How many samples a sound of these would have, with passages of a length.</summary>
    public long SamplesOf(int passage, int rate) =>
        ((long)Wirings.Length * passage) + ((Wirings.Length - 1L) * StringPlayer.Samples(GapMilliseconds, rate));

    /// <summary>Strings plucked at each.</summary>
    /// <param name="rate">Samples a second.</param>
    /// <param name="peakDecibels">The highest sample of all, below the most that a file can hold.</param>
    public HeardSound OfStrings(
        Phrase phrase,
        int rate,
        double peakDecibels,
        CancellationToken cancellation = default
    ) =>
        Made(
            StringPlayer.Samples(phrase.Milliseconds, rate),
            rate,
            peakDecibels,
            (ear, wiring) => StringPlayer.Play(phrase, ear, CoilSpot.Of(wiring.Circuit), rate, cancellation)
        );

    /// <summary>A recording sent through each.</summary>
    /// <inheritdoc cref="OfStrings"/>
    public HeardSound OfRecording(Recording recording, double peakDecibels, CancellationToken cancellation = default) =>
        Made(
            recording.Samples.Length,
            recording.Rate,
            peakDecibels,
            (ear, _) => RecordingFilter.Of(ear, recording.Rate)?.Through(recording.Samples.Span, cancellation)
        );

    private HeardSound Made(int length, int rate, double peakDecibels, Func<CircuitEar, Study, double[]?> play)
    {
        if (SamplesOf(length, rate) > MostSamples)
        {
            throw new ArgumentException("the sound is too long", nameof(length));
        }

        var samples = new double[SamplesOf(length, rate)];
        var step = length + StringPlayer.Samples(GapMilliseconds, rate);
        var passages = ImmutableArray.CreateBuilder<HeardPassage>();
        for (var i = 0; i < Wirings.Length; i++)
        {
            var curve = Study.Curves[i];
            var heard = CircuitEar.Of(Wirings[i], curve.State) is { } ear ? play(ear, Wirings[i]) : null;
            heard?.CopyTo(samples, i * step);
            passages.Add(new HeardPassage(curve, i * step, length, PowerOf(heard)));
        }

        var peak = samples.Length == 0 ? 0 : samples.Max(Math.Abs);
        var gain = peak > 0 ? PortableMath.RatioOf(peakDecibels) / peak : 0;
        for (var i = 0; i < samples.Length; i++)
        {
            samples[i] *= gain;
        }

        return new HeardSound(new Recording(rate, samples), passages.ToImmutable());
    }

    /// <summary>The mean of the squares.</summary>
    private static double PowerOf(double[]? samples)
    {
        var sum = 0.0;
        foreach (var sample in samples ?? [])
        {
            sum += sample * sample;
        }

        return samples is { Length: > 0 } ? sum / samples.Length : 0;
    }
}

/// <summary>A finished sound and what is in it.</summary>
/// <param name="Passages">One after another, with silence between.</param>
public sealed record HeardSound(Recording Recording, ImmutableArray<HeardPassage> Passages)
{
    /// <summary>How loud a passage is against the loudest, in dB, as the root of its mean square; null where it is silent.</summary>
    public double? LevelOf(HeardPassage passage) =>
        passage.Power > 0 ? Decibels.Of(Math.Sqrt(passage.Power / Passages.Max(other => other.Power))) : null;
}

/// <param name="Curve">The state, what is heard in it, and what that rests on.</param>
/// <param name="Start">Its first sample.</param>
/// <param name="Length">How many samples it has.</param>
/// <param name="Power">The mean of their squares before the gain of the whole; 0 in silence.</param>
public sealed record HeardPassage(ResponseCurve Curve, int Start, int Length, double Power);
