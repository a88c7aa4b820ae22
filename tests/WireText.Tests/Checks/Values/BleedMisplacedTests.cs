namespace WireText.Tests.Checks.Values;

/// <summary>Where a small capacitor on a volume is a bleed, and where it takes the treble to ground.</summary>
public class BleedMisplacedTests
{
    private const string Start = """
        pickup neck single-coil
        pot vol 250k audio
        pot tone 250k audio
        jack out
        neck.hot ~ vol.3; neck.ground ~ vol.1 ~ vol.case; tone.case ~ vol.case; vol.case ~ out.sleeve; vol.2 ~ out.tip; vol.3 ~ tone.2

        """;

    [Theory]
    [InlineData("cap c 1n from vol.3 to vol.2; cap dark 22n from tone.1 to tone.case", 0)]
    [InlineData("cap c 1n from vol.1 to vol.2; cap dark 22n from tone.1 to tone.case", 1)]
    [InlineData("cap c 1n from vol.case to vol.2; cap dark 22n from tone.1 to tone.case", 1)] // lug 1 is bent to the case
    [InlineData("cap c 1n from vol.3 to vol.1; cap dark 22n from tone.1 to tone.case", 1)]
    [InlineData("cap c 10n from vol.1 to vol.2; cap dark 22n from tone.1 to tone.case", 0)] // a tone capacitor
    [InlineData("cap c 100p from vol.1 to vol.2; cap dark 22n from tone.1 to tone.case", 0)] // against radio
    [InlineData("cap dark 2.2n from tone.1 to tone.case", 0)] // a bright tone control
    [InlineData("cap dark 2.2n from tone.1 to vol.case", 0)]
    [InlineData("cap c 1n from out.tip to out.sleeve; cap dark 22n from tone.1 to tone.case", 0)] // on no pot
    public void BleedMisplaced_ByTheLugsOfASmallCapacitor_IsToldWhereItShunts(string text, int count) =>
        Assert.Equal(count, Found.Of("bleed-misplaced", Start + text).Count);

    [Fact]
    public void BleedMisplaced_IsMendedByItsOwnLineOnLugsThreeAndTwo()
    {
        var found = Assert.Single(
            Found.Of(
                "bleed-misplaced",
                Start + "cap c 680p ceramic from vol.1 to vol.2; cap dark 22n from tone.1 to tone.case"
            )
        );

        Assert.Equal("hang it there: cap c 680p ceramic from vol.3 to vol.2", found.Help);
    }

    [Fact]
    public void BleedMisplaced_OnAVolumeWithThePickupOnItsWiper_NamesTheSameTwoLugs()
    {
        var found = Assert.Single(
            Found.Of(
                "bleed-misplaced",
                """
                pickup neck single-coil
                pot vol 250k audio
                jack out
                cap c 1n from vol.1 to vol.2
                neck.hot ~ vol.2; neck.ground ~ vol.1 ~ vol.case; vol.case ~ out.sleeve; vol.3 ~ out.tip
                """
            )
        );

        Assert.Equal("hang it there: cap c 1n from vol.3 to vol.2", found.Help);
    }
}
