using WireText.Electrical.Forms;
using WireText.Electrical.Situations;
using WireText.Electrical.Solving;
using WireText.Electrical.Sound;

namespace WireText.Tests.Electrical;

/// <summary>The thirty-five circuits of <see cref="RightVerdicts"/> with the figures and forms that were found for them.</summary>
public class RightVerdictTests
{
    private const double Kilo = 1e3;

    /// <summary>Circuit, settings, form as a person says it, reading in ohms (to three figures).</summary>
    public static TheoryData<int, string, string, double> Sounding =>
        new()
        {
            { 1, "mute=up", "neck", 6.24 * Kilo },
            { 2, "mute=up", "neck", 6.24 * Kilo },
            { 3, "mute=up", "neck", 6.24 * Kilo },
            { 4, "mute=down", "neck", 6.24 * Kilo },
            { 5, "sel=1", "neck", 6.24 * Kilo },
            { 5, "sel=3", "bridge", 7.00 * Kilo },
            { 6, "sel=1", "neck", 6.40 * Kilo },
            { 6, "sel=3", "bridge", 7.20 * Kilo },
            { 7, "sel=1", "neck", 6.24 * Kilo },
            { 7, "sel=2", "bridge", 7.00 * Kilo },
            { 8, "sp=1", "neck series bridge", 12.9 * Kilo },
            { 8, "sp=2", "bridge", 7.00 * Kilo },
            { 8, "sp=3", "neck parallel bridge", 3.34 * Kilo },
            { 9, "sp=1", "neck series bridge", 12.9 * Kilo },
            { 9, "sp=3", "neck parallel bridge", 3.34 * Kilo },
            { 10, "", "neck parallel bri2, out of phase", 3.34 * Kilo },
            { 11, "", "neck parallel bridge", 3.34 * Kilo },
            { 12, "", "neck parallel bridge, out of phase", 3.34 * Kilo },
            { 13, "ph=1 sel=1", "neck", 6.24 * Kilo },
            { 13, "ph=2 sel=1", "neck", 6.24 * Kilo },
            { 13, "ph=1 sel=2", "neck parallel bridge", 3.34 * Kilo },
            { 13, "ph=2 sel=2", "neck parallel bridge, out of phase", 3.34 * Kilo },
            { 13, "ph=1 sel=3", "bridge", 7.00 * Kilo },
            { 14, "ph=1", "bridge parallel cov", 3.34 * Kilo },
            { 14, "ph=2", "bridge parallel cov, out of phase", 3.34 * Kilo },
            { 15, "cut=1", "hb", 7.75 * Kilo },
            { 15, "cut=2", "hb.n", 3.94 * Kilo },
            { 16, "cut=1", "hb", 7.75 * Kilo },
            { 16, "cut=2", "hb.s", 3.94 * Kilo },
            { 17, "", "hb.n series hb.s shunted by 4.7k at −6.5 dB", 6.01 * Kilo },
            { 18, "", "hb.n series hb.s shunted by 22n", 7.75 * Kilo },
            { 19, "", "neck parallel bridge", 3.30 * Kilo },
            { 19, "vol=5", "neck at −23 dB parallel bridge", 6.31 * Kilo },
            { 20, "", "neck parallel bridge", 3.30 * Kilo },
            { 20, "vol=0", "bridge", 6.81 * Kilo },
            { 21, "", "neck through 22k parallel bridge through 22k", 13.6 * Kilo },
            { 22, "", "(hb.n parallel hx.n) series (hb.s parallel hx.s)", 4.12 * Kilo },
            { 24, "", "neck", 6.24 * Kilo },
            { 25, "", "neck through 100n", 250 * Kilo },
            { 26, "", "neck", 6.24 * Kilo },
            { 28, "", "neck, darkened by 22n", 6.24 * Kilo },
            { 28, "tone=0", "neck", 6.24 * Kilo },
            { 29, "vol=0", "neck", 256 * Kilo },
            { 30, "vol=5", "neck", 64.1 * Kilo },
            { 31, "", "neck", 12.2 * Kilo },
            { 32, "", "neck parallel bridge", 3.34 * Kilo },
            { 32, "mix=8", "neck at −16 dB parallel bridge", 0 },
            { 32, "mix=5", "neck at −23 dB parallel bridge", 0 },
            { 32, "mix=0", "bridge (a trace of neck, −29 dB)", 6.81 * Kilo },
            { 33, "", "neck parallel bridge through 4.7n, phase turns with frequency", 6.24 * Kilo },
            { 34, "sel=1", "bridge", 7.00 * Kilo },
            { 34, "sel=2", "neck", 6.24 * Kilo },
            { 34, "sel=3", "neck, darkened by 47n", 6.24 * Kilo },
        };

    /// <summary>Circuit, settings, outcome, reading in ohms; 0 where tip and sleeve are joined, −1 where nothing is read.</summary>
    public static TheoryData<int, string, Outcome, double> Silent =>
        new()
        {
            { 1, "mute=down", Outcome.Short, 0 },
            { 2, "mute=down", Outcome.Open, -1 },
            { 3, "mute=down", Outcome.Short, 0 },
            { 4, "mute=up", Outcome.Short, 0 },
            { 5, "sel=2", Outcome.Dead, 250 * Kilo },
            { 6, "sel=2", Outcome.Open, -1 },
            { 7, "sel=3", Outcome.Short, 0 },
            { 7, "sel=3 vol=5", Outcome.Dead, 62.5 * Kilo },
            { 9, "sp=2", Outcome.Short, 0 },
            { 19, "vol=0", Outcome.Short, 0 },
            { 20, "vol=0 v2=0", Outcome.Dead, 125 * Kilo },
            { 27, "tone=0", Outcome.Short, 0 },
            { 30, "", Outcome.Short, 0 },
        };

    /// <summary>Circuit, settings, residue of the hum in dB, its word.</summary>
    public static TheoryData<int, string, double, HumWord> Hums =>
        new()
        {
            { 8, "sp=1", -92, HumWord.Cancelled },
            { 8, "sp=3", -24.5, HumWord.Cancelled },
            { 10, "", 0, HumWord.Full },
            { 11, "", -24.5, HumWord.Cancelled },
            { 12, "", 0, HumWord.Full },
            { 15, "cut=2", 0, HumWord.Full },
            { 17, "", -10.4, HumWord.LeftOver },
            { 18, "", -37, HumWord.Cancelled },
        };

    [Theory]
    [MemberData(nameof(Sounding))]
    public void Circuit_WhereItSounds_HasTheFormAndReadingFound(int number, string settings, string form, double ohms)
    {
        var bench = RightVerdicts.Of(number).At(settings);

        Assert.Equal(Outcome.Sound, bench.Sound().Outcome);
        Assert.Equal(form, FormText.ForPeople(bench.Circuit, bench.Form()));
        if (ohms > 0)
        {
            AssertReads(ohms, bench);
        }
    }

    [Theory]
    [MemberData(nameof(Silent))]
    public void Circuit_WhereNothingSounds_IsSilentInTheWayFound(
        int number,
        string settings,
        Outcome outcome,
        double ohms
    )
    {
        var bench = RightVerdicts.Of(number).At(settings);

        Assert.Equal(outcome, bench.Sound().Outcome);
        Assert.Equal(FormKind.Nothing, bench.Form().Kind);
        switch (ohms)
        {
            case 0:
                Assert.Equal(Reading.Joined, bench.Reading());
                break;
            case < 0:
                Assert.Equal(Reading.None, bench.Reading());
                break;
            default:
                AssertReads(ohms, bench);
                break;
        }
    }

    [Theory]
    [MemberData(nameof(Hums))]
    public void Circuit_WithSeveralCoils_LeavesTheHumFound(int number, string settings, double residue, HumWord word)
    {
        var hum = RightVerdicts.Of(number).At(settings).Sound().Hum!;

        Assert.Equal(residue, hum.ResidueDecibels, Math.Abs(residue) is 24.5 or 10.4 ? 0.05 : 0.5);
        Assert.Equal(word, hum.Word);
    }

    [Theory]
    [InlineData(1, "", -0.3)]
    [InlineData(12, "", -23.5)]
    [InlineData(25, "", -0.3)]
    [InlineData(29, "vol=0", -2.0)]
    [InlineData(30, "vol=5", -6.8)]
    public void Circuit_AtRestOrTurned_HasTheLevelFound(int number, string settings, double decibels) =>
        Assert.Equal(decibels, RightVerdicts.Of(number).At(settings).Sound().LevelDecibels, 0.0501);

    [Fact]
    public void Circuit12_OutOfPhase_KeepsItsPower()
    {
        var sound = RightVerdicts.Of(12).Sound();

        Assert.Equal(-3.1, sound.Gains!.PowerDecibels, 0.0501);
        Assert.True(sound.IsThin);
    }

    [Theory]
    [InlineData(11, "", 3.17e3, 3.52e3)]
    [InlineData(15, "cut=1", 7.32e3, 8.17e3)]
    public void Reading_WithUsualTolerances_HasTheBandFound(int number, string settings, double least, double most)
    {
        var reading = RightVerdicts.Of(number).At(settings).Reading();

        Assert.Equal(least, reading.Least, 5.0);
        Assert.Equal(most, reading.Most, 5.0);
    }

    [Fact]
    public void Circuit3_MutedUpstreamWithTheVolumeAtFive_HoldsTheJackBy62Kilohms()
    {
        var sound = RightVerdicts.Of(3).At("mute=down vol=5").Sound();

        Assert.Equal(62.5e3, sound.SourceOhms!.Value, 50.0);
        Assert.Equal(Outcome.Dead, sound.Outcome);
    }

    [Fact]
    public void Circuit15_CutToOneCoil_IsSixDecibelsSofter()
    {
        var both = RightVerdicts.Of(15).At("cut=1").Sound().LevelDecibels;
        var one = RightVerdicts.Of(15).At("cut=2").Sound().LevelDecibels;

        Assert.Equal(-5.9, one - both, 0.0501);
    }

    [Theory]
    [InlineData(8, "sp=2", "neck", CoilPlace.HangsOnSignal)]
    [InlineData(15, "cut=2", "hb.s", CoilPlace.Shorted)]
    [InlineData(16, "cut=2", "hb.n", CoilPlace.HangsOnSignal)]
    [InlineData(24, "", "bridge", CoilPlace.Shorted)]
    [InlineData(5, "sel=1", "bridge", CoilPlace.HangsOnSleeve)]
    [InlineData(5, "sel=2", "neck", CoilPlace.HangsOnSleeve)]
    public void Coil_OutsideTheLivePart_StandsWhereFound(int number, string settings, string coil, CoilPlace place)
    {
        var bench = RightVerdicts.Of(number).At(settings);
        var places = CoilPlacement.Of(bench.Network, bench.State);

        Assert.Equal(place, places.Single(entry => entry.Coil.Name == coil).Place);
    }

    [Fact]
    public void Circuit23_FiveCoilsAcross_IsABridgeNetwork()
    {
        var bench = RightVerdicts.Of(23);
        var across = bench.Form().Coils.Single(coil => coil.Coil.Name == "e");

        Assert.Equal(FormKind.Bridge, bench.Form().Kind);
        AssertReads(6.66e3, bench);
        Assert.Equal(-15.6, across.Decibels, 0.0501);
        Assert.Equal(1, across.Sign);
    }

    [Fact]
    public void Circuit23_WithTheOtherValues_TurnsTheMiddleCoilRound()
    {
        var across = RightVerdicts.BridgeOf("9k", "5k", "6k", "8k").Form().Coils.Single(coil => coil.Coil.Name == "e");

        Assert.Equal(-1, across.Sign);
    }

    [Fact]
    public void Circuit28_TheToneTurnedDown_GivesMoreTreble()
    {
        double TrebleAt(string settings)
        {
            var gains = RightVerdicts.Of(28).At(settings).Sound().Gains!;
            return gains.TrebleDecibels;
        }

        Assert.Equal(-14.4, TrebleAt("tone=10") - TrebleAt("tone=0"), 0.0501);
    }

    [Fact]
    public void Circuit31_WithADummyCoil_CancelsHum() =>
        Assert.Equal(HumWord.Cancelled, RightVerdicts.Of(31).Sound().Hum!.Word);

    [Fact]
    public void Circuit33_ThroughASmallCapacitor_TurnsWithFrequency()
    {
        var sound = RightVerdicts.Of(33).Sound();

        Assert.Equal(-0.34, sound.Gains!.Correlation(1, 0), 0.00501);
        Assert.Equal(-22, sound.Coils[1].Decibels, 0.5);
    }

    [Fact]
    public void Circuit34_Darkened_Loses24DecibelsOfTreble()
    {
        double TiltAt(string settings)
        {
            var gains = RightVerdicts.Of(34).At(settings).Sound().Gains!;
            return gains.TrebleDecibels - gains.PowerDecibels;
        }

        Assert.Equal(-24, TiltAt("sel=3") - TiltAt("sel=2"), 0.5);
    }

    [Fact]
    public void Circuit13_PhaseSwitchBehindASelector_HasFiveSituations() =>
        Assert.Equal(5, SituationTree.Of(RightVerdicts.Of(13).Network).Situations.Length);

    private static void AssertReads(double ohms, Bench bench)
    {
        // To three figures.
        var unit = Math.Pow(10, Math.Floor(Math.Log10(ohms)) - 2);
        Assert.Equal(ohms, bench.Reading().Ohms, unit * 0.501);
    }
}
