using WireText.Circuits;
using WireText.Electrical.Positions;
using WireText.Electrical.Solving;
using WireText.Electrical.Studies;
using WireText.Electrical.Tolerances;
using WireText.Testing;

namespace WireText.Tests.Electrical.Tolerances;

public class RunSpreadTests
{
    /// <summary>A source of next to no impedance on two resistors of 10 kΩ ±5 %, and nothing else on the jack.</summary>
    private const string Divider = """
        pickup p single-coil dcr=1R l=100m c=1p
        resistor upper 10k tol=5% from p.hot to out.tip
        resistor lower 10k tol=5% from out.tip to out.sleeve
        jack out mono
        wire p.ground to out.sleeve black
        load input=1G cable=1p
        """;

    public static TheoryData<string> Examples =>
        Rows.Of(
            new[] { "2-two-pickups-mute", "4-three-pickups-5way", "6-series-phase", "7-active-buffer" }.Select(name =>
                name + ".wiring"
            )
        );

    /// <summary>
    /// The worked example of every text on tolerance analysis, a divider of two equal resistors of ±5 % (from memory): each moves
    /// the ratio by half of its own deviation. Worst case: 0.5 · (0.95 or 1.05), to first order ±5 %, exactly 0.95/2 and 1.05/2
    /// since 0.95 + 1.05 = 2. Root sum of squares: √2 · 2.5 % = 3.54 %, a standard deviation of 3.54 %/√3 for uniform values.
    /// The sum of two equal uniform values is a triangle, whose 5 % lie below −(1 − √0.1) of its half width.
    /// </summary>
    [Fact]
    public void Divider_OfTwoEqualResistors_IsThatOfTheTextbooks()
    {
        var level = Spread(Divider, "rest", 20_000).Figures.Single(figure => figure.Figure == RunFigure.Level);

        var (least, most) = (Ratio(level.Least), Ratio(level.Most));
        Assert.InRange(least, 0.475, 0.4757);
        Assert.InRange(most, 0.5243, 0.525);
        Assert.Equal(0.5, Ratio(level.AsWritten), 1e-4);

        // A percentile at p strays by √(p(1 − p)/n) over the density: of 20,000 by 0.0015/12.6 = 1.2e-4.
        var tail = 0.05 * (1 - Math.Sqrt(0.1));
        Assert.Equal(0.5 * (1 - tail), Ratio(level.Percentiles[0]), 4e-4);
        Assert.Equal(0.5 * (1 + tail), Ratio(level.Percentiles[2]), 4e-4);

        Assert.Equal(["lower", "upper"], level.Shares.Take(2).Select(share => share.Factor.Name).Order());
        Every.Item(level.Shares.Take(2), share => Assert.Equal(0.5, share.Share, 0.01));
        Assert.True(level.AreSharesGood);
    }

    /// <summary>
    /// Brute force: every corner of the tolerances of what a meter sees, each solved as a circuit of its own with those values. By
    /// Rayleigh's law no inner point lies outside of them, and the two ends must be met.
    /// </summary>
    [Theory]
    [MemberData(nameof(Examples))]
    public void Reading_OfEachPosition_HasTheEndsOfAllCorners(string example)
    {
        var study = StudyOf(File.ReadAllText(Repository.PathOf("examples", example)));
        var states = SpreadTable.StatesOf(study.Positions);
        var table = SpreadTable.Of(study.Analyst, states, new RunOptions(Count: 20));
        var readings = 0;
        foreach (var spread in table.States)
        {
            if (spread.Figures.FirstOrDefault(figure => figure.Figure == RunFigure.Reading) is not { } reading)
            {
                continue;
            }

            var corners = CornersOf(study, spread.Analysis.State).ToList();
            Assert.Equal(corners.Min(), reading.Least, 1e-9 * reading.Least);
            Assert.Equal(corners.Max(), reading.Most, 1e-9 * reading.Most);
            Assert.True(reading.IsExact);
            readings++;
        }

        Assert.True(readings > 0, "no position has a reading");
    }

    /// <summary>
    /// Independent sampling: another generator draws values, and each instrument is a circuit of its own. Of its figures as many
    /// must lie below each percentile as it says, within four standard deviations of both samples.
    /// </summary>
    [Theory]
    [InlineData("1-one-pickup.wiring", "vol=7")]
    [InlineData("2-two-pickups-mute.wiring", "sel=both tone=3")]
    [InlineData("6-series-phase.wiring", "join=series")]
    public void Percentiles_AreThoseOfAnotherSample(string example, string at)
    {
        const int Count = 1_500;
        var text = File.ReadAllText(Repository.PathOf("examples", example));
        var study = StudyOf(text);
        var state = StateOf(study.Circuit, at);
        var spread = RunSpread.Of(
            study.Network,
            study.Analyse(state),
            RunFactors.Of(study.Circuit),
            new RunOptions(Count)
        );
        var random = new Random(11);
        var others = Enumerable
            .Range(0, Count)
            .Select(_ => study.Beside(WithValues(study.Circuit, _ => (2 * random.NextDouble()) - 1)).Analyse(state))
            .ToList();

        Every.Item(
            spread.Figures,
            figure =>
            {
                var met = others.Select(one => FigureOf(figure.Figure, one)).OfType<double>().ToList();
                var without = (Count - met.Count) / (double)Count;
                Assert.Equal(
                    without,
                    figure.Without / (double)Count,
                    (4 * Math.Sqrt(2 * without * (1 - without) / Count)) + (1.0 / Count)
                );
                for (var i = 0; i < RunSpread.Percents.Length; i++)
                {
                    var p = RunSpread.Percents[i] / 100.0;
                    var below = met.Count(value => value < figure.Percentiles[i]) / (double)met.Count;
                    Assert.Equal(p, below, 4 * Math.Sqrt(2 * p * (1 - p) / met.Count));
                }
            }
        );
    }

    /// <summary>
    /// First-order indices by the pick-freeze estimator of Sobol' (1993), from memory: S_i = Cov(f(A), f(B with column i of A))/Var f. It
    /// needs no straight lines, and so judges the shares that rest on them.
    /// </summary>
    [Fact]
    public void Shares_OfAPeak_AreTheIndicesOfSobol()
    {
        const int Count = 3_000;
        var study = StudyOf(File.ReadAllText(Repository.PathOf("examples", "1-one-pickup.wiring")));
        var state = State.Rest(study.Circuit);
        var factors = RunFactors.Of(study.Circuit);
        var peak = RunSpread
            .Of(study.Network, study.Analyse(state), factors, new RunOptions(Count))
            .Figures.Single(figure => figure.Figure == RunFigure.Peak);
        var random = new Random(5);
        var (a, b) = (Matrix(), Matrix());
        var all = a.Select(PeakAt).ToList();
        var mean = all.Sum() / Count;
        var variance = all.Sum(value => (value - mean) * (value - mean)) / Count;

        Every.Item(
            peak.Shares,
            share =>
            {
                var column = factors.All.IndexOf(share.Factor);
                var frozen = a.Zip(b, (x, y) => PeakAt([.. y.Select((value, i) => i == column ? x[i] : value)]))
                    .ToList();
                var index = all.Zip(frozen, (x, y) => (x - mean) * (y - mean)).Sum() / Count / variance;
                // The estimator strays by about 1/√n of the variance.
                Assert.Equal(index, share.Share, 4 / Math.Sqrt(Count));
            }
        );

        double[][] Matrix() =>
            [
                .. Enumerable
                    .Range(0, Count)
                    .Select(_ =>
                        Enumerable.Range(0, factors.Count).Select(_ => (2 * random.NextDouble()) - 1).ToArray()
                    ),
            ];

        double PeakAt(double[] deviations) =>
            study.Beside(WithValues(study.Circuit, place => deviations[place])).Analyse(state).Resonance!.Hertz;
    }

    /// <summary>One temperature for both coils in series: (6.3k + 7k)·0.95·(1 + 0.00393·(10 − 20)) at the cold end; IEC 60028.</summary>
    [Fact]
    public void Reading_OfCoilsInARangeOfTemperature_MovesThemTogether()
    {
        const string Text = """
            pickup a single-coil dcr=6.3k
            pickup b single-coil dcr=7k
            jack out mono
            wire a.ground to out.sleeve black
            wire b.ground to a.hot white
            wire b.hot to out.tip white
            load temperature=10..30
            """;
        var reading = Spread(Text, "rest", 4_000).Figures[0];

        Assert.Equal(13_300 * 0.95 * (1 - 0.0393), reading.Least, 1e-6);
        Assert.Equal(13_300 * 1.05 * (1 + 0.0393), reading.Most, 1e-6);
        // Variances of uniform values: temperature (13.3k·0.0393)²/3, coils (6.3k·0.05)²/3 and (7k·0.05)²/3.
        var (copper, first, second) = (522.69 * 522.69, 315.0 * 315.0, 350.0 * 350.0);
        Assert.Equal(RunFactor.Copper, reading.Shares[0].Factor.Name);
        Assert.Equal(copper / (copper + first + second), reading.Shares[0].Share, 1e-3);
    }

    /// <summary>Two equal pots in one batch are off alike: one factor of both, and the variance of a sum of two doubles.</summary>
    [Fact]
    public void OneBatch_OfEqualResistors_IsOneFactor()
    {
        var study = StudyOf(
            """
            pickup p single-coil dcr=1R
            resistor a 10k from p.hot to b.1
            resistor b 10k
            jack out mono
            wire b.2 to out.tip white
            wire p.ground to out.sleeve black
            """
        );
        var (apart, alike) = (RunFactors.Of(study.Circuit), RunFactors.Of(study.Circuit, isOneBatch: true));
        Assert.Equal(apart.Count - 1, alike.Count);
        Assert.Contains("a+b", alike.All.Select(factor => factor.Name));

        // 5 % lie below: apart, in a triangle of half width 1 kΩ, −(1 − √0.1) of it; alike, in a rectangle, −0.9 of it. Of 4,000 a
        // percentile strays by √(0.05·0.95/4000) over the density there, 3.2e-4 and 5e-4 per ohm.
        Assert.Equal(20_001 - (1_000 * (1 - Math.Sqrt(0.1))), FivePercentOf(apart), 44.0);
        Assert.Equal(20_001 - 900, FivePercentOf(alike), 28.0);

        double FivePercentOf(RunFactors factors) =>
            RunSpread
                .Of(study.Network, study.Analyse(State.Rest(study.Circuit)), factors, new RunOptions(4_000, Seed: 3))
                .Figures[0]
                .Percentiles[0];
    }

    /// <summary>The value as written is what positions tells, and the run goes around it.</summary>
    [Theory]
    [MemberData(nameof(Examples))]
    public void AsWritten_IsWhatPositionsSays(string example)
    {
        var study = StudyOf(File.ReadAllText(Repository.PathOf("examples", example)));
        var states = SpreadTable.StatesOf(study.Positions);
        var table = SpreadTable.Of(study.Analyst, states, new RunOptions(Count: 50));

        Every.Item(
            table.States.SelectMany(spread => spread.Figures, (spread, figure) => (spread, figure)),
            one =>
            {
                var (spread, figure) = one;
                var known = FigureOf(figure.Figure, spread.Analysis)!.Value;
                Assert.Equal(known, figure.AsWritten, 1e-9 * Math.Abs(known));
                Assert.InRange(figure.Percentiles[1], figure.Least, figure.Most);
            }
        );
    }

    [Fact]
    public void Of_ValuesThatNobodyKnows_AreSpreadByRatio()
    {
        var study = StudyOf(
            """
            pickup p single-coil dcr=6k
            pot vol ? audio
            jack out mono
            wire p.hot to vol.3 white
            wire vol.2 to out.tip red
            wire vol.1 to out.sleeve black
            wire p.ground to out.sleeve black
            """
        );
        var factors = RunFactors.Of(study.Circuit);
        var factor = factors.All.Single(one => one.Name == "vol");
        var nominal = study.Circuit.Elements.OfType<Track>().Single();

        Assert.True(factor.IsByRatio);
        Assert.Equal(nominal.Doubt!.Least, nominal.Ohms * factor.MultiplierAt(-1), 1e-6);
        Assert.Equal(nominal.Doubt.Most, nominal.Ohms * factor.MultiplierAt(1), 1e-3);
        // The middle of ratios is the geometric mean.
        Assert.Equal(Math.Sqrt(nominal.Doubt.Least * nominal.Doubt.Most), nominal.Ohms * factor.MultiplierAt(0), 1e-6);
        Assert.Equal(1, factor.MultiplierAt(factors.AsWritten()[factors.All.IndexOf(factor)]), 1e-12);
    }

    [Fact]
    public void Of_TooManyInstrumentsForTheStates_IsRefused()
    {
        var study = StudyOf(Divider);
        var states = Enumerable.Repeat(State.Rest(study.Circuit), 11).ToList();

        Assert.Throws<ArgumentException>(() =>
            SpreadTable.Of(study.Analyst, states, new RunOptions(RunOptions.MostInstruments))
        );
    }

    internal static Study StudyOf(string text) => Study.Of(Bench.CompileText(text))!;

    private static RunSpread Spread(string text, string at, int count)
    {
        var study = StudyOf(text);
        return RunSpread.Of(
            study.Network,
            study.Analyse(StateOf(study.Circuit, at)),
            RunFactors.Of(study.Circuit),
            new RunOptions(count)
        );
    }

    private static State StateOf(Circuit circuit, string at) => StateReader.Read(circuit, at).Value!;

    private static double Ratio(double decibels) => Math.Pow(10, decibels / 20);

    private static double? FigureOf(RunFigure figure, StateAnalysis one) =>
        figure switch
        {
            RunFigure.Reading => one.Reading!.Value.Ohms,
            RunFigure.Level => one.Sound.LevelDecibels,
            RunFigure.Peak => one.Resonance?.Hertz,
            _ => one.Resonance?.HeightDecibels,
        };

    /// <summary>What is usual, from common practice, written a second time: coils ±5 % and ±10 % of C, pots ±20 %, resistors ±5 %, capacitors ±10 %.</summary>
    /// <param name="deviationOf">For each value in order of declaration, −1 to 1.</param>
    internal static Circuit WithValues(Circuit circuit, Func<int, double> deviationOf)
    {
        var place = 0;
        return circuit with { Elements = [.. circuit.Elements.Select(Off)] };

        Element Off(Element element) =>
            element switch
            {
                Coil coil => coil with
                {
                    Ohms = coil.Ohms * Next(coil.Tolerance ?? 0.05),
                    Henries = coil.Henries * Next(coil.Tolerance ?? 0.05),
                    Farads = coil.Farads * Next(coil.Tolerance ?? 0.10),
                },
                Track track => track with { Ohms = track.Ohms * Next(track.Tolerance ?? 0.20) },
                Resistor resistor => resistor with { Ohms = resistor.Ohms * Next(resistor.Tolerance ?? 0.05) },
                Capacitor capacitor => capacitor with { Farads = capacitor.Farads * Next(capacitor.Tolerance ?? 0.10) },
                _ => element,
            };

        double Next(double tolerance) => 1 + (tolerance * deviationOf(place++));
    }

    /// <summary>The readings at all corners of the resistances that a meter may see.</summary>
    private static IEnumerable<double> CornersOf(Study study, State state)
    {
        var circuit = study.Circuit;
        var seen = LiveNetwork
            .ForDirectCurrent(study.Network, state)
            .Branches.Select(branch => branch.Source.Element)
            .Distinct()
            .ToList();
        Assert.InRange(seen.Count, 1, 10);
        for (var corner = 0; corner < 1 << seen.Count; corner++)
        {
            var elements = circuit.Elements;
            for (var i = 0; i < seen.Count; i++)
            {
                var side = (corner & (1 << i)) == 0 ? -1 : 1;
                elements = elements.SetItem(
                    seen[i],
                    elements[seen[i]] switch
                    {
                        Coil coil => coil with { Ohms = coil.Ohms * (1 + (side * 0.05)) },
                        Track track => track with { Ohms = track.Ohms * (1 + (side * 0.20)) },
                        Resistor resistor => resistor with { Ohms = resistor.Ohms * (1 + (side * 0.05)) },
                        var other => other,
                    }
                );
            }

            yield return study.Beside(circuit with { Elements = elements }).Analyse(state).Reading!.Value.Ohms;
        }
    }
}
