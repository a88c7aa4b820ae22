namespace WireText.Tests.Checks.Values;

/// <summary>Prefixes that were taken for each other, by where the capacitor lies. The limits are chosen, wide round common practice.</summary>
public class CapacitorMagnitudeTests
{
    private const string Volume =
        "pickup neck single-coil; pot vol 250k audio; jack out; neck.ground ~ vol.1 ~ vol.case; vol.case ~ out.sleeve; vol.2 ~ out.tip";

    private const string Tone = "pot tone 250k audio; tone.case ~ vol.case; neck.hot ~ vol.3";

    [Theory]
    [InlineData("22u", "'c' has 22u as a tone capacitor: 22n?")]
    [InlineData("47p", "'c' has 47p as a tone capacitor: 47n?")]
    [InlineData("1u", null)]
    [InlineData("1.1u", "'c' has 1.1u as a tone capacitor: 1.1n?")]
    [InlineData("100p", null)]
    [InlineData("47n", null)]
    [InlineData("22m", null)] // a thousandth of it is no tone capacitor either
    public void CapacitorMagnitude_BehindAToneControl_IsToldWhereAnotherPrefixFits(string value, string? message)
    {
        Check($"{Volume}; {Tone}; vol.3 ~ tone.2; cap c {value} from tone.1 to tone.case", message);
        Check($"{Volume}; {Tone}; tone.1 ~ tone.case; cap c {value} from vol.3 to tone.2", message);
        Check(
            $"{Volume}; {Tone}; switch dark spdt; vol.3 ~ dark.A0; cap c {value} from dark.A2 to vol.case; vol.3 ~ tone.1; tone.1 ~ tone.2",
            message
        );
        Check($"{Volume}; {Tone}; switch dark spdt; vol.case ~ dark.A0; cap c {value} from dark.A2 to vol.3", message);
    }

    [Theory]
    [InlineData("1u", "'c' has 1u as a treble bleed: 1n?")]
    [InlineData("1p", "'c' has 1p as a treble bleed: 1n?")]
    [InlineData("22n", null)]
    [InlineData("680p", null)]
    public void CapacitorMagnitude_FromWiperToHighEnd_IsThatOfABleed(string value, string? message) =>
        Check($"{Volume}; neck.hot ~ vol.3; cap c {value} from vol.3 to vol.2", message);

    [Theory]
    [InlineData("47m", "'c' has 47m as a capacitor in series: 47u?")]
    [InlineData("4.7u", null)]
    [InlineData("4.7n", null)]
    [InlineData("4.7p", "'c' has 4.7p as a capacitor in series: 4.7n?")]
    public void CapacitorMagnitude_InTheSignalsWay_HasTheWidestRange(string value, string? message) =>
        Check($"{Volume}; cap c {value} from neck.hot to vol.3", message);

    [Fact]
    public void CapacitorMagnitude_OfAStoreAcrossTheBattery_IsNoneOfThese() =>
        Check(
            """
            pickup neck single-coil; preamp pre buffer; battery cell 9V; jack out stereo
            cap c 220u electrolytic from pre.plus to pre.common
            neck.hot ~ pre.in; neck.ground ~ pre.common; pre.common ~ out.sleeve; pre.out ~ out.tip; cell.plus ~ pre.plus; cell.minus ~ out.ring
            """,
            null
        );

    [Fact]
    public void CapacitorMagnitude_ThatIsAllowed_IsLeftAlone() =>
        Check(
            $"{Volume}; {Tone}; vol.3 ~ tone.2; cap c 22u from tone.1 to tone.case; allow capacitor-magnitude at c \"a filter\"",
            null
        );

    private static void Check(string text, string? message) =>
        Assert.Equal(
            message is null ? [] : [message],
            Found.Of("capacitor-magnitude", text).Select(finding => finding.Message)
        );
}
