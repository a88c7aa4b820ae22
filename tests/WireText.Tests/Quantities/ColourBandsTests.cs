using WireText.Quantities;

namespace WireText.Tests.Quantities;

/// <summary>Values and bands: the colour code of IEC 60062, with the worked examples of public band tables, without their tolerances.</summary>
public class ColourBandsTests
{
    [Theory]
    [InlineData(1e3, "BN BK RD")] // CB-01
    [InlineData(4.7e3, "YE VT RD")] // CB-02
    [InlineData(22e3, "RD RD OG")] // CB-03
    [InlineData(10, "BN BK BK")] // CB-04 with two figures
    [InlineData(10e3, "BN BK OG")] // CB-05
    [InlineData(0.22, "RD RD SR")] // CB-06
    [InlineData(150e3, "BN GN YE")] // CB-07
    [InlineData(130e3, "BN OG YE")] // CB-08
    [InlineData(470e3, "YE VT YE")] // CB-09
    [InlineData(1e6, "BN BK GN")] // CB-10
    [InlineData(68e3, "BU GY OG")] // CB-11
    [InlineData(4.75e3, "YE VT GN BN")] // three figures
    [InlineData(0, "BK")] // CB-14
    [InlineData(1234, "")]
    public void Bands_OfAValue_AreTheStandardOnes(double ohms, string bands) =>
        Assert.Equal(bands, string.Join(' ', ColourBands.Of(ohms)));
}
