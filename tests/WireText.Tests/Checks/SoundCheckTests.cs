using WireText.Tests.Electrical;
using WireText.Text;

namespace WireText.Tests.Checks;

/// <summary>What the checks of sound and of controls say, and what they leave alone.</summary>
public class SoundCheckTests
{
    private const string Ground =
        "neck.ground ~ bridge.ground ~ vol.1 ~ vol.case; vol.case ~ out.sleeve; vol.2 ~ out.tip";

    /// <summary>Winding and magnet of the second coil; the first is clockwise and north. PH rows of a published truth table.</summary>
    [Theory]
    [InlineData("wind=cw magnet=north", "bridge.hot", null)] // PH-01: in, hum adds
    [InlineData("wind=cw magnet=north", "bridge.ground", "turn the magnet")] // PH-02: out, hum cancels
    [InlineData("wind=cw magnet=south", "bridge.hot", "exchange 'bridge.ground' and 'bridge.hot'")] // PH-03: out, hum adds
    [InlineData("wind=cw magnet=south", "bridge.ground", null)] // PH-04: in, hum cancels
    [InlineData("wind=ccw magnet=north", "bridge.hot", "turn the magnet")] // PH-05: out, hum cancels
    [InlineData("wind=ccw magnet=north", "bridge.ground", null)] // PH-06: in, hum adds
    [InlineData("wind=ccw magnet=south", "bridge.hot", null)] // PH-07: in, hum cancels
    [InlineData("wind=ccw magnet=south", "bridge.ground", "exchange 'bridge.ground' and 'bridge.hot'")] // PH-08: out, adds
    public void TwoCoilsInParallel_ByTheTruthTableOfPhaseAndHum_AreMendedWhereBothCanBe(
        string coil,
        string hot,
        string? help
    )
    {
        var other = hot == "bridge.hot" ? "bridge.ground" : "bridge.hot";
        var found = Find(
            $"""
            pickup neck single-coil wind=cw magnet=north
            pickup bridge single-coil {coil}
            pot vol 250k linear
            jack out
            neck.hot ~ {hot} ~ vol.3; neck.ground ~ {other} ~ vol.1 ~ vol.case; vol.case ~ out.sleeve; vol.2 ~ out.tip
            """
        );

        Assert.Equal(help is null ? [] : ["out-of-phase"], found.Select(finding => finding.Id));
        Assert.StartsWith(help ?? "", found.SingleOrDefault()?.Help ?? "", StringComparison.Ordinal);
    }

    [Fact]
    public void OutOfPhase_OfThreePickups_TurnsTheOneThatIsAgainstTheOthers()
    {
        var found = Assert.Single(
            Find(
                """
                pickup neck single-coil wind=cw magnet=north
                pickup middle single-coil wind=cw magnet=north
                pickup bridge single-coil wind=cw magnet=north
                switch sel lever-5way
                pot vol 250k linear
                jack out
                neck.hot ~ sel.A3; middle.ground ~ sel.A2; bridge.hot ~ sel.A1; sel.A0 ~ vol.3
                neck.ground ~ middle.hot ~ bridge.ground ~ vol.1 ~ vol.case; vol.case ~ out.sleeve; vol.2 ~ out.tip
                """
            )
        );

        Assert.Equal("out-of-phase", found.Id);
        Assert.Equal(Subject.Part("middle"), found.Subjects[0]);
    }

    [Fact]
    public void OutOfPhase_WhereWindingsAreNotStated_SaysThatItIsAssumed()
    {
        var found = Assert.Single(
            Find(
                $"""
                pickup neck single-coil
                pickup bridge single-coil
                pot vol 250k linear
                jack out
                neck.hot ~ bridge.ground ~ vol.3; neck.ground ~ bridge.hot ~ vol.1 ~ vol.case; vol.case ~ out.sleeve; vol.2 ~ out.tip
                """
            )
        );

        Assert.Contains("wind= or magnet= is not stated", found.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void OutOfPhase_ThatIsClaimed_IsLeftAlone() =>
        Assert.Empty(
            Find(
                """
                pickup neck single-coil wind=cw magnet=north
                pickup bridge single-coil wind=ccw magnet=south
                pot vol 250k linear
                jack out
                neck.hot ~ bridge.ground ~ vol.3; neck.ground ~ bridge.hot ~ vol.1 ~ vol.case; vol.case ~ out.sleeve; vol.2 ~ out.tip
                expect rest: reversed neck parallel bridge
                """
            )
        );

    [Fact]
    public void VolumesLinked_OfTwoVolumes_NamesBothInOneNote()
    {
        var found = Assert.Single(Find(RightVerdicts.Of(19)));

        Assert.Equal(Severity.Note, found.Severity);
        Assert.Equal(
            [Subject.Part("v2"), Subject.Part("vol")],
            found.Subjects.OrderBy(subject => subject.Name, StringComparer.Ordinal)
        );
    }

    [Fact]
    public void VolumeNotSilent_WithoutItsGround_SaysWhatIsLeftAndGivesTheLine()
    {
        var found = Assert.Single(Find(RightVerdicts.Of(29)));

        // 1 MΩ behind 250 kΩ alone is −1.9 dB; with the cable, two solvers and ngspice gave −2.0 dB for circuit 29.
        Assert.Equal("'vol' does not silence at 0: −2.0 dB is left", found.Message);
        Assert.StartsWith("ground the free end: wire vol.1 to vol.case black", found.Help, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(28, "'tone' works backwards: it is brightest at 0", "move what is on 'tone.3' to 'tone.1'")]
    [InlineData(30, "'vol' works backwards: it is loudest at 0", "exchange what is on 'vol.1' and 'vol.3'")]
    public void BackwardsControl_OfTheThirtyFiveCircuits_SaysWhichWireToMove(int number, string message, string help)
    {
        var found = Assert.Single(Find(RightVerdicts.Of(number)));

        Assert.Equal(message, found.Message);
        Assert.StartsWith(help, found.Help, StringComparison.Ordinal);
    }

    [Fact]
    public void BackwardsControl_OfAPotThatTurnsBack_IsLeftAlone() =>
        Assert.Empty(
            Find(
                """
                pickup neck single-coil
                pot vol 250k linear turns-back
                jack out
                neck.hot ~ vol.1; vol.2 ~ out.tip; neck.ground ~ vol.3 ~ vol.case ~ out.sleeve
                """
            )
        );

    [Fact]
    public void PositionName_OfExchangedNames_GivesThemInTheOrderHeard()
    {
        var found = Assert.Single(
            Find(
                $"""
                pickup neck single-coil
                pickup bridge single-coil
                switch sel toggle-3way
                positions sel bridge both neck
                pot vol 250k linear
                jack out
                neck.hot ~ sel.A1; bridge.hot ~ sel.B1; sel.A0 ~ sel.B0 ~ vol.3
                {Ground}
                """
            )
        );

        Assert.Equal("position-name", found.Id);
        Assert.EndsWith("positions sel neck both bridge", found.Help, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("neck+bridge", true)]
    [InlineData("both", true)]
    [InlineData("warm", true)]
    [InlineData("neck", false)]
    [InlineData("neck-only", false)]
    public void PositionName_OfBothPickups_FitsWhenItNamesBoth(string name, bool fits)
    {
        var found = Find(
            $"""
            pickup neck single-coil
            pickup bridge single-coil
            switch sel toggle-3way
            positions sel one {name} three
            pot vol 250k linear
            jack out
            neck.hot ~ sel.A1; bridge.hot ~ sel.B1; sel.A0 ~ sel.B0 ~ vol.3
            {Ground}
            """
        );

        Assert.Equal(fits ? [] : ["position-name"], found.Select(finding => finding.Id));
    }

    /// <summary>The third position lets one coil of the bridge be heard; the names are common practice.</summary>
    [Theory]
    [InlineData("bridge bridge-cut", true)]
    [InlineData("bridge bridge-warm", true)] // no word says that it is cut, nor that it is not
    [InlineData("bridge neck-off", true)]
    [InlineData("bridge neck-warm", false)]
    [InlineData("bridge-split bridge-warm", false)] // here it is the other way round
    [InlineData("both bridge-cut", false)] // one is heard
    [InlineData("bridge-only bridge-cut", true)]
    [InlineData("neck-only bridge-cut", false)]
    public void PositionName_WithOtherWords_AsksForThePickupsItNames(string names, bool fits)
    {
        var found = Find(
            $"""
            pickup neck single-coil
            pickup bridge humbucker-4
            splice link bridge.n-finish bridge.s-finish
            switch sel lever-3way
            positions sel neck {names}
            pot vol 250k linear
            jack out
            neck.hot ~ sel.A1; bridge.n-start ~ sel.A2; sel.A2 ~ sel.A3; sel.A0 ~ vol.3; link ~ sel.B3; sel.B0 ~ vol.case
            neck.ground ~ bridge.s-start ~ vol.1 ~ vol.case; vol.case ~ out.sleeve; vol.2 ~ out.tip
            """
        );

        Assert.Equal(fits ? [] : ["position-name"], found.Select(finding => finding.Id));
    }

    [Theory]
    [InlineData("", true)]
    [InlineData("positions lift both bridge", false)]
    [InlineData("positions lift both bridge-only", false)]
    [InlineData("positions lift both only-bridge", false)]
    [InlineData("expect lift=2: bridge", false)]
    public void PickupShorted_ByASwitch_IsSaidUnlessItIsMeant(string line, bool isSaid)
    {
        var found = Find(
            $"""
            pickup neck single-coil wind=cw magnet=north
            pickup bridge single-coil wind=ccw magnet=south
            switch lift spdt
            splice link neck.ground bridge.hot
            pot vol 250k linear
            jack out
            neck.hot ~ vol.3; link ~ lift.A0; vol.3 ~ lift.A2; bridge.ground ~ vol.1 ~ vol.case; vol.case ~ out.sleeve; vol.2 ~ out.tip
            {line}
            """
        );

        Assert.Equal(isSaid ? ["pickup-shorted"] : [], found.Select(finding => finding.Id));
    }

    /// <summary>Of a centre that is dead either line is enough: the claim, or the allowance.</summary>
    [Theory]
    [InlineData("", "dead-position")]
    [InlineData("expect sel=2: dead", "")]
    [InlineData("allow dead-position at sel \"meant\"", "")]
    [InlineData("expect sel=2: silence", "dead-position expect")]
    [InlineData("expect sel=2: open", "expect")]
    [InlineData("expect sel=1: dead", "dead-position expect")]
    public void DeadPosition_ThatIsClaimedOrAllowed_IsMeant(string line, string ids)
    {
        var circuit = Bench.CompileText(
            Bench.Expand(
                $"""
                pickup neck single-coil
                pickup bridge single-coil
                switch sel spdt-on-off-on
                pot vol 250k linear
                jack out
                neck.hot ~ sel.A1; bridge.hot ~ sel.A2; sel.A0 ~ vol.3
                {Ground}
                """
            ) + line
        );

        Assert.Equal(
            ids.Split(' ', StringSplitOptions.RemoveEmptyEntries),
            CircuitEdits.FindApartFromBuilding(circuit).Select(finding => finding.Id).Order()
        );
    }

    [Fact]
    public void NeverHeard_OfTwoPickupsBehindOneMissingWire_IsOneFindingThatNamesTheSwitch()
    {
        var found = Find(
            """
            pickup neck single-coil
            pickup bridge single-coil
            pickup middle single-coil
            switch sel lever-5way
            pot vol 250k linear
            pot tone 250k linear
            cap dark 22n from tone.1 to tone.case
            jack out
            neck.hot ~ sel.A3; bridge.hot ~ sel.A1; sel.A0 ~ tone.2; middle.hot ~ vol.3
            neck.ground ~ middle.ground ~ bridge.ground ~ vol.1 ~ vol.case; vol.case ~ out.sleeve; vol.2 ~ out.tip
            """
        );

        var never = Assert.Single(found, finding => finding.Id == "never-heard");
        Assert.Equal(
            "'neck' and 'bridge' are heard in no position: 'neck.hot' and 'bridge.hot' come only to 'sel'",
            never.Message
        );
    }

    [Fact]
    public void InertControl_OfAPhaseSwitchOnTheOnlyPickup_IsSaid()
    {
        var found = Assert.Single(
            Find(
                """
                pickup neck single-coil
                switch ph dpdt
                pot vol 250k linear
                jack out
                neck.hot ~ ph.A0; neck.ground ~ ph.B0; ph.A1 ~ ph.B2 ~ vol.3; ph.A2 ~ ph.B1 ~ vol.case
                vol.1 ~ vol.case; vol.case ~ out.sleeve; vol.2 ~ out.tip
                """
            )
        );

        Assert.Equal("inert-control", found.Id);
    }

    /// <summary>A push-pull whose switch is left alone is ordinary work, until the text says what its positions are called.</summary>
    [Theory]
    [InlineData("", null)]
    [InlineData("positions vol.pull whole cut", "inert-control")]
    public void InertControl_OfAPullWithoutWires_IsSaidWhereItsPositionsHaveNames(string line, string? expected)
    {
        var found = Find(
            $"""
            pickup neck single-coil
            pot vol 250k linear push-pull
            jack out
            neck.hot ~ vol.3; neck.ground ~ vol.case; vol.1 ~ vol.case; vol.case ~ out.sleeve; vol.2 ~ out.tip
            {line}
            """
        );

        Assert.Equal(expected, found.SingleOrDefault()?.Id);
    }

    [Fact]
    public void HumPartner_OfACutThatLeavesTheWrongCoil_NamesTheOther()
    {
        var found = Assert.Single(
            Find(
                """
                pickup hb humbucker-4
                pickup neck single-coil wind=cw magnet=north
                switch cut spdt
                splice link hb.n-finish hb.s-finish
                pot vol 250k linear
                jack out
                hb.n-start ~ vol.3; link ~ cut.A0; cut.A2 ~ vol.case; hb.s-start ~ hb.shield ~ vol.case; neck.hot ~ vol.3; neck.ground ~ vol.case
                vol.1 ~ vol.case; vol.case ~ out.sleeve; vol.2 ~ out.tip
                """
            )
        );

        Assert.Equal((Severity.Note, "hum-partner"), (found.Severity, found.Id));
        Assert.StartsWith("leave 'hb.s' instead", found.Help, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("bat.minus ~ out.ring", null)]
    [InlineData("bat.minus ~ out.sleeve", "battery-drain")]
    [InlineData("switch pwr spdt; positions pwr live off; bat.minus ~ pwr.A0; pwr.A1 ~ out.sleeve", "battery-drain")]
    public void Battery_ByWhatSwitchesItsMinus_IsDrawnWithoutAPlugOrNot(string minus, string? id)
    {
        var found = Find(
            $"pickup neck single-coil; preamp pre buffer; battery bat 9V; jack out stereo; neck.hot ~ pre.in; "
                + $"neck.ground ~ pre.common; pre.common ~ out.sleeve; pre.out ~ out.tip; bat.plus ~ pre.plus; {minus}"
        );

        Assert.Equal(id is null ? [] : [id], found.Select(finding => finding.Id));
        Assert.Equal(
            minus.StartsWith("switch", StringComparison.Ordinal) ? Severity.Note : Severity.Error,
            found.FirstOrDefault()?.Severity ?? Severity.Error
        );
    }

    private static List<Finding> Find(string text) => Find(Bench.Of(text));

    private static List<Finding> Find(Bench bench) =>
        [.. CircuitEdits.FindApartFromBuilding(bench.Circuit).Where(finding => finding.Severity > Severity.Right)];
}
