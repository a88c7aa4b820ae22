using WireText.Circuits;
using WireText.Electrical.Forms;
using WireText.Electrical.Sound;
using WireText.Parts;
using WireText.Testing;

namespace WireText.Tests.Electrical;

/// <summary>Windings, tapers and switches against tables of check values; the first lines of each table name its source.</summary>
public class PartFactTests
{
    public static TheoryData<string> Windings => FactTable.Ids("windings.txt");

    public static TheoryData<string> Tapers => FactTable.Ids("tapers.txt");

    public static TheoryData<string> Switches => FactTable.Ids("switches.txt");

    public static TheoryData<string> SeriesParallel => FactTable.Ids("series-parallel.txt");

    public static TheoryData<string> SeriesParallelMeter => FactTable.Ids("series-parallel-meter.txt");

    [Theory]
    [MemberData(nameof(Windings))]
    public void Winding_OfATable_HasItsResistance(string id)
    {
        var row = FactTable.Row("windings.txt", id);

        var coil = Bench
            .CompileText(
                $"pickup p single-coil turns={row["turns"]} awg={row["awg"]} turn-length={row["turn in mm"]}mm\n"
            )
            .Elements.OfType<Coil>()
            .Single();

        // The table has four figures.
        Assert.InRange(coil.Ohms / row.Number("ohms"), 0.9998, 1.0002);
    }

    [Theory]
    [MemberData(nameof(Tapers))]
    public void Taper_OfATable_HasItsFractionThere(string id)
    {
        var row = FactTable.Row("tapers.txt", id);

        var taper = TaperReader.Read(row["taper"], out _)!;

        Assert.Equal(row.Number("fraction"), taper.FractionAt(row.Number("travel")), 0.0001);
    }

    [Theory]
    [InlineData("TP-05")]
    public void Taper_MirroredAndItsOwn_AddUpToOne(string id)
    {
        var (rising, falling) = (TaperReader.Read("audio-10", out _)!, TaperReader.Read("reverse-audio-10", out _)!);

        Every.Item(
            Enumerable.Range(0, 101).Select(step => step / 10.0),
            travel => Assert.True(Math.Abs(falling.FractionAt(travel) + rising.FractionAt(10 - travel) - 1) < 1e-12, id)
        );
    }

    [Theory]
    [MemberData(nameof(Switches))]
    public void Switch_OfATable_ClosesItsPairs(string id)
    {
        var row = FactTable.Row("switches.txt", id);

        var positions = StandardParts.Catalogue.Find(row["kind"], row["model"])!.Controls.Single().Positions;

        Assert.Equal(
            row["positions"],
            string.Join(
                " / ",
                positions.Select(position =>
                    position.Closed.IsEmpty
                        ? "none"
                        : string.Join(' ', position.Closed.Select(group => string.Join('+', group.Terminals)))
                )
            )
        );
    }

    [Theory]
    [MemberData(nameof(SeriesParallel))]
    public void SwitchForSeriesAndParallel_OfATable_DoesInEachPositionWhatItSays(string id)
    {
        var row = FactTable.Row("series-parallel.txt", id);
        foreach (var position in new[] { "1", "2", "3" }.Where(position => row["position " + position] != "-"))
        {
            var bench = Rig(row["model"], "x.hot ~ out.tip; sp.B2 ~ out.tip; sp.A2 ~ out.sleeve; y.ground ~ out.sleeve")
                .At("sp=" + position);

            var there = bench.Sound().Outcome switch
            {
                Outcome.Short => "silence",
                Outcome.Open => "open",
                _ => FormText.ForPeople(bench.Circuit, bench.Form()),
            };

            Assert.Equal(row["position " + position], there);
        }
    }

    [Theory]
    [MemberData(nameof(SeriesParallelMeter))]
    public void Ohmmeter_BehindAVolumeOf500k_ReadsTheTable(string id)
    {
        var row = FactTable.Row("series-parallel-meter.txt", id);

        var bench = Rig(
                "dpdt-on-on-on-a-first",
                "pot vol 500k linear; x.hot ~ vol.3; sp.B2 ~ vol.3; sp.A2 ~ vol.case; y.ground ~ vol.case; vol.1 ~ vol.case; vol.2 ~ out.tip; vol.case ~ out.sleeve"
            )
            .At("sp=" + row["position"]);

        Assert.InRange(bench.Reading().Ohms / row.Number("ohms"), 0.9995, 1.0005);
    }

    private static Bench Rig(string model, string wires) =>
        Bench.Of(
            $"pickup x single-coil dcr=4k l=2H c=100p wind=cw magnet=north; pickup y single-coil dcr=4k l=2H c=100p wind=ccw magnet=south; "
                + $"switch sp {model}; jack out; x.ground ~ sp.A0; y.hot ~ sp.B0; sp.A1 ~ sp.B1; {wires}"
        );
}
