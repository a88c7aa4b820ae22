namespace WireText.Tests.Checks.Values;

/// <summary>Treble bleeds beyond a switch, and bleeds that differ from those of the volume beside. Common practice.</summary>
public class BleedPlacesTests
{
    private const string Parts = """
        pickup neck single-coil; pickup bridge single-coil
        pot vol-neck 500k audio; pot vol-bridge 500k audio
        switch sel toggle-3way
        jack out
        neck.ground ~ vol-neck.case ~ vol-bridge.case ~ out.sleeve; bridge.ground ~ vol-bridge.case; sel.case ~ vol-bridge.case
        sel.A0 ~ sel.B0 ~ out.tip
        neck.hot ~ vol-neck.3; vol-neck.2 ~ sel.A1; vol-neck.1 ~ vol-neck.case
        bridge.hot ~ vol-bridge.3; vol-bridge.2 ~ sel.B1; vol-bridge.1 ~ vol-bridge.case

        """;

    [Theory]
    [InlineData("cap c 680p from vol-neck.3 to vol-neck.2", 0)]
    [InlineData("cap c 680p from vol-neck.3 to sel.A1", 0)] // the wiper's net
    [InlineData("cap c 680p from vol-neck.3 to sel.A0", 1)]
    [InlineData("cap c 680p from vol-neck.3 to vol-bridge.2", 1)]
    [InlineData("cap c 22n from vol-neck.3 to sel.A0", 0)] // no bleed by its value
    public void BehindContact_ByWhereTheOtherLeadLies_IsTold(string cap, int count) =>
        Assert.Equal(count, Found.Of("bleed-behind-contact", Parts + cap).Count);

    [Fact]
    public void BehindContact_OfABleedWithASwitchOfItsOwn_FindsNothing() =>
        Assert.Empty(
            Found.Of(
                "bleed-behind-contact",
                Parts + "switch bright spdt; cap c 680p from vol-neck.3 to bright.A1; bright.A0 ~ vol-neck.2"
            )
        );

    [Fact]
    public void BehindContact_Told_IsMendedByItsOwnLine()
    {
        var finding = Assert.Single(Found.Of("bleed-behind-contact", Parts + "cap c 680p from vol-neck.3 to sel.A0"));

        Assert.Equal("hang it there: cap c 680p from vol-neck.3 to vol-neck.2", finding.Help);
    }

    /// <summary>Moved back, the bleed tells fewer positions apart, and silences none.</summary>
    [Fact]
    public void BehindContact_BeforeASelector_IsMendedByItsOwnLine()
    {
        var finding = Assert.Single(
            Found.Of(
                "bleed-behind-contact",
                """
                pickup neck single-coil; pickup bridge single-coil
                switch sel toggle-3way
                pot vol 500k audio
                cap c 680p from sel.A1 to vol.2
                jack out
                neck.hot ~ sel.A1; bridge.hot ~ sel.B1; sel.A0 ~ sel.B0 ~ vol.3; vol.2 ~ out.tip
                vol.1 ~ vol.case ~ out.sleeve; neck.ground ~ vol.case; bridge.ground ~ vol.case; sel.case ~ vol.case
                """
            )
        );

        Assert.Equal("hang it there: cap c 680p from vol.3 to vol.2", finding.Help);
    }

    [Theory]
    [InlineData("vol-bridge.3 to vol-bridge.2", 0)]
    [InlineData("vol-bridge.2 to vol-neck.case", 1)]
    [InlineData("vol-bridge.3 to vol-neck.case", 1)]
    public void Unlike_ByItsTwin_IsTold(string ends, int count) =>
        Assert.Equal(
            count,
            Found.Of("bleed-unlike", $"{Parts}cap c1 680p from vol-neck.3 to vol-neck.2; cap c2 680p from {ends}").Count
        );

    /// <summary>A bleed on one of two volumes is a choice, and so is a load on the other.</summary>
    [Theory]
    [InlineData("cap c1 680p from vol-neck.3 to vol-neck.2")]
    [InlineData("cap c1 680p from vol-neck.3 to vol-neck.2; cap load 470p from vol-bridge.3 to vol-bridge.case")]
    public void Unlike_WithoutATwin_FindsNothing(string caps) => Assert.Empty(Found.Of("bleed-unlike", Parts + caps));
}
