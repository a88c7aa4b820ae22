using System.Numerics;
using WireText.Circuits;
using WireText.Electrical.Networks;
using WireText.Electrical.Responses;
using WireText.Electrical.Studies;
using WireText.Listening;
using WireText.Output;
using WireText.Testing;
using WireText.Tests.Electrical;
using WireText.Tests.Output;

namespace WireText.Tests.Listening;

/// <summary>Finished samples, looked at by the transform of another library.</summary>
public class HeardSoundTests
{
    private const int Rate = 48_000;
    private const double Peak = -12;

    /// <summary>A coil with next to nothing inside into next to no load: what is heard is the string alone.</summary>
    private const string Flat =
        "load cable=1p input=1000M scale=648mm\njack out mono\nwire p.hot to out.tip white\nwire p.ground to out.sleeve black\n";

    public static TheoryData<string> ExampleNames => Rows.Of(Repository.ExampleNames);

    /// <summary>A string of length L has partials at n times its note, and none with a node at the coil, n·L/x, or at the pluck point.</summary>
    [Fact]
    public void OpenString_HasItsPartials_AndTheNotchesOfCoilAndPluck()
    {
        // Over a quarter of the string; plucked at a fifth.
        var sound = Play("pickup p single-coil dcr=1R l=1mH c=0.1p at=162mm aperture=0.1mm\n" + Flat, 0.1296, "rest");

        Every.Item(
            Enumerable.Range(0, 6),
            i =>
            {
                var hertz = 440 * Math.Pow(2, new[] { -29, -24, -19, -14, -10, -5 }[i] / 12.0);
                var spectrum = Spectrum.Windowed(Note(sound, i), Rate, 1 << 17);
                var fundamental = spectrum.MostBetween(hertz * 0.9, hertz * 1.1);
                foreach (var n in new[] { 1, 2, 3, 6, 7, 9, 11 })
                {
                    // A bin is 0.37 Hz.
                    Assert.Equal(n * hertz, spectrum.PeakBetween((n - 0.4) * hertz, (n + 0.4) * hertz), 0.4);
                }

                foreach (var n in new[] { 4, 5, 8, 10, 12, 15, 16 })
                {
                    // The window's own side lobes lie 92 dB down, the steps of the file are left out here.
                    Assert.InRange(
                        20 * Math.Log10(spectrum.MostBetween((n - 0.1) * hertz, (n + 0.1) * hertz) / fundamental),
                        -400,
                        -85
                    );
                }
            }
        );
    }

    /// <summary>The amplitude of each partial: sin(nπβ)/n of the pluck, sin(nπx/L) of the place, sin(u)/u of the aperture, and exp(−σt).</summary>
    [Fact]
    public void OpenString_HasThePartialsOfTheTextbook()
    {
        const double length = 0.648;
        const double at = 0.05;
        const double aperture = 0.02;
        const double pluck = 0.11;
        var sound = Play("pickup p single-coil dcr=1R l=1mH c=0.1p at=50mm aperture=20mm\n" + Flat, pluck, "rest");
        var note = Note(sound, 1);
        var spectrum = Spectrum.Windowed(note, Rate, 1 << 17);
        var measured = Enumerable
            .Range(1, 40)
            .Select(n => spectrum.MostBetween((n * 110) - 1, (n * 110) + 1) / DyingAt(n))
            .ToList();

        var first = Textbook(1);
        Every.Item(
            Enumerable.Range(1, 40).Where(n => Textbook(n) / first > 1e-3),
            n => Assert.Equal(0, 20 * Math.Log10(measured[n - 1] / measured[0] / (Textbook(n) / first)), 0.05)
        );

        double Textbook(int n)
        {
            var u = n * Math.PI * aperture / (2 * length);
            return Math.Abs(
                Math.Sin(n * Math.PI * pluck / length) / n * Math.Sin(n * Math.PI * at / length) * Math.Sin(u) / u
            );
        }

        // 60 dB in 8 s at 100 Hz and in 2 s at 4 kHz, linear over the square of the frequency.
        double DyingAt(int n)
        {
            var (slow, fast) = (3 * Math.Log(10) / 8, 3 * Math.Log(10) / 2);
            var share = ((110.0 * 110 * n * n) - 1e4) / (16e6 - 1e4);
            return Spectrum.OfDying(slow + ((fast - slow) * share), note.Length, Rate)
                * Math.Exp(-(slow + ((fast - slow) * share)) * NoteStart / Rate);
        }
    }

    /// <summary>A click through the circuit has the circuit's own spectrum.</summary>
    [SkippableTheory]
    [InlineData("2-two-pickups-mute.wiring", "sel=neck")]
    [InlineData("2-two-pickups-mute.wiring", "sel=both tone=3")]
    [InlineData("4-three-pickups-5way.wiring", "sel=bridge-middle vol=6")]
    [InlineData("6-series-phase.wiring", "join=series phase=normal")]
    public void Click_ThroughACircuit_HasTheResponseOfNgspiceAtTenFrequencies(string name, string state)
    {
        Ngspice.SkipWhereAbsent();
        var (study, at) = StudyOf(File.ReadAllText(Repository.PathOf("examples", name)), state);
        var deck = SpiceComparison.DeckOf(study.Network, at);
        var runs = Ngspice.Run([deck])[0];
        var click = new double[1 << 16];
        click[100] = 1;

        var sound = Sequence(study, at).OfRecording(new Recording(Rate, click), Peak);

        var spectrum = Spectrum.Of(sound.Recording.Samples.Span, Rate, 1 << 17);
        var theirs = runs[0].Select((point, f) => (point.Hertz, Level(runs, f))).ToList();
        var ten = Every.Of(theirs.Where((_, f) => f % 6 == 3));
        Assert.Equal(10, ten.Count);

        // One gain for the whole file: what is left is the shape of the response.
        var offset = Ours(ten[5].Hertz) - ten[5].Item2;
        Every.Item(ten, point => Assert.Equal(point.Item2 + offset, Ours(point.Hertz), 0.05));

        double Ours(double hertz) => 20 * Math.Log10(spectrum.At(hertz).Magnitude);
    }

    /// <summary>Each partial of a string through one pickup is the textbook's times the closed form of a second-order low pass.</summary>
    [Fact]
    public void String_ThroughAPickup_HasTheResponseOfTheClosedFormAtTenFrequencies()
    {
        const string wires =
            "jack out mono\nwire p.hot to out.tip white\nwire p.ground to out.sleeve black\nload scale=648mm\n";
        var flat = Note(Play("pickup p single-coil dcr=1R l=1mH c=0.1p at=50mm\n" + Flat, 0.11, "rest"), 0);
        var real = Note(Play("pickup p single-coil dcr=6k l=2.5H c=100p at=50mm\n" + wires, 0.11, "rest"), 0);
        var (before, after) = (Spectrum.Windowed(flat, Rate, 1 << 17), Spectrum.Windowed(real, Rate, 1 << 17));
        var hertz = 440 * Math.Pow(2, -29 / 12.0);
        int[] ten = [1, 3, 7, 12, 20, 30, 40, 50, 60, 72];

        var offset = LevelOf(1) - Closed(1);
        Every.Item(ten, n => Assert.Equal(Closed(n) + offset, LevelOf(n), 0.05));

        double LevelOf(int n) =>
            20
            * Math.Log10(
                after.MostBetween((n - 0.02) * hertz, (n + 0.02) * hertz)
                    / before.MostBetween((n - 0.02) * hertz, (n + 0.02) * hertz)
            );

        // H = 1/(1 + (R + jωL)(1/Rl + jωC)), C = 100 pF + 470 pF, Rl = 1 MΩ.
        double Closed(int n)
        {
            var omega = 2 * Math.PI * n * hertz;
            var loss = 1 + (new Complex(6e3, omega * 2.5) * new Complex(1e-6, omega * 570e-12));
            return -20 * Math.Log10(loss.Magnitude);
        }
    }

    [Fact]
    public void SilentPosition_IsSilentToTheLastBit_AndSoIsTheGap()
    {
        var sound = Play(
            File.ReadAllText(Repository.PathOf("examples", "2-two-pickups-mute.wiring")),
            0.13,
            "sel=neck",
            "mute=down",
            "sel=neck vol=0",
            "sel=bridge"
        );
        var bytes = WaveWriter.Write(sound.Recording, 24).AsSpan(44);

        var (first, gap) = (sound.Passages[0].Length, Rate / 2);
        Assert.Equal(bytes.Length, 3 * ((4 * first) + (3 * gap)));
        Assert.True(bytes[..(3 * first)].ContainsAnyExcept((byte)0));
        Assert.False(bytes[(3 * first)..(3 * ((3 * first) + (3 * gap)))].ContainsAnyExcept((byte)0));
        Assert.True(bytes[(3 * ((3 * first) + (3 * gap)))..].ContainsAnyExcept((byte)0));
        Assert.Equal(2, sound.Passages.Count(passage => sound.LevelOf(passage) is null));
    }

    /// <summary>The mean square of the finished file beside that of the partials, added up one by one with what the circuit does to each.</summary>
    [Theory]
    [InlineData("2-two-pickups-mute.wiring", new[] { "sel=neck", "sel=both", "sel=bridge", "sel=neck vol=5" })]
    [InlineData("6-series-phase.wiring", new[] { "join=series", "join=parallel", "join=series phase=turned" })]
    public void Loudness_BetweenPositions_IsThatOfThePartials(string name, string[] states)
    {
        var text = File.ReadAllText(Repository.PathOf("examples", name));
        var sound = Play(text, 0.1296, states);
        var powers = states.Select(state => Textbook(text, state)).ToList();

        Every.Item(
            sound.Passages,
            (passage, i) =>
            {
                var samples = sound.Recording.Samples.Span.Slice(passage.Start, Rate / 2);
                Assert.Equal(
                    10 * Math.Log10(powers[i] / powers[0]),
                    10 * Math.Log10(Mean(samples) / First(sound)),
                    0.1
                );
            }
        );

        static double First(HeardSound sound) => Mean(sound.Recording.Samples.Span[..(Rate / 2)]);
    }

    [Theory]
    [MemberData(nameof(ExampleNames))]
    public void Sound_OfEachExampleInEachPosition_IsAtItsPeakAndNeverClips(string name)
    {
        var study = Study.Of(Bench.CompileText(File.ReadAllText(Repository.PathOf("examples", name))))!;
        var states = PositionViews.StatesOf(study);

        var sound = HeardSequence
            .Of(study, ResponseStudy.Of(study, states, [], [])!, [])
            .OfStrings(Phrase.Of(Instrument.Of(study.Circuit), 0.13), Rate, Peak);

        // -12 dB of the largest step of 16 bits, 32767: 10^(-12/20) = 0.251188643.
        var most = StepsOf(WaveWriter.Write(sound.Recording, 16)).Max(step => Math.Abs((int)step));
        Assert.Equal(8231, most);
        Assert.Contains(sound.Passages, passage => sound.LevelOf(passage) is 0);
    }

    [Fact]
    public void Sound_AtFullScale_StaysWithinTheSteps()
    {
        var sound = Play(File.ReadAllText(Repository.PathOf("examples", "1-one-pickup.wiring")), 0.13, 0, "rest");

        Assert.Equal(32767, StepsOf(WaveWriter.Write(sound.Recording, 16)).Max(step => Math.Abs((int)step)));
    }

    [Fact]
    public void Sound_MadeAgainAndInAnotherCulture_IsTheSameBytes()
    {
        var text = File.ReadAllText(Repository.PathOf("examples", "8-twin-coil-cut.wiring"));
        var first = Made();

        Assert.Equal(first, Made());
        Assert.Equal(first, OtherCulture.Run(Made));

        byte[] Made() => WaveWriter.Write(Play(text, 0.13, "rest").Recording, 24);
    }

    [Fact]
    public void Coils_WithoutAPlace_LieWhereTheirNamesSay_AndAreMarked()
    {
        var spots = CoilSpot.Of(
            Bench.CompileText(
                "pickup neck single-coil\npickup bridge humbucker-4 at=40mm n.aperture=12mm\npickup other single-coil at=90mm aperture=9mm\njack out\nload scale=640mm\n"
            )
        );

        // A quarter of 640 mm; two coils 18 mm apart about 40 mm.
        Assert.Equal([160, 49, 31, 90], spots.Select(spot => Math.Round(1000 * spot.Metres, 6)));
        Assert.Equal([15, 12, 15, 9], spots.Select(spot => Math.Round(1000 * spot.ApertureMetres, 6)));
        Assert.Equal([true, false, false, false], spots.Select(spot => spot.IsPlaceAssumed));
        Assert.Equal([true, false, true, false], spots.Select(spot => spot.IsApertureAssumed));
    }

    /// <summary>A quarter, 0.155 and a sixteenth of 640 mm: common practice, from memory.</summary>
    [Theory]
    [InlineData("neck", 160)]
    [InlineData("front", 160)]
    [InlineData("bass-front", 160)]
    [InlineData("mid", 99.2)]
    [InlineData("third", 99.2)]
    [InlineData("rear", 40)]
    [InlineData("back", 40)]
    public void Coils_OfTheWordsOfTheTrade_LieWhereTheySay(string name, double millimetres)
    {
        var spot = Assert.Single(
            CoilSpot.Of(Bench.CompileText($"pickup {name} single-coil\njack out\nload scale=640mm\n"))
        );

        Assert.Equal((millimetres, true), (Math.Round(1000 * spot.Metres, 6), spot.IsPlaceAssumed));
    }

    /// <summary>From the first sample of a passage to where a note of it is looked at.</summary>
    private const int NoteStart = Rate * 5 / 100;

    /// <summary>The middle of an open string: its attack and its damping left out.</summary>
    private static double[] Note(HeardSound sound, int number) =>
        sound.Recording.Samples.Slice((number * Rate / 2) + NoteStart, Rate * 2 / 5).ToArray();

    private static double Mean(ReadOnlySpan<double> samples)
    {
        var sum = 0.0;
        foreach (var sample in samples)
        {
            sum += sample * sample;
        }

        return sum / samples.Length;
    }

    /// <summary>The mean square of half a second of E2: Σ a²·(1 − e^(−2σT))/(4σT), a partial's amplitude with both coils' combs and the solver's gains.</summary>
    private static double Textbook(string text, string state)
    {
        var (study, at) = StudyOf(text, state);
        var hertz = 440 * Math.Pow(2, -29 / 12.0);
        var ear = CircuitEar.Of(study, at)!;
        var spots = CoilSpot.Of(study.Circuit);
        var power = 0.0;
        for (var n = 1; n * hertz < 20e3; n++)
        {
            var sum = Complex.Zero;
            foreach (var answer in ear.CoilsAt([n * hertz])!.Value)
            {
                var spot = spots.Single(one => one.Coil.Index == answer.Coil.Index);
                var u = n * Math.PI * spot.ApertureMetres / (2 * 0.648);
                sum += Math.Sin(n * Math.PI * spot.Metres / 0.648) * Math.Sin(u) / u * answer.Gains[0];
            }

            var amplitude = Math.Sin(n * Math.PI * 0.2) / n * sum.Magnitude;
            var decay = PluckedString.DecayOf(n * hertz);
            power += amplitude * amplitude * (1 - Math.Exp(-2 * decay * 0.5)) / (4 * decay * 0.5);
        }

        return power;
    }

    /// <summary>Every coil's gain with its sign, added.</summary>
    private static double Level(List<(double Hertz, Complex Volts)[]> runs, int f) =>
        20 * Math.Log10(runs.Aggregate(Complex.Zero, (sum, run) => sum + run[f].Volts).Magnitude);

    private static IEnumerable<short> StepsOf(byte[] file) =>
        Enumerable.Range(0, (file.Length - 44) / 2).Select(i => BitConverter.ToInt16(file, 44 + (2 * i)));

    private static HeardSound Play(string text, double pluck, params string[] states) =>
        Play(text, pluck, Peak, states);

    private static HeardSound Play(string text, double pluck, double peak, params string[] states)
    {
        var study = Study.Of(Bench.CompileText(text))!;
        var at = states.Select(state => StateReader.Read(study.Circuit, state).Value!).ToArray();
        return Sequence(study, at).OfStrings(Phrase.Of(Instrument.Of(study.Circuit), pluck), Rate, peak);
    }

    private static HeardSequence Sequence(Study study, params State[] states) =>
        HeardSequence.Of(study, ResponseStudy.Of(study, states, [], [])!, []);

    private static (Study Study, State State) StudyOf(string text, string state)
    {
        var network = Network.Of(Bench.CompileText(text))!;
        return (Study.Of(network), StateReader.Read(network.Circuit, state).Value!);
    }
}
