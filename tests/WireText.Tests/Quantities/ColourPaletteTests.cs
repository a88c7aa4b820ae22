using WireText.Circuits;
using WireText.Quantities;
using WireText.Testing;

namespace WireText.Tests.Quantities;

public class ColourPaletteTests
{
    private static readonly ColourPalette WithCream = ColourPalette.Standard.With(
        new OwnColour("cream", "CR", 0xEFE3C2)
    );

    // The codes and names of IEC 60757; two of them with a slash are a stripe.
    [Theory]
    [InlineData("white", "WH", "white")]
    [InlineData("wh", "WH", "white")]
    [InlineData("gray", "GY", "grey")]
    [InlineData("purple", "VT", "violet")]
    [InlineData("GNYE", "GN/YE", "green/yellow")]
    [InlineData("WH/black", "WH/BK", "white/black")]
    [InlineData("bare", "", "bare")]
    [InlineData("cream", "CR", "cream")]
    [InlineData("cr/BK", "CR/BK", "cream/black")]
    [InlineData("red/cream", "RD/CR", "red/cream")]
    public void Read_AColour_HasItsTagAndName(string word, string tag, string name)
    {
        var colour = WithCream.Read(word);

        Assert.Equal((tag, name), (colour?.Tag, colour?.Name));
    }

    [Theory]
    [InlineData("")]
    [InlineData("/")]
    [InlineData("white/")]
    [InlineData("/white")]
    [InlineData("bare/white")]
    [InlineData("cream/bare")]
    [InlineData("white/black/red")]
    [InlineData("ivory")]
    public void Read_AnyOtherWord_IsNone(string word) => Assert.Null(WithCream.Read(word));

    [Fact]
    public void Standard_AfterOneIsAdded_DoesNotKnowIt() => Assert.False(ColourPalette.Standard.Has("cream"));

    [Theory]
    [InlineData("cream", "CE")] // CR is taken
    [InlineData("natural", "NA")]
    [InlineData("bk", "BAA")] // BK is black, and there is no other pair
    [InlineData("écru", "CR", false)]
    public void FreeCode_OfAName_IsOneThatNoColourHas(string name, string code, bool hasCream = true)
    {
        var palette = hasCream ? WithCream : ColourPalette.Standard;

        Assert.Equal(code, palette.FreeCode(name));
        Assert.False(palette.Has(code));
    }

    [Fact]
    public void FreeCode_OfManyColours_IsAlwaysFree()
    {
        var palette = ColourPalette.Standard;
        foreach (var number in Every.Of(Enumerable.Range(0, CircuitLimits.MaxColours)))
        {
            var code = palette.FreeCode("ab");
            Assert.False(palette.Has(code), code);
            palette = palette.With(new OwnColour($"colour{number}", code, 0));
        }
    }
}
