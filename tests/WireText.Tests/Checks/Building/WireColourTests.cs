using WireText.Text;

namespace WireText.Tests.Checks.Building;

/// <summary>Colours of ground wires, and the pair that IEC 60757 (clause 5.1) keeps for protective earth.</summary>
public class WireColourTests
{
    private const string Start = """
        pickup neck single-coil
        pot vol 250k audio
        jack out
        metal a
        metal b
        metal c
        metal d
        neck.hot ~ vol.3; vol.2 ~ out.tip
        wire neck.ground to vol.case white
        wire vol.1 to vol.case bare

        """;

    /// <summary>Colours of the wires from the case, and from the plates to it.</summary>
    [Theory]
    [InlineData("black black black black red", 1)]
    [InlineData("black black black black black", 0)]
    [InlineData("black black black green red", 0)] // three of four others: no habit
    [InlineData("black black black black bare", 0)]
    public void ColourHabit_OfFiveGroundWires_IsToldWhereFourOfFourOthersAgree(string colours, int count)
    {
        string[] from = ["vol.case to out.sleeve", "a to vol.case", "b to vol.case", "c to vol.case", "d to vol.case"];
        var wires = from.Zip(colours.Split(' '), (ends, colour) => $"wire {ends} {colour}");

        var found = Found.Of("colour-habit", Start + string.Join('\n', wires));

        Assert.Equal(
            Enumerable.Repeat("write: wire d to vol.case black", count),
            found.Select(finding => finding.Help)
        );
    }

    [Fact]
    public void ColourHabit_OfAPartsOwnLead_IsNone() =>
        Assert.Empty(
            Found.Of(
                "colour-habit",
                Start + "a ~ b ~ c ~ d ~ vol.case; vol.case ~ out.sleeve" // the pickup's lead is white, all others black
            )
        );

    [Theory]
    [InlineData("wire vol.case to out.sleeve GNYE", 1)]
    [InlineData("wire vol.case to out.sleeve green/yellow", 1)]
    [InlineData("wire vol.case to out.sleeve yellow/green", 1)]
    [InlineData("wire vol.case to out.sleeve green", 0)]
    [InlineData("wire vol.case to a to b to out.sleeve GNYE", 1)] // one run
    [InlineData("cable vol.case to out.sleeve GNYE twisted", 1)]
    [InlineData("pickup x single-coil; splice t x.hot\nwire x.ground to vol.case GNYE\nvol.case ~ out.sleeve", 0)]
    public void EarthColour_OfAnyWireButAPartsOwnLead_IsTold(string text, int count)
    {
        var found = Found.Of("earth-colour", Start + text);

        Assert.Equal(Enumerable.Repeat(Severity.Warning, count), found.Select(finding => finding.Severity));
    }
}
