using WireText.Quantities;

namespace WireText.Tests.Quantities;

public class ValueTextTests
{
    [Theory]
    [InlineData(250e3, Unit.Ohm, "250k")]
    [InlineData(1e6, Unit.Ohm, "1M")]
    [InlineData(4700, Unit.Ohm, "4.7k")]
    [InlineData(470, Unit.Ohm, "470R")]
    [InlineData(0.47, Unit.Ohm, "0.47R")]
    [InlineData(47e-9, Unit.Farad, "47n")]
    [InlineData(100e-9, Unit.Farad, "100n")]
    [InlineData(1e-6, Unit.Farad, "1u")]
    [InlineData(470e-12, Unit.Farad, "470p")]
    [InlineData(2.2, Unit.Henry, "2.2H")]
    [InlineData(9, Unit.Volt, "9V")]
    public void Label_OfAValue_IsShort(double value, Unit unit, string label) =>
        Assert.Equal(label, ValueText.Label(value, unit));

    // OM-05 and a peak: three figures as a meter shows them; 999.96 Ω rounds up into the next prefix.
    [Theory]
    [InlineData(5859.38, Unit.Ohm, "5.86 kΩ")]
    [InlineData(999.96, Unit.Ohm, "1.00 kΩ")]
    [InlineData(0, Unit.Ohm, "0.00 Ω")]
    [InlineData(3992, Unit.Hertz, "3.99 kHz")]
    [InlineData(22e-9, Unit.Farad, "22.0 nF")]
    [InlineData(1e-6, Unit.Farad, "1.00 µF")]
    public void Figure_OfAValue_HasThreeFigures(double value, Unit unit, string text) =>
        Assert.Equal(text, ValueText.Figure(value, unit));

    [Theory]
    [InlineData(0.5, Unit.Ohm, "500 milliohms")]
    [InlineData(1e6, Unit.Ohm, "1 megohm")]
    [InlineData(1, Unit.Henry, "1 henry")]
    [InlineData(47e-9, Unit.Farad, "47 nanofarads")]
    public void InWords_OfAValue_IsSpelledOut(double value, Unit unit, string text) =>
        Assert.Equal(text, ValueText.InWords(value, unit));
}
