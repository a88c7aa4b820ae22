namespace WireText.Tests.Checks.Controls;

/// <summary>Two volumes wired alike, or not. What is alike is read off the circuit by hand.</summary>
public class ControlsUnlikeTests
{
    private const string Parts = """
        pickup neck single-coil; pickup bridge single-coil
        pot vol-neck 500k audio; pot vol-bridge 500k audio
        switch sel toggle-3way
        jack out
        neck.ground ~ vol-neck.case ~ vol-bridge.case ~ out.sleeve; bridge.ground ~ vol-bridge.case; sel.case ~ vol-bridge.case
        sel.A0 ~ sel.B0 ~ out.tip

        """;

    [Theory]
    [InlineData(
        "neck.hot ~ vol-neck.3; vol-neck.2 ~ sel.A1; vol-neck.1 ~ vol-neck.case",
        "bridge.hot ~ vol-bridge.3; vol-bridge.2 ~ sel.B1; vol-bridge.1 ~ vol-bridge.case"
    )]
    [InlineData(
        "neck.hot ~ vol-neck.2; vol-neck.3 ~ sel.A1; vol-neck.1 ~ vol-neck.case",
        "bridge.hot ~ vol-bridge.2; vol-bridge.3 ~ sel.B1; vol-bridge.1 ~ vol-bridge.case"
    )]
    public void Check_VolumesThatAreAlike_FindsNothing(string neck, string bridge) =>
        Assert.Empty(Found.Of("controls-unlike", $"{Parts}{neck}\n{bridge}"));

    [Theory]
    [InlineData(
        "bridge.hot ~ vol-bridge.2; vol-bridge.3 ~ sel.B1; vol-bridge.1 ~ vol-bridge.case",
        "'vol-bridge.2' leads to a pickup, 'vol-neck.2' to the jack"
    )]
    [InlineData(
        "bridge.hot ~ vol-bridge.2 ~ sel.B1; vol-bridge.1 ~ vol-bridge.case",
        "'vol-bridge.3' leads to nothing, 'vol-neck.3' to a pickup"
    )]
    public void Check_OneThatIsWiredOtherwise_NamesTheLugs(string bridge, string message)
    {
        var finding = Assert.Single(
            Found.Of(
                "controls-unlike",
                $"{Parts}neck.hot ~ vol-neck.3; vol-neck.2 ~ sel.A1; vol-neck.1 ~ vol-neck.case\n{bridge}"
            )
        );

        Assert.Equal(message, finding.Message);
        Assert.StartsWith("wire 'vol-bridge' as 'vol-neck' is", finding.Help, StringComparison.Ordinal);
    }

    /// <summary>A master behind two volumes is another kind of volume, and its name says so. Common practice.</summary>
    [Fact]
    public void Check_AMasterBesideVolumesOnTheWiper_FindsNothing() =>
        Assert.Empty(
            Found.Of(
                "controls-unlike",
                """
                pickup neck single-coil; pickup bridge single-coil
                pot vol-neck 500k audio; pot vol-bridge 500k audio; pot vol-master 500k audio
                jack out
                neck.ground ~ vol-neck.case ~ vol-bridge.case ~ vol-master.case ~ out.sleeve; bridge.ground ~ vol-bridge.case
                neck.hot ~ vol-neck.2; bridge.hot ~ vol-bridge.2; vol-neck.3 ~ vol-bridge.3 ~ vol-master.3; vol-master.2 ~ out.tip
                vol-neck.1 ~ vol-neck.case; vol-bridge.1 ~ vol-bridge.case; vol-master.1 ~ vol-master.case
                """
            )
        );
}
