using System.Globalization;
using WireText.Electrical.Sound;

namespace WireText.Tests.Electrical.Solving;

/// <summary>Resonances and corners against closed forms and published worked examples.</summary>
public class FactResonanceTests
{
    public static TheoryData<string> SecondOrder => FactTable.Ids("second-order.txt");

    public static TheoryData<string> ToneAtZero => FactTable.Ids("tone-at-zero.txt");

    public static TheoryData<string> Corners => FactTable.Ids("rc.txt");

    /// <summary>Coil pairs and chokes into a capacitance: 1/(2π√(LC)), published worked examples among them.</summary>
    public static TheoryData<string, double, double, double> Undamped =>
        new()
        {
            { "PU-01", 2.4, 300e-12, 5931 },
            { "PU-02", 2.4, 2400e-12, 2097 },
            { "PU-03", 0.1, 25.33e-12, 100e3 },
            { "PU-05 alone", 3, 200e-12, 6497 },
            { "PU-05", 3, 700e-12, 3473 },
            { "PU-06 alone", 6, 100e-12, 6497 },
            { "PU-06", 6, 600e-12, 2653 },
            { "PU-07 alone", 1.5, 400e-12, 6497 },
            { "PU-07", 1.5, 900e-12, 4332 },
        };

    [Theory]
    [MemberData(nameof(Undamped))]
    public void NearlyLosslessCoil_IntoACapacitance_IsLargestWhereTheFormulaSays(
        string id,
        double henries,
        double farads,
        double hertz
    )
    {
        // 1 Ω of winding: the peak lies at the undamped resonance within its square, 1e-9. Around it both sides are lower.
        var bench = OneCoil(henries, 1, farads * 1e12, double.PositiveInfinity);
        double[] levels = bench.Decibels(hertz * 0.9985, hertz, hertz * 1.0015);

        Assert.True(levels[1] > levels[0] && levels[1] > levels[2], $"{id}: {string.Join(' ', levels)}");
    }

    [Fact]
    public void Choke_Of100MillihenriesAnd210Ohms_HasTheQOfTheWorkedExample()
    {
        // PU-04: Q = (1/R)·√(L/C) = 299.2; at the natural frequency the level over DC is Q.
        var natural = 1 / (2 * Math.PI * Math.Sqrt(0.1 * 25.33e-12));
        var level = OneCoil(0.1, 210, 25.33, double.PositiveInfinity).Decibels(natural)[0];

        Assert.Equal(299.2, Decibels.ToRatio(level), 0.05);
    }

    [Fact]
    public void CoilPair_WithMuchCapacitanceOutside_ResonatesTwiceAsHighInParallelAsInSeries()
    {
        // PU-08: series to parallel 1:2, series to one coil 1:√2, for a capacitor far above that of the windings.
        var series = PeakOf(OneCoil(6, 1, 100e3, double.PositiveInfinity));
        var single = PeakOf(OneCoil(3, 1, 100e3, double.PositiveInfinity));
        var parallel = PeakOf(OneCoil(1.5, 1, 100e3, double.PositiveInfinity));

        Assert.Equal(2, parallel / series, 1e-3);
        Assert.Equal(Math.Sqrt(2), single / series, 1e-3);
    }

    [Theory]
    [MemberData(nameof(SecondOrder))]
    public void CoilIntoCapacitanceAndResistance_HasThePeakOfTheClosedForm(string id)
    {
        var row = FactTable.Row("second-order.txt", id);
        var load = double.Parse(row["load"].Split(' ')[0], CultureInfo.InvariantCulture);
        load =
            load == 333333 ? 1e6 / 3
            : load == 111111 ? 1e6 / 9
            : load;
        var bench = OneCoil(row.Number("henries"), row.Number("ohms"), row.Number("picofarads"), load);

        // The gain at DC: 1 Hz is as good, for (1 Hz/f_n)² is below 1e-6.
        Assert.Equal(row.Number("dc"), bench.Decibels(1)[0], 0.0005);

        // At the natural frequency the response is that of DC times Q.
        var natural = row.Number("natural");
        Assert.Equal(
            row.Number("q"),
            Decibels.ToRatio(bench.Decibels(natural)[0] - row.Number("dc")),
            row.Number("q") * 1e-3
        );

        var peak = Resonance.Find(bench.Response());
        if (row.IsNumber("peak"))
        {
            Assert.NotNull(peak);
            Assert.InRange(peak.Hertz / row.Number("peak"), 0.999, 1.001);
            Assert.Equal(row.Number("height"), peak.Decibels, 0.01);
        }
        else
        {
            Assert.Null(peak);
        }
    }

    [Theory]
    [MemberData(nameof(ToneAtZero))]
    public void ToneCapacitorAlone_MovesTheResonanceDown(string id)
    {
        var row = FactTable.Row("tone-at-zero.txt", id);
        var farads = (row.Number("nanofarads") * 1e-9) + (row.Number("picofarads") * 1e-12);
        var peak = PeakOf(OneCoil(row.Number("henries"), 1, farads * 1e12, double.PositiveInfinity));

        Assert.InRange(peak / row.Number("hertz"), 0.999, 1.001);
    }

    [Theory]
    [MemberData(nameof(Corners))]
    public void ResistanceIntoCapacitance_IsDownByHalfItsPowerAtTheCorner(string id)
    {
        // The impedance of R ∥ C at 1/(2πRC) is R/√2, by 45°.
        var row = FactTable.Row("rc.txt", id);
        var ohms = row.Number("ohms");
        var bench = Bench.Of(
            FormattableString.Invariant(
                $"resistor r {ohms}R from out.tip to out.sleeve; cap c {row["nanofarads"]}n from out.tip to out.sleeve; jack out"
            )
        );
        var answer = WireText.Electrical.Solving.AcSolver.Prepare(bench.Live(), null)!.Solve(row.Number("hertz"))!;

        Assert.Equal(ohms / Math.Sqrt(2), answer.ImpedanceAt(0).Magnitude, ohms * 1e-3);
        Assert.Equal(-Math.PI / 4, answer.ImpedanceAt(0).Phase, 1e-3);
    }

    private static double PeakOf(Bench bench) => Resonance.Find(bench.Response())!.Hertz;

    /// <summary>A coil with next to no capacitance of its own, straight to the jack.</summary>
    private static Bench OneCoil(double henries, double ohms, double picofarads, double load) =>
        Bench
            .Of(
                FormattableString.Invariant(
                    $"pickup p single-coil dcr={ohms}R l={henries}H c=0.1p; jack out; p.hot ~ out.tip; p.ground ~ out.sleeve"
                )
            )
            .Into((picofarads - 0.1) * 1e-12, load);
}
