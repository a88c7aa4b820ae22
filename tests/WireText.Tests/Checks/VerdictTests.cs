using WireText.Circuits;
using WireText.Testing;
using WireText.Tests.Electrical;
using WireText.Text;

namespace WireText.Tests.Checks;

/// <summary>What the checks say of the thirty-five circuits of <see cref="RightVerdicts"/>.</summary>
public class VerdictTests
{
    private static readonly Dictionary<int, string> Expected = new()
    {
        [1] = "mute",
        [2] = "mute-opens-hot",
        [3] = "mute-upstream",
        [4] = "mute-at-rest",
        [5] = "dead-position",
        [6] = "dead-position",
        [7] = "shorted-output",
        [8] = "hanging-coil",
        [9] = "shorted-output",
        [10] = "out-of-phase",
        [12] = "out-of-phase",
        [14] = "hot-case",
        [16] = "hanging-coil",
        [19] = "volumes-linked",
        [24] = "coil-shorted",
        [26] = "tip-sleeve-swapped",
        [27] = "tone-without-capacitor",
        [28] = "backwards-control",
        [29] = "volume-not-silent",
        [30] = "backwards-control",
        [35] = "battery-drain",
    };

    public static TheoryData<int> Numbers => Rows.Of(Enumerable.Range(1, RightVerdicts.Count));

    [Theory]
    [MemberData(nameof(Numbers))]
    public void Circuit_OfTheThirtyFive_HasItsVerdictAndNoOther(int number)
    {
        var found = Find(RightVerdicts.Of(number).Circuit);

        Assert.Equal(Expected.TryGetValue(number, out var id) ? [id] : [], found.Select(finding => finding.Id));
    }

    /// <summary>The second is what puts the coils in series in another position: taken out, that one would be silent.</summary>
    [Theory]
    [InlineData(7, "sel.A3", "out.sleeve", "take out")]
    [InlineData(9, "sp.A1", "sp.B1", "move one end of")]
    public void ShortedPosition_WithManyWiresOnItsWay_BlamesTheOneThatIsWrong(
        int number,
        string from,
        string to,
        string mend
    )
    {
        var finding = Assert.Single(Find(RightVerdicts.Of(number).Circuit));

        Assert.Equal([Subject.Lug(from), Subject.Lug(to)], finding.Subjects.Take(2));
        Assert.Contains($"{mend}: wire {from} to {to}", finding.Help, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("off")]
    [InlineData("Mute")]
    [InlineData("standby")]
    public void ShortedPosition_WithANameThatMeansSilence_IsRight(string name)
    {
        var circuit = RightVerdicts.Of(7).Circuit;
        var sel = circuit.Controls[0];
        var named = sel with { Positions = sel.Positions.SetItem(2, sel.Positions[2] with { Name = name }) };

        Assert.Empty(Find(circuit with { Controls = circuit.Controls.SetItem(0, named) }));
    }

    [Fact]
    public void MuteThatOpens_IsMendedByThreeLinesAndAnotherButton()
    {
        var finding = Assert.Single(Find(RightVerdicts.Of(2).Circuit));

        Assert.Equal(
            "lift its wires and write: wire vol.2 to out.tip black; wire mute.1 to out.tip white; "
                + "wire mute.2 to out.sleeve black; button mute momentary",
            finding.Help
        );
    }

    [Fact]
    public void MuteUpstream_OfALinearVolume_LeavesAQuarterOfItsTrackAtTheJack()
    {
        // Two halves of 250 kΩ side by side, one of them by way of the short: 62.5 kΩ.
        Assert.Contains(
            "leaves 62.5 kΩ at the jack",
            Assert.Single(Find(RightVerdicts.Of(3).Circuit)).Message,
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData(5, "nothing is heard at sel=2: only 250 kΩ stays on the jack")]
    [InlineData(6, "nothing is heard at sel=2: the jack floats")]
    public void DeadPosition_OfASwitchThatIsOffInTheMiddle_SaysWhatIsLeftAtTheJack(int number, string message)
    {
        var finding = Assert.Single(Find(RightVerdicts.Of(number).Circuit));

        Assert.Equal(message, finding.Message);
        Assert.Equal([Subject.Position("sel", "2")], finding.Subjects.AsEnumerable());
    }

    [Theory]
    [InlineData(8, "'neck' hangs on the signal by 'neck.hot' at sp=2, and hums")]
    [InlineData(16, "'hb.n' hangs on the signal by 'hb.n-start' at cut=2, and hums")]
    public void HangingCoil_OfASwitch_NamesTheLeadAndThePosition(int number, string message) =>
        Assert.Equal(message, Assert.Single(Find(RightVerdicts.Of(number).Circuit)).Message);

    [Fact]
    public void HotCase_BehindAPhaseSwitch_NamesThePositionThatLiftsIt()
    {
        var finding = Assert.Single(Find(RightVerdicts.Of(14).Circuit));

        Assert.Equal([Subject.Lug("cov.cover"), Subject.Position("ph", "2")], finding.Subjects.AsEnumerable());
    }

    [Fact]
    public void GroundThroughAPart_OnTheGroundSideOfTheOnlyPickup_IsSaid()
    {
        var bench = Bench.Of(
            """
            pickup neck single-coil
            splice back neck.ground
            pot vol 250k linear
            cap lo 100n from back to vol.case
            jack out
            neck.hot ~ vol.3; vol.2 ~ out.tip; vol.1 ~ vol.case; vol.case ~ out.sleeve
            """
        );

        Assert.Equal(["ground-through-part"], Find(bench.Circuit).Select(finding => finding.Id));
    }

    private static List<Finding> Find(Circuit circuit) => CircuitEdits.FindApartFromBuilding(circuit);
}
