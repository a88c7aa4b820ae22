using WireText.Listening;
using WireText.Testing;

namespace WireText.Tests.Listening;

/// <summary>The string model beside integrals that are added up piece by piece.</summary>
public class PluckedStringTests
{
    private const int Pieces = 200_000;
    private const double Length = 0.648;

    /// <summary>The Fourier coefficients of the triangle itself: b_n = 2/L·∫ y(x)·sin(nπx/L) dx, the height 1; velocity is n times those.</summary>
    [Theory]
    [InlineData(0.13)]
    [InlineData(0.324)]
    [InlineData(0.05)]
    public void Velocity_OfEachPartial_IsThatOfTheTriangle(double pluck)
    {
        var plucked = new PluckedString(110, Length, pluck);
        Every.Item(
            Enumerable.Range(1, 12),
            n =>
            {
                var coefficient = Mean(
                    0,
                    Length,
                    x => (x < pluck ? x / pluck : (Length - x) / (Length - pluck)) * Math.Sin(n * Math.PI * x / Length)
                );
                Assert.Equal(n * 2 * coefficient, plucked.Velocity(n), 1e-7);
            }
        );
    }

    [Theory]
    [InlineData(0.162, 0.015)]
    [InlineData(0.0405, 0.015)]
    [InlineData(0.1, 0.03)]
    public void HeardAt_APlace_IsTheMeanOverTheAperture(double at, double aperture)
    {
        var plucked = new PluckedString(110, Length, 0.13);
        Every.Item(
            Enumerable.Range(1, 60),
            n =>
                Assert.Equal(
                    Mean(at - (aperture / 2), at + (aperture / 2), x => Math.Sin(n * Math.PI * x / Length)),
                    plucked.HeardAt(n, at, aperture),
                    1e-8
                )
        );
    }

    /// <summary>A partial with a node above the coil, or at the pluck point, is not there.</summary>
    [Fact]
    public void Partials_WithANodeThere_AreNotHeard()
    {
        var plucked = new PluckedString(110, Length, Length / 5);

        Every.Item(new[] { 5, 10, 15 }, n => Assert.Equal(0, plucked.Velocity(n), 1e-15));
        Every.Item(new[] { 4, 8, 12 }, n => Assert.Equal(0, plucked.HeardAt(n, Length / 4, 0), 1e-15));
        Assert.Equal(1, Math.Abs(plucked.HeardAt(2, Length / 4, 0)), 1e-15);
    }

    /// <summary>What the docstring promises: 60 dB in 8 s at 100 Hz and in 2 s at 4 kHz, and never less than that law between.</summary>
    [Theory]
    [InlineData(100, 8)]
    [InlineData(4000, 2)]
    public void Decay_AtTheTwoFrequencies_Is60DecibelsInTheirTime(double hertz, double seconds) =>
        Assert.Equal(-60, 20 * Math.Log10(Math.Exp(-PluckedString.DecayOf(hertz) * seconds)), 1e-9);

    /// <summary>b1 + b3·ω²: the law is a straight line over the square of the frequency.</summary>
    [Fact]
    public void Decay_OverTheSquareOfTheFrequency_IsAStraightLine()
    {
        var slope = (PluckedString.DecayOf(4000) - PluckedString.DecayOf(100)) / ((4000.0 * 4000) - (100 * 100));
        Every.Item(
            new[] { 41.2, 330, 1000, 20_000 },
            hertz =>
                Assert.Equal(
                    PluckedString.DecayOf(100) + (slope * ((hertz * hertz) - (100 * 100))),
                    PluckedString.DecayOf(hertz),
                    1e-9
                )
        );
    }

    /// <summary>Equal temperament on A4 = 440 Hz (ISO 16), from the number of semitones below it.</summary>
    [Theory]
    [InlineData("", new[] { -29, -24, -19, -14, -10, -5 })]
    [InlineData("load strings=bass", new[] { -41, -36, -31, -26 })]
    public void OpenStrings_AreThoseOfEqualTemperament(string load, int[] semitones)
    {
        var strings = Instrument.Of(Electrical.Bench.CompileText($"pickup p single-coil\njack out\n{load}\n")).Open;

        Assert.Equal(semitones.Length, strings.Length);
        Every.Item(strings, (one, i) => Assert.Equal(440 * Math.Pow(2, semitones[i] / 12.0), one.Hertz, 1e-9));
    }

    /// <summary>E major is E, G sharp and B: semitones 0, 4 and 7 above an E.</summary>
    [Theory]
    [InlineData("")]
    [InlineData("load strings=bass")]
    public void Chord_IsEMajorWithItsRootLowest(string load)
    {
        var instrument = Instrument.Of(Electrical.Bench.CompileText($"pickup p single-coil\njack out\n{load}\n"));
        var chord = Phrase.Of(instrument, 0.1).Notes.Skip(instrument.Open.Length).Select(note => note.String).ToList();

        var above = chord.Select(one => 12 * Math.Log2(one.Hertz / instrument.Open[0].Hertz)).ToList();

        Assert.Equal(0, above[0], 1e-9);
        Assert.Equal([0, 4, 7], above.Select(semitones => (int)Math.Round(semitones) % 12).Distinct().Order());
        Every.Item(above, semitones => Assert.Equal(Math.Round(semitones), semitones, 1e-9));

        // On one string frequency times length stays: 2·L·f is the speed of its waves.
        Every.Item(
            chord,
            (one, i) => Assert.Equal(instrument.Open[i].Hertz * instrument.ScaleMetres, one.Hertz * one.Metres, 1e-9)
        );
    }

    private static double Mean(double from, double to, Func<double, double> of)
    {
        var sum = 0.0;
        for (var i = 0; i < Pieces; i++)
        {
            sum += of(from + ((to - from) * (i + 0.5) / Pieces));
        }

        return sum / Pieces;
    }
}
