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

    /// <summary>The wires of the pot itself stay where they are, so no line says what to do with all wires of the part.</summary>
    [Fact]
    public void Mute_ThatAPotsSwitchOpens_IsToldWithoutALine()
    {
        var found = One(
            """
            pickup neck single-coil
            pot vol push-pull 500k audio
            jack out
            neck.hot ~ vol.3; vol.2 ~ vol.A0; vol.A1 ~ out.tip; neck.ground ~ vol.1; vol.1 ~ vol.case; vol.case ~ out.sleeve
            """
        );

        Assert.Equal("mute-opens-hot", found.Id);
        Assert.Equal("join what its switch opens, and put the switch across tip and sleeve", found.Help);
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

    /// <summary>A button that only shorts while a switch arms it, in either order, and with a third in the row.</summary>
    [Theory]
    [InlineData("switch arm spdt; mute.1 ~ out.tip; mute.2 ~ arm.A0; arm.A2 ~ out.sleeve")]
    [InlineData("switch arm spdt; arm.A0 ~ out.tip; arm.A1 ~ mute.1; mute.2 ~ out.sleeve")]
    [InlineData(
        "switch arm spdt; button too momentary; arm.A0 ~ out.tip; arm.A2 ~ mute.1; mute.2 ~ too.1; too.2 ~ out.sleeve"
    )]
    public void Mute_ThatASwitchArms_IsNoShort(string text) =>
        Assert.DoesNotContain(
            CircuitEdits.FindApartFromBuilding(
                Electrical.Bench.CompileText(
                    Electrical.Bench.Expand($"{Volume}neck.hot ~ vol.3; vol.2 ~ out.tip; button mute momentary; {text}")
                )
            ),
            finding => finding.Severity > Severity.Right
        );

    /// <summary>Two throws that short by chance are no row: another wire ends between them, or both are closed at rest.</summary>
    [Theory]
    [InlineData(
        "switch a spdt; switch b spdt; a.A0 ~ out.tip; a.A2 ~ b.A0; b.A2 ~ out.sleeve; resistor r 1M from a.A2 to out.sleeve"
    )]
    [InlineData("switch a spdt; switch b spdt; a.A0 ~ out.tip; a.A1 ~ b.A0; b.A1 ~ out.sleeve")]
    public void Shorts_OfTwoSwitchesThatAreNoMute_AreTold(string text) =>
        Assert.Equal("shorted-output", One($"{Volume}neck.hot ~ vol.3; vol.2 ~ out.tip; {text}").Id);

    private static Finding One(string text) =>
        Assert.Single(
            CircuitEdits.FindApartFromBuilding(Electrical.Bench.CompileText(Electrical.Bench.Expand(text))),
            finding => finding.Severity > Severity.Right
        );
}
