using System.Globalization;
using WireText.Circuits;
using WireText.Electrical.Sound;

namespace WireText.Tests.Electrical.Solving;

/// <summary>Whole rigs against tables that a separate nodal solver and ngspice 39 made; ±0.01 dB, peaks ±0.1 %.</summary>
public class FactResponseTests
{
    private const double DecibelTolerance = 0.01;
    private const double PeakTolerance = 1e-3;

    public static TheoryData<string> FullRigs => FactTable.Ids("full-rigs.txt");

    public static TheoryData<string> ToneSettings => FactTable.Ids("tone-settings.txt");

    public static TheoryData<string> VolumeSettings => FactTable.Ids("volume-settings.txt");

    public static TheoryData<string> TrebleBleeds => FactTable.Ids("treble-bleeds.txt");

    [Theory]
    [MemberData(nameof(FullRigs))]
    public void FullRig_AtEveryFrequency_HasTheLevelOfTheTable(string id)
    {
        var row = FactTable.Row("full-rigs.txt", id);

        CompareLevels(row, FullRig(id));
        ComparePeak(row, FullRig(id));
    }

    [Theory]
    [MemberData(nameof(ToneSettings))]
    public void ToneSetting_AtEveryFrequency_HasTheLevelOfTheTable(string id)
    {
        var row = FactTable.Row("tone-settings.txt", id);
        var words = row["circuit"].Replace(",", "", StringComparison.Ordinal).Split(' ');
        var bench = Rigs.Of(rig: words[0], nanofarads: words[1], tone: Number(words[^1]));

        CompareLevels(row, bench);
        ComparePeak(row, bench);
    }

    [Theory]
    [MemberData(nameof(VolumeSettings))]
    public void VolumeSetting_AtEveryFrequency_HasTheLevelOfTheTable(string id)
    {
        var row = FactTable.Row("volume-settings.txt", id);
        var bench = Rigs.Of(row["rig"], row.Number("x"), nanofarads: "22", isToneAfter: row["tone"] == "after");

        CompareLevels(row, bench);

        // The frequency where half the power of 100 Hz is left, given to four figures.
        var corner = row.Number("f-3dB");
        double[] around = bench.Decibels(100, corner * 0.999, corner * 1.001);
        Assert.InRange(10 * Math.Log10(0.5), around[2] - around[0], around[1] - around[0]);
    }

    [Theory]
    [MemberData(nameof(TrebleBleeds))]
    public void TrebleBleed_AtEveryFrequency_HasTheLevelOfTheTable(string id)
    {
        var row = FactTable.Row("treble-bleeds.txt", id);
        var bleed = row["bleed"] switch
        {
            "none" => "",
            "1 nF" => "cap c 1n from vol.3 to vol.2",
            "150 kΩ ∥ 1 nF" => "cap c 1n from vol.3 to vol.2; resistor r 150k from vol.3 to vol.2",
            "130 kΩ + 1.2 nF" => "metal m; cap c 1.2n from vol.3 to m; resistor r 130k from m to vol.2",
            var other => throw new InvalidOperationException(other),
        };

        CompareLevels(row, Rigs.Of(row["rig"], row.Number("x"), nanofarads: "22", bleed: bleed));
    }

    private static Bench FullRig(string id)
    {
        const string Pair =
            "pickup a single-coil dcr=4k l=3H c=200p; pickup b single-coil dcr=4k l=3H c=200p; a.ground ~ vol.1";
        const string Equal = Rigs.SingleCoil + "; pickup bridge single-coil dcr=6k l=2.5H c=100p eddy=1M";
        const string Unequal = Rigs.SingleCoil + "; pickup bridge single-coil dcr=7k l=3.0H c=100p eddy=1M";
        const string Parallel = "neck.hot ~ bridge.hot ~ vol.3; neck.ground ~ bridge.ground ~ vol.1";
        const string Series = "neck.hot ~ vol.3; neck.ground ~ bridge.hot; bridge.ground ~ vol.1";
        return id switch
        {
            "FR-01" => Rigs.Of("S"),
            "FR-02" => Rigs.Of("S", nanofarads: "22"),
            "FR-03" => Rigs.Of("H"),
            "FR-04" => Rigs.Of("H", nanofarads: "22"),
            "FR-05" => Rigs.WithPickups(Pair, "500k", "a.hot ~ vol.3", nanofarads: "22"),
            "FR-06" => Rigs.WithPickups(
                Pair.Replace("a.ground ~ vol.1", "a.ground ~ b.hot", StringComparison.Ordinal),
                "500k",
                "a.hot ~ vol.3; b.ground ~ vol.1",
                nanofarads: "22"
            ),
            "FR-07" => Rigs.WithPickups(Pair, "500k", "a.hot ~ b.hot ~ vol.3; b.ground ~ vol.1", nanofarads: "22"),
            "FR-08" => LossInside(300e3),
            "FR-09" => LossInside(1e6),
            "FR-10" => Rigs.WithPickups(Equal, "250k", Parallel, nanofarads: "22"),
            "FR-11" => Rigs.WithPickups(Equal, "250k", Series, nanofarads: "22"),
            "FR-12" => Rigs.WithPickups(Unequal, "250k", Parallel, nanofarads: "22"),
            "FR-13" => Rigs.WithPickups(Unequal, "250k", Series, nanofarads: "22"),
            "FR-14" => Rigs.WithPickups(
                Unequal,
                "250k",
                "neck.hot ~ bridge.ground ~ vol.3; neck.ground ~ bridge.hot ~ vol.1",
                nanofarads: "22"
            ),
            _ => throw new InvalidOperationException(id),
        };
    }

    /// <summary>Model B: the loss lies across the inductance alone; 600 pF and 200 kΩ across the coil.</summary>
    private static Bench LossInside(double eddyOhms)
    {
        var circuit = Bench
            .Of("pickup neck single-coil dcr=6k l=2.5H c=100p; jack out; neck.hot ~ out.tip; neck.ground ~ out.sleeve")
            .Circuit;
        var coil = (Coil)circuit.Elements[0] with { EddyOhms = eddyOhms, IsEddyInside = true };
        return new Bench(circuit with { Elements = [coil] }).Into(500e-12, 200e3);
    }

    private static void CompareLevels(FactRow row, Bench bench)
    {
        foreach (
            var column in row.Columns.Where(column => double.TryParse(column, CultureInfo.InvariantCulture, out _))
        )
        {
            var actual = bench.Decibels(Number(column))[0];
            Assert.True(
                Math.Abs(actual - row.Number(column)) <= DecibelTolerance,
                $"{row.Id} at {column} Hz: {actual} dB, {row[column]} in the table"
            );
        }
    }

    private static void ComparePeak(FactRow row, Bench bench)
    {
        var peak = Resonance.Find(bench.Response());
        if (!row.IsNumber("peak"))
        {
            Assert.Null(peak);
            return;
        }

        Assert.NotNull(peak);
        Assert.InRange(peak.Hertz / row.Number("peak"), 1 - PeakTolerance, 1 + PeakTolerance);
        Assert.Equal(row.Number("height"), peak.Decibels, DecibelTolerance);
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
