namespace WireText.Tests.Checks.Building;

/// <summary>How much a lug and a case carry, and what heat does there. The limits are common practice.</summary>
public class JointTests
{
    private const string Start = """
        pickup neck single-coil
        pickup bridge single-coil
        pot vol 250k audio
        jack out
        neck.ground ~ bridge.ground ~ vol.1 ~ vol.case; vol.case ~ out.sleeve; vol.2 ~ out.tip

        """;

    [Theory]
    [InlineData("neck.hot ~ bridge.hot ~ vol.3; resistor a 1M from vol.3 to vol.2", 0)] // three
    [InlineData("neck.hot ~ bridge.hot ~ vol.3; resistor a 1M from vol.3 to vol.2; cap b 1n from vol.3 to vol.2", 1)]
    [InlineData(
        "splice all neck.hot bridge.hot; all ~ vol.3; resistor a 1M from all to vol.2; cap b 1n from all to vol.2",
        0
    )]
    public void CrowdedLug_OfALugOrASplice_CountsWhatIsSolderedThere(string hots, int count) =>
        Assert.Equal(count, Found.Of("crowded-lug", Start + hots).Count);

    [Fact]
    public void CrowdedLug_WhereARunPasses_CountsItOnce()
    {
        const string parts =
            "neck.hot ~ vol.3; bridge.hot ~ vol.3; pot tone 250k audio; metal plate; tone.case ~ plate ~ vol.case; tone.2 ~ tone.1\n";

        Assert.Empty(Found.Of("crowded-lug", $"{Start}{parts}wire tone.1 to vol.3 to tone.3 red"));
        Assert.Single(Found.Of("crowded-lug", $"{Start}{parts}wire tone.1 to vol.3 red\nwire vol.3 to tone.3 red"));
    }

    [Fact]
    public void CrowdedLug_OnTheSleeve_MovesWhatIsTooMuchToACase()
    {
        var found = Assert.Single(
            Found.Of(
                "crowded-lug",
                """
                pickup neck single-coil
                pickup bridge single-coil
                pot vol 250k audio
                jack out
                neck.hot ~ bridge.hot ~ vol.3; vol.2 ~ out.tip
                vol.case ~ vol.1 ~ neck.ground ~ bridge.ground ~ out.sleeve
                """
            )
        );

        Assert.Equal("4 wires share 'out.sleeve': a lug holds 3", found.Message);
        Assert.Equal("bring grounds together on a case: wire bridge.ground to vol.case black", found.Help);
    }

    [Theory]
    [InlineData(8, 0)]
    [InlineData(9, 1)]
    public void CaseJoints_OfACase_AreToldFromTheNinth(int joints, int count)
    {
        var plates = string.Join("; ", Enumerable.Range(2, joints - 1).Select(i => $"metal p{i}; p{i} ~ vol.case"));
        var text = $"pot vol 250k audio; jack out; vol.2 ~ out.tip; vol.3 ~ out.tip; vol.case ~ out.sleeve; {plates}";

        Assert.Equal(count, Found.Of("case-joints", text).Count);
    }

    [Fact]
    public void CaseJoints_OfABus_AreWhatItIsFor()
    {
        var plates = string.Join("; ", Enumerable.Range(0, 20).Select(i => $"metal p{i}; p{i} ~ bus"));

        Assert.Empty(Found.Of("case-joints", $"jack out; metal bus; bus ~ out.sleeve; {plates}"));
    }

    [Theory]
    [InlineData("cap dark 22n heat-sensitive from vol.3 to vol.2; neck.hot ~ bridge.hot ~ vol.3", 1)]
    [InlineData("cap dark 22n heat-sensitive from vol.3 to vol.2; neck.hot ~ vol.3; bridge.hot ~ vol.case", 0)]
    [InlineData("cap dark 22n film from vol.3 to vol.2; neck.hot ~ bridge.hot ~ vol.3", 0)]
    [InlineData("cap dark 22n heat-sensitive from vol.2 to vol.case; neck.hot ~ bridge.hot ~ vol.3", 0)] // the case has many places
    public void Heat_OfASensitiveLead_IsToldBesideTwoOthers(string text, int count) =>
        Assert.Equal(count, Found.Of("heat", Start + text).Count);

    [Fact]
    public void Heat_OnACrowdedLug_IsLeftToTheCrowd()
    {
        const string text =
            Start
            + "cap dark 22n heat-sensitive from vol.3 to vol.2; neck.hot ~ bridge.hot ~ vol.3; resistor a 1M from vol.3 to vol.case";

        Assert.Empty(Found.Of("heat", text));
        Assert.Single(Found.Of("crowded-lug", text));
    }
}
