namespace WireText.Tests.Drawing.Faces.Looks;

/// <summary>Upper and lower case are one in the language: how a kind is spelled where a model is defined changes nothing.</summary>
public class KindCaseTests
{
    private const string Panel = """
        circuit "panel"
        define KIND panel
            body  round 18
            lugs  tip -6,6  sleeve 6,6
        pickup neck single-coil
        pot    vol  250k audio
        jack   out  panel
        wire   neck.hot    to vol.3 white
        wire   neck.ground to vol.case black
        wire   vol.1       to vol.case bare
        wire   vol.2       to out.tip red
        wire   vol.case    to out.sleeve black
        """;

    private const string Mine = """
        circuit "mine"
        define KIND mine
            body  round 26
            lugs  1 5,17  2 0,17  3 -5,17  case 0,0
            metal case
            track 1 2 3
        pickup neck single-coil
        pot    tone mine 250k audio
        jack   out  mono
        cap    dark 47n film from tone.2 to tone.case
        wire   neck.hot    to tone.1 to out.tip white
        wire   neck.ground to tone.case to out.sleeve black
        """;

    [Theory]
    [InlineData(Panel, "jack", "Jack")]
    [InlineData(Panel, "jack", "JACK")]
    [InlineData(Mine, "pot", "Pot")]
    public void Kind_InUpperCaseWhereAModelIsDefined_IsDrawnTheSame(string text, string kind, string other)
    {
        var drawn = Drawings.SvgOf(text.Replace("KIND", kind, StringComparison.Ordinal));

        Assert.Equal(drawn, Drawings.SvgOf(text.Replace("KIND", other, StringComparison.Ordinal)));
    }

    [Fact]
    public void OwnPot_InUpperCase_CarriesItsCapacitor()
    {
        var drawn = Drawings.SvgOf(Mine.Replace("KIND", "Pot", StringComparison.Ordinal));

        Assert.Contains("data-on=\"tone\"", drawn, StringComparison.Ordinal);
    }

    [Fact]
    public void OwnKind_SpelledTwoWays_IsOneKindAsFirstSpelled()
    {
        var drawn = Drawings.SvgOf(
            """
            define Sensor small
                body  round 10
                lugs  1 -4,4  2 4,4
                resistor 1 2
            define sensor large
                body  round 20
                lugs  1 -8,8  2 8,8
                resistor 1 2
            sensor a small
            sensor b large
            wire a.1 to b.1 red
            """
        );

        Assert.Contains("data-part=\"b\" data-kind=\"Sensor\"", drawn, StringComparison.Ordinal);
        Assert.DoesNotContain("data-kind=\"sensor\"", drawn, StringComparison.Ordinal);
    }
}
