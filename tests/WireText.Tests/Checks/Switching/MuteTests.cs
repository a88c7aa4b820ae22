using WireText.Text;

namespace WireText.Tests.Checks.Switching;

/// <summary>Mutes in places where they look right and are not. A mute shorts tip and sleeve at the jack (reference facts, 11.1).</summary>
public class MuteTests
{
    private const string Volume = """
        pickup neck single-coil
        pot vol 250k linear
        jack out
        neck.ground ~ vol.1 ~ vol.case; vol.case ~ out.sleeve

        """;

    [Fact]
    public void Mute_UpstreamOfAResistor_LeavesItAtTheJack()
    {
        var found = One(
            """
            pickup neck single-coil
            button mute momentary
            splice in neck.hot
            resistor pad 47k from in to out.tip
            jack out
            neck.ground ~ out.sleeve; mute.1 ~ in; mute.2 ~ out.sleeve
            """
        );

        // The pad alone lies between tip and sleeve while the button is down.
        Assert.Equal("mute-upstream", found.Id);
        Assert.Contains("leaves 47.0 kΩ at the jack", found.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Mute_NormallyClosedAcrossTheJack_IsSilentAtRest()
    {
        var found = One(
            $"{Volume}button mute momentary-nc; neck.hot ~ vol.3; vol.2 ~ out.tip; mute.1 ~ out.tip; mute.2 ~ out.sleeve"
        );

        Assert.Equal((Severity.Error, "mute-at-rest"), (found.Severity, found.Id));
    }

    /// <summary>In the hot before the volume, after it, between a tone's lugs and the tip, and in the ground.</summary>
    [Theory]
    [InlineData("button mute momentary-nc; neck.hot ~ mute.1; mute.2 ~ vol.3; vol.2 ~ out.tip")]
    [InlineData("button mute latching-nc; neck.hot ~ vol.3; vol.2 ~ mute.1; mute.2 ~ out.tip")]
    [InlineData("switch mute spdt; neck.hot ~ vol.3; vol.2 ~ mute.A0; mute.A1 ~ out.tip")]
    [InlineData("button mute momentary-nc; resistor pad 10k from vol.2 to mute.1; neck.hot ~ vol.3; mute.2 ~ out.tip")]
    public void Mute_ThatOpensAnythingInSeries_IsAnError(string text)
    {
        var found = One(Volume + text);

        Assert.Equal((Severity.Error, "mute-opens-hot"), (found.Severity, found.Id));
    }

    [Fact]
    public void Mute_ThatLiftsTheReturnOfTheOnlyPickup_IsAnErrorToo()
    {
        var found = One(
            """
            pickup neck single-coil
            button mute momentary-nc
            jack out
            neck.hot ~ out.tip; neck.ground ~ mute.1; mute.2 ~ out.sleeve
            """
        );

        Assert.Equal("mute-opens-hot", found.Id);
    }

    private static Finding One(string text) =>
        Assert.Single(
            CircuitEdits.FindApartFromBuilding(Electrical.Bench.CompileText(Electrical.Bench.Expand(text))),
            finding => finding.Severity > Severity.Right
        );
}
