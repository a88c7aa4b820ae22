using WireText.Quantities;

namespace WireText.Tests.Quantities;

/// <summary>Codes and values: the three-digit marking of IEC 60062, as tabulated by public marking lists.</summary>
public class MarkingCodeTests
{
    [Theory]
    [InlineData("101", 100e-12)] // CC-01
    [InlineData("151", 150e-12)] // CC-02
    [InlineData("221", 220e-12)] // CC-03
    [InlineData("331", 330e-12)] // CC-04
    [InlineData("471", 470e-12)] // CC-05
    [InlineData("561", 560e-12)] // CC-06
    [InlineData("681", 680e-12)] // CC-07
    [InlineData("821", 820e-12)] // CC-08
    [InlineData("102", 1000e-12)] // CC-09
    [InlineData("122", 1200e-12)] // CC-10
    [InlineData("152", 1500e-12)] // CC-11
    [InlineData("222", 2200e-12)] // CC-12
    [InlineData("332", 3300e-12)] // CC-13
    [InlineData("472", 4700e-12)] // CC-14
    [InlineData("562", 5600e-12)] // CC-15
    [InlineData("682", 6800e-12)] // CC-16
    [InlineData("103", 10000e-12)] // CC-17
    [InlineData("153", 15000e-12)] // CC-18
    [InlineData("223", 22000e-12)] // CC-19
    [InlineData("333", 33000e-12)] // CC-20
    [InlineData("473", 47000e-12)] // CC-21
    [InlineData("503", 50000e-12)] // CC-22
    [InlineData("563", 56000e-12)] // CC-23
    [InlineData("683", 68000e-12)] // CC-24
    [InlineData("104", 100000e-12)] // CC-25
    [InlineData("154", 150000e-12)] // CC-26
    [InlineData("224", 220000e-12)] // CC-27
    [InlineData("474", 470000e-12)] // CC-28
    [InlineData("105", 1000000e-12)] // CC-29
    public void Read_CodeOnACapacitor_IsPicofarads(string code, double farads)
    {
        Assert.Equal(farads, MarkingCode.Read(code, Unit.Farad)!.Value, farads * 1e-12);
        Assert.Equal(code, MarkingCode.OfCapacitor(farads));
    }

    // IEC 60062: a third figure 8 is × 0.01 and 9 is × 0.1; two figures alone are picofarads. 473J: a printed example.
    [Theory]
    [InlineData("479", 4.7e-12)]
    [InlineData("229", 2.2e-12)]
    [InlineData("478", 0.47e-12)]
    [InlineData("47", 47e-12)]
    [InlineData("473J", 47e-9)]
    [InlineData("104k", 100e-9)]
    public void Read_SmallOrTolerancedCode_IsPicofarads(string code, double farads) =>
        Assert.Equal(farads, MarkingCode.Read(code, Unit.Farad)!.Value, farads * 1e-12);

    // The same digits on a pot or a chip resistor are ohms: public marking lists.
    [Theory]
    [InlineData("473", 47e3)]
    [InlineData("104", 100e3)]
    [InlineData("254", 250e3)]
    [InlineData("504", 500e3)]
    [InlineData("103", 10e3)]
    public void Read_CodeOnAResistor_IsOhms(string code, double ohms) =>
        Assert.Equal(ohms, MarkingCode.Read(code, Unit.Ohm));

    [Theory]
    [InlineData("")]
    [InlineData("4")]
    [InlineData("4733")]
    [InlineData("47k")]
    [InlineData("J")]
    [InlineData("abc")]
    public void Read_NoCode_IsNull(string code) => Assert.Null(MarkingCode.Read(code, Unit.Ohm));

    // Two figures in picofarads, then the number of zeros (IEC 60062): nothing below 10 pF, nothing with three figures.
    [Theory]
    [InlineData(22e-12, "220")]
    [InlineData(10e-6, "106")]
    [InlineData(4.7e-12, null)]
    [InlineData(123e-9, null)]
    [InlineData(0.0, null)]
    public void OfCapacitor_AtTheEdges_IsThreeFiguresOrNone(double farads, string? code) =>
        Assert.Equal(code, MarkingCode.OfCapacitor(farads));
}
