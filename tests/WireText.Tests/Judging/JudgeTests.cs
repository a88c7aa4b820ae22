using System.Numerics;
using WireText.Tests.Electrical;

namespace WireText.Tests.Judging;

/// <summary>The judge on trial: figures by hand, and one difference at a time.</summary>
public class JudgeTests
{
    private const string Guitar = """
        pickup neck single-coil dcr=6k l=2H c=100p
        pot vol 250k linear
        jack out
        metal saddle
        neck.hot ~ vol.3; neck.ground ~ vol.case; vol.1 ~ vol.case; vol.2 ~ out.tip; vol.case ~ out.sleeve
        """;

    private const string Grounded = "saddle ~ vol.case";

    [Fact]
    public void Volts_OfOneCoilAndAVolumeAtTheMiddle_AreThoseOfADivider()
    {
        var circuit = Bench.Of($"{Guitar}\n{Grounded}").Into(0, 1e6).Circuit;
        var setting = BenchSetting.Rest(circuit) with { Travels = [5] };

        // At 0.01 Hz the coil is its resistance: 6k and 125k above 125k beside 1M.
        var reading = new BenchNetwork(circuit, setting).Read(0.01);
        var below = 1 / ((1 / 125e3) + (1 / 1e6));
        Assert.Equal(below / (below + 131e3), reading.Volts[0].Real, 1e-6);
        Assert.Equal(1 / ((1 / below) + (1 / 131e3)), reading.Ohms.Real, 1e-1);
    }

    [Fact]
    public void Volts_OfACoilAtItsOwnResonance_AreTurnedByAQuarter()
    {
        var circuit = Bench.Of($"{Guitar}\n{Grounded}").Into(0, 1e12).Circuit;
        var setting = BenchSetting.Rest(circuit);

        // Where ωL = 1/ωC the voltage across C is 1/(jωC) over the resistance and the track's share: by hand.
        var omega = 1 / Math.Sqrt(2 * 100e-12);
        var (winding, across) = (new Complex(6e3, omega * 2), new Complex(1 / 250e3, omega * 100e-12));
        var expected = 1 / (1 + (winding * across));

        var volts = new BenchNetwork(circuit, setting).Read(omega / (2 * Math.PI)).Volts[0];
        Assert.True(Complex.Abs(volts - expected) < 1e-6 * Complex.Abs(expected), $"{volts}, not {expected}");
    }

    [Fact]
    public void Circuit_AndItself_AreEqual() => AssertJudged(Verdict.Equal, Grounded, Grounded);

    [Fact]
    public void Metal_ThatOnlyTouches_IsNotMetalThatIsSoldered() =>
        AssertJudged(Verdict.Different, Grounded, "touch saddle vol.case");

    [Fact]
    public void Metal_ThatIsSolderedElsewhereOnGround_IsTheSame() =>
        AssertJudged(Verdict.Equal, Grounded, "saddle ~ out.sleeve");

    [Fact]
    public void OnlyPickup_TurnedRound_DiffersInSignAlone() =>
        AssertJudged(
            Verdict.EqualButForSign,
            "",
            "",
            Guitar.Replace("neck.hot ~ vol.3; neck.ground ~ vol.case", "neck.ground ~ vol.3; neck.hot ~ vol.case")
        );

    [Fact]
    public void OneOfTwoPickups_TurnedRound_Differs() =>
        AssertJudged(Verdict.Different, Second("vol.3", "vol.case"), Second("vol.case", "vol.3"));

    [Fact]
    public void CoilThatHangs_OnTheSignal_IsNotOneThatHangsOnGround() =>
        AssertJudged(Verdict.Different, "bridge.ground ~ vol.case", "bridge.ground ~ vol.3", second: true);

    [Fact]
    public void CoilThatHangs_OnTheOtherEnd_IsTheSame() =>
        AssertJudged(Verdict.Equal, "bridge.ground ~ vol.case", "bridge.hot ~ vol.case", second: true);

    [Fact]
    public void CoilThatHangs_OnNothing_IsNotOneThatHangsOnGround() =>
        AssertJudged(Verdict.Different, "bridge.ground ~ vol.case", "", second: true);

    [Fact]
    public void CoilThatIsShorted_IsNotOneThatHangs() =>
        AssertJudged(
            Verdict.Different,
            "bridge.ground ~ vol.case",
            "bridge.ground ~ vol.case; bridge.hot ~ vol.case",
            second: true
        );

    [Fact]
    public void Wire_FromTheOtherEndOfTheTrack_DiffersWithTheDialDown() =>
        AssertJudged(Verdict.Different, "", "", Guitar.Replace("vol.2 ~ out.tip", "vol.3 ~ out.tip"));

    [Fact]
    public void Twins_Exchanged_Differ()
    {
        const string Two = "cap a 10n; cap b 10n; a.1 ~ vol.3; a.2 ~ vol.2; b.1 ~ vol.3; b.2 ~ vol.case";
        AssertJudged(
            Verdict.Different,
            Two,
            Two.Replace("a.2 ~ vol.2", "a.2 ~ vol.case").Replace("b.2 ~ vol.case", "b.2 ~ vol.2")
        );
    }

    [Fact]
    public void Battery_ThatIsNeverOff_IsNotOneThatThePlugSwitches()
    {
        const string Buffer = """
            pickup neck single-coil; jack out stereo; preamp pre buffer; battery cell 9V
            neck.hot ~ pre.in; neck.ground ~ out.sleeve; pre.common ~ out.sleeve; pre.out ~ out.tip
            cell.plus ~ pre.plus
            """;
        AssertJudged(Verdict.Different, "cell.minus ~ out.ring", "cell.minus ~ out.sleeve", Buffer, Buffer);
    }

    private static string Second(string hot, string ground) =>
        $"pickup bridge single-coil dcr=7k l=3H c=90p; bridge.hot ~ {hot}; bridge.ground ~ {ground}";

    private static void AssertJudged(Verdict expected, string right, string other, bool second = false)
    {
        var guitar = second ? $"{Guitar}\npickup bridge single-coil dcr=7k l=3H c=90p" : Guitar;
        AssertJudged(expected, right, other, guitar, guitar);
    }

    private static void AssertJudged(Verdict expected, string right, string other, string otherGuitar) =>
        AssertJudged(expected, right, other, Guitar, otherGuitar);

    private static void AssertJudged(Verdict expected, string right, string other, string one, string another) =>
        Assert.Equal(
            expected,
            new Judge(Bench.Of($"{one}\n{right}").Circuit).Compare(Bench.Of($"{another}\n{other}").Circuit)
        );
}
