using System.Globalization;
using WireText.Circuits;
using WireText.Electrical.Sound;
using WireText.Electrical.Studies;
using WireText.Tests.Output;

namespace WireText.Tests.Electrical.Studies;

/// <summary>A circuit with two jacks, at each of them.</summary>
public class JackStudyTests
{
    /// <summary>
    /// A lever that sends each pickup to a jack of its own (1), both to the first (2), or both to the second (3). A resistor
    /// leaks between the two, so that what hangs on the other side is seen at each jack.
    /// </summary>
    private const string TwoJacks =
        "pickup neck single-coil dcr=6.1k l=2.15H c=115p wind=cw magnet=north; "
        + "pickup bridge single-coil dcr=7.3k l=2.8H c=120p wind=cw magnet=north; "
        + "switch sel lever-3way; pot vol 250k linear; pot gain 500k linear; jack main mono; jack second mono; "
        + "resistor mix 470k from vol.3 to gain.3; "
        + "neck.hot ~ sel.A0; sel.A1 ~ vol.3; sel.A2 ~ vol.3; sel.A3 ~ gain.3; "
        + "bridge.hot ~ sel.B0; sel.B1 ~ gain.3; sel.B2 ~ vol.3; sel.B3 ~ gain.3; "
        + "vol.2 ~ main.tip; gain.2 ~ second.tip; neck.ground ~ vol.case; bridge.ground ~ vol.case; vol.1 ~ vol.case; "
        + "gain.1 ~ gain.case; gain.case ~ vol.case; vol.case ~ main.sleeve; vol.case ~ second.sleeve";

    [Fact]
    public void Jacks_OfACircuitWithOne_AreTheStudyItself()
    {
        var study = Study.Of(
            Bench.Of("pickup p single-coil; jack out; p.hot ~ out.tip; p.ground ~ out.sleeve").Circuit
        )!;

        Assert.Same(study, Assert.Single(study.Jacks));
        Assert.Same(study.Positions, study.PositionsAtJacks);
        Assert.Null(study.Circuit.JackToName());
    }

    [Fact]
    public void Jacks_WithOneThatNothingIsWiredTo_LeaveItOut()
    {
        var circuit = Bench
            .Of("pickup p single-coil; jack out; jack spare; p.hot ~ out.tip; p.ground ~ out.sleeve")
            .Circuit;

        Assert.Equal(2, circuit.Outputs.Length);
        Assert.Single(Study.Of(circuit)!.Jacks);
    }

    [Fact]
    public void PositionsAtJacks_OfTwo_TellEachAgainstTheLoudestOfAll()
    {
        var study = Study.Of(Bench.Of(TwoJacks).Circuit)!;

        var rows = study.PositionsAtJacks.Rows;

        Assert.Equal(
            study.Jacks.SelectMany(jack => jack.Positions.Rows).Select(row => row.State),
            rows.Select(row => row.State)
        );
        Assert.Equal(
            ["main", "main", "main", "second", "second", "second"],
            rows.Select(row => study.Circuit.Parts[row.Jack!.Value].Name)
        );
        Assert.Equal(0, rows.Max(row => row.LevelDecibels));
        Assert.Equal(
            rows[0].Analysis.Sound.LevelDecibels - rows[3].Analysis.Sound.LevelDecibels,
            rows[0].LevelDecibels!.Value - rows[3].LevelDecibels!.Value,
            1e-9
        );
    }

    /// <summary>The decks are wired by hand from the words above; only a jack's own amplifier is on it.</summary>
    [SkippableTheory]
    [InlineData("main", "1", 10)]
    [InlineData("main", "2", 10)]
    [InlineData("main", "3", 10)]
    [InlineData("main", "1", 5)]
    [InlineData("second", "1", 10)]
    [InlineData("second", "2", 10)]
    [InlineData("second", "3", 10)]
    [InlineData("second", "1", 5)]
    [InlineData("second", "3", 5)]
    public void Levels_AtEachJack_AreThoseOfNgspice(string jack, string position, double gain)
    {
        Ngspice.SkipWhereAbsent();
        var bench = Bench.Of(TwoJacks).At(string.Create(CultureInfo.InvariantCulture, $"sel={position} gain={gain}"));
        var study = Study.Of(bench.Circuit)!.Jacks.Single(one => one.Circuit.JackToName() == jack);

        var referee = Ngspice.Run([new Ngspice.Deck(DeckOf(jack, position, gain), "tip", ["vn", "vb"])])[0];

        var there = study.Analyse(bench.State);
        for (var i = 0; i < referee[0].Length; i++)
        {
            var (hertz, ofNeck) = referee[0][i];
            var expected = Decibels.Of((ofNeck + referee[1][i].Volts).Magnitude);
            Assert.Equal(expected, there.DecibelsAt(hertz) ?? double.NaN, 0.01);
        }
    }

    private static string DeckOf(string jack, string position, double gain)
    {
        var neck = position == "3" ? "second" : "main";
        var bridge = position == "2" ? "main" : "second";
        var top = string.Create(CultureInfo.InvariantCulture, $"{500_000 * (10 - gain) / 10}");
        var low = string.Create(CultureInfo.InvariantCulture, $"{500_000 * gain / 10}");
        string[] lines =
        [
            "* two jacks",
            "vn en 0 dc 0 ac 1",
            "rn en ln 6100",
            $"ln ln {neck} 2.15",
            $"cn {neck} 0 115p",
            "vb eb 0 dc 0 ac 1",
            "rb eb lb 7300",
            $"lb lb {bridge} 2.8",
            $"cb {bridge} 0 120p",
            "rvol main 0 250k",
            "rmix main second 470k",
            .. gain == 10 ? new[] { "rgain second 0 500k" } : [$"rtop second wiper {top}", $"rlow wiper 0 {low}"],
            $"vsee tip {(jack == "main" ? "main" : gain == 10 ? "second" : "wiper")} 0",
            "ccable tip 0 470p",
            "ramp tip 0 1meg",
        ];
        return string.Join('\n', lines) + "\n";
    }
}
