namespace WireText.Tests.Checks.Grounding;

/// <summary>Grounds that come to the sleeve by a contact, a resistor or a capacitor alone.</summary>
public class GroundThroughTests
{
    private const string Guitar = """
        pickup neck single-coil
        pot vol 250k audio
        metal saddle
        jack out
        neck.hot ~ vol.3; neck.ground ~ saddle; saddle ~ vol.case; vol.1 ~ vol.case; vol.2 ~ out.tip

        """;

    [Fact]
    public void GroundThroughContact_OfASleeveBehindASwitch_NamesAllMetalAndTheSwitch()
    {
        var found = Assert.Single(
            Found.Of(
                "ground-through-contact",
                $"{Guitar}switch lift dpdt; out.sleeve ~ lift.A0; lift.A1 ~ vol.case; lift.A2 ~ vol.case"
            )
        );

        Assert.Equal("'vol.case' and 'saddle' are grounded through the contacts of 'lift' alone", found.Message);
    }

    [Fact]
    public void GroundThroughContact_WithAWirePastTheSwitch_IsNone() =>
        Assert.Empty(
            Found.Of(
                "ground-through-contact",
                $"{Guitar}switch lift dpdt; out.sleeve ~ lift.A0; lift.A1 ~ vol.case; lift.A2 ~ vol.case; out.sleeve ~ saddle"
            )
        );

    [Fact]
    public void GroundThroughContact_OfACoilsReturnAlone_IsHowPhaseSwitchesWork() =>
        Assert.Empty(
            Found.Of(
                "ground-through-contact",
                """
                pickup neck single-coil
                pickup bridge single-coil
                switch ph dpdt
                metal saddle
                jack out
                bridge.hot ~ out.tip; bridge.ground ~ saddle; neck.hot ~ ph.A0; neck.ground ~ ph.B0; ph.A1 ~ ph.B2; ph.A1 ~ out.tip
                ph.A2 ~ ph.B1; ph.B1 ~ saddle; saddle ~ out.sleeve
                """
            )
        );

    [Theory]
    [InlineData("cap c 100n from plate to saddle")]
    [InlineData("resistor c 220k from plate to saddle")]
    public void GroundThroughPart_OfAPlate_NamesThePart(string part)
    {
        var found = Assert.Single(
            Found.Of("ground-through-part", $"{Guitar}metal plate; vol.case ~ out.sleeve; {part}")
        );

        Assert.Equal("'c' stands between 'plate' and ground", found.Message);
    }

    /// <summary>All that should be ground is then a part of the signal's way: that is what is said, and the same wire mends it.</summary>
    [Theory]
    [InlineData("cap c 100n from vol.case to out.sleeve")]
    [InlineData("resistor c 220k from vol.case to out.sleeve")]
    public void HotCase_OfASleeveBehindAPart_IsMendedByAWireToTheSleeve(string part)
    {
        var found = Assert.Single(Found.Of("hot-case", Guitar + part));

        Assert.Equal("solder a ground wire: wire vol.case to out.sleeve black", found.Help);
        Assert.Empty(Found.Of("ground-through-part", Guitar + part));
    }
}
