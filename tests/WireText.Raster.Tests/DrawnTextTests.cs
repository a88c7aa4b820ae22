using SkiaSharp;
using WireText.Drawing.Lettering;
using WireText.Raster.Fonts;
using WireText.Testing;

namespace WireText.Raster;

public class DrawnTextTests
{
    [Fact]
    public void AdvanceTable_OfThePackagedTypeface_IsWhatTheCoreHas() =>
        AcceptedFile.Check("src/WireText/Drawing/Lettering/InterAdvances.cs", AdvanceTable.Write());

    [Theory]
    [InlineData("AVATAR Wo 250k audio", TextWeight.Regular)]
    [InlineData("sel.A1 → vol.case ± 3 %", TextWeight.Medium)]
    [InlineData("Überbrückung Ωµμ×≤°", TextWeight.SemiBold)]
    public void Width_OfText_IsWhatSkiaMeasuresInThePackagedTypeface(string text, TextWeight weight)
    {
        using var font = new SKFont(InterTypefaces.OfWeight((int)weight), 100)
        {
            Hinting = SKFontHinting.None,
            LinearMetrics = true,
        };

        Assert.Equal(font.MeasureText(text), DrawnText.Width(text, weight, 100), 0.05);
    }

    [Fact]
    public void CapHeight_OfTheTypeface_IsWhatTheCoreSays()
    {
        using var font = new SKFont(InterTypefaces.OfWeight(400), 1000);

        Assert.Equal(DrawnText.CapHeight, font.Metrics.CapHeight / 1000, 0.001);
    }
}
