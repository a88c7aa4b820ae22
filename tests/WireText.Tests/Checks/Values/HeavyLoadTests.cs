namespace WireText.Tests.Checks.Values;

/// <summary>What a track across a source takes, by the divider rule: a coil of 10 kΩ with next to no inductance, an input of 1 MΩ.</summary>
public class HeavyLoadTests
{
    /// <summary>
    /// 20·log10 of (p/(p + 10k)) over (1M/(1M + 10k)), p the track beside 1 MΩ: 9.5 dB for 5 kΩ, 6.2 dB for 9.5 kΩ, 5.9 dB
    /// for 10.2 kΩ.
    /// </summary>
    [Theory]
    [InlineData("5k", "'vol' (5k) takes 9.5 dB of the level at rest")]
    [InlineData("9.5k", "'vol' (9.5k) takes 6.2 dB of the level at rest")]
    [InlineData("10.2k", null)]
    [InlineData("250k", null)]
    public void HeavyLoad_OfAVolumeFullyUp_IsToldFromHalfTheLevel(string ohms, string? message)
    {
        var found = Found.Of(
            "heavy-load",
            $"""
            pickup neck single-coil dcr=10k l=1m c=1p
            pot vol {ohms} linear
            jack out
            load cable=1p input=1M
            neck.hot ~ vol.3; neck.ground ~ vol.1 ~ vol.case; vol.case ~ out.sleeve; vol.2 ~ out.tip
            """
        );

        Assert.Equal(message is null ? [] : [message], found.Select(finding => finding.Message));
    }

    [Fact]
    public void HeavyLoad_OfAPotThatOnePositionAloneBringsIn_IsTold()
    {
        var found = Found.Of(
            "heavy-load",
            """
            pickup neck single-coil
            switch more spdt-on-off-on
            pot soft 1k linear
            jack out
            neck.hot ~ out.tip; neck.ground ~ out.sleeve; more.A0 ~ out.tip; more.A2 ~ soft.2; soft.1 ~ soft.case; soft.case ~ out.sleeve
            """
        );

        Assert.Single(found);
    }
}
