using WireText.Text;

namespace WireText.Tests.Checks.Building;

/// <summary>Lengths against places, by Pythagoras. A mono jack has its tip at −7,7; a standard pot its wiper at 0,15.</summary>
public class WireLengthTests
{
    private const string Start = """
        pickup neck single-coil
        pot vol 250k audio
        jack out
        neck.hot ~ vol.3; neck.ground ~ vol.1 ~ vol.case; vol.case ~ out.sleeve

        """;

    /// <summary>Wiper and tip, or the middle of the case and the sleeve, are 30 mm across and 40 mm down: 50 mm apart.</summary>
    [Theory]
    [InlineData("vol at 0,0", "out at 37,48", "vol.2 to out.tip", 50)]
    [InlineData("vol at 0,0 turned 90", "out at 22,47 turned 90", "vol.2 to out.tip", 50)]
    [InlineData("vol at 0,0 turned 180", "out at 23,32 turned 180", "vol.2 to out.tip", 50)]
    [InlineData("vol at 0,0 turned 270", "out at 38,33 turned 270", "vol.2 to out.tip", 50)]
    [InlineData("vol at 0,0", "out at 23,33", "vol.case to out.sleeve", 38)] // the joint may lie anywhere on the case: 24 mm wide
    public void WireTooShort_BetweenTwoPlaces_IsToldBelowTheStraightWay(string one, string other, string ends, int way)
    {
        Assert.Single(Find(way - 1));
        Assert.Empty(Find(way + 1));

        List<Finding> Find(int length) =>
            Found.Of("wire-too-short", $"{Start}place {one}\nplace {other}\nwire {ends} white length={length}mm");
    }

    [Theory]
    [InlineData("place vol at 0,0")]
    [InlineData("place vol at 0,0\nplace out turned 90")]
    public void WireTooShort_WhereAPlaceIsNotGiven_IsNotTold(string places) =>
        Assert.Empty(Found.Of("wire-too-short", $"{Start}{places}\nwire vol.2 to out.tip white length=1mm"));

    [Fact]
    public void WireTooShort_SaysBothLengths()
    {
        var found = Assert.Single(
            Found.Of(
                "wire-too-short",
                $"{Start}place vol at 0,0\nplace out at 37,49\nwire vol.2 to out.tip white length=30mm"
            )
        );

        Assert.Equal("the wire is 30 mm long; its lugs are 50 mm apart", found.Message);
        Assert.Equal("vol.2 to out.tip", found.Location.Text);
    }
}
