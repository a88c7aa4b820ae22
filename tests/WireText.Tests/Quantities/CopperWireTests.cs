using WireText.Quantities;

namespace WireText.Tests.Quantities;

public class CopperWireTests
{
    // Gauge, diameter in mm and Ω/m of the exact formula of ASTM B258, and the Ω/m column of a printed table made
    // from the formulas of the Standard Handbook for Electrical Engineers, 14th edition (three figures).
    [Theory]
    [InlineData(18, 1.0237, 0.02095, 0.0209)]
    [InlineData(19, 0.9116, 0.02641, 0.0264)]
    [InlineData(20, 0.8118, 0.03331, 0.0333)]
    [InlineData(21, 0.7229, 0.04200, 0.0420)]
    [InlineData(22, 0.6438, 0.05296, 0.0530)]
    [InlineData(23, 0.5733, 0.06678, 0.0668)]
    [InlineData(24, 0.5106, 0.08421, 0.0842)]
    [InlineData(25, 0.4547, 0.1062, 0.106)]
    [InlineData(26, 0.4049, 0.1339, 0.134)]
    [InlineData(27, 0.3606, 0.1689, 0.169)]
    [InlineData(28, 0.3211, 0.2129, 0.213)]
    [InlineData(29, 0.2859, 0.2685, 0.268)]
    [InlineData(30, 0.2546, 0.3385, 0.339)]
    [InlineData(31, 0.2268, 0.4269, 0.427)]
    [InlineData(32, 0.2019, 0.5383, 0.538)]
    [InlineData(33, 0.1798, 0.6788, 0.679)]
    [InlineData(34, 0.1601, 0.8560, 0.856)]
    [InlineData(35, 0.1426, 1.079, 1.08)]
    [InlineData(36, 0.1270, 1.361, 1.36)]
    [InlineData(37, 0.1131, 1.716, 1.72)]
    [InlineData(38, 0.1007, 2.164, 2.16)]
    [InlineData(39, 0.0897, 2.729, 2.73)]
    [InlineData(40, 0.0799, 3.441, 3.44)]
    [InlineData(41, 0.0711, 4.339, 4.34)]
    [InlineData(42, 0.0633, 5.472, 5.47)]
    [InlineData(43, 0.0564, 6.899, 6.90)]
    [InlineData(44, 0.0502, 8.700, 8.70)]
    public void OhmsPerMetre_OfEachGauge_AgreesWithThePrintedTable(
        int gauge,
        double millimetres,
        double exact,
        double printed
    )
    {
        Assert.Equal(millimetres, CopperWire.DiameterMetres(gauge) * 1e3, 0.5e-4);
        Assert.Equal(exact, CopperWire.OhmsPerMetre(gauge), exact * 5e-4);
        Assert.Equal(printed, CopperWire.OhmsPerMetre(gauge), printed * 5e-3);
    }

    // Worked windings: mean turn 120.3 mm (straight sides 46 mm, mean radius 4.5 mm), exact diameters.
    [Theory]
    [InlineData(8000, 42, 5265)]
    [InlineData(8000, 43, 6639)]
    [InlineData(10000, 43, 8298)]
    [InlineData(5000, 42, 3290)]
    [InlineData(7600, 42, 5001)]
    public void CoilOhms_OfAWorkedWinding_IsItsResistance(int turns, int gauge, double ohms) =>
        Assert.Equal(ohms, CopperWire.CoilOhms(turns, gauge, (2 * 46e-3) + (2 * Math.PI * 4.5e-3)), ohms * 5e-4);

    // A printed correction: 6.30 kΩ at 35 °C is 5.949 kΩ at 20 °C.
    [Fact]
    public void TemperatureCoefficient_OfAPrintedCorrection_GivesIt() =>
        Assert.Equal(5949, 6300 / (1 + (CopperWire.TemperatureCoefficient * 15)), 0.5);
}
