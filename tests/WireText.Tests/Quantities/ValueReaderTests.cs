using WireText.Quantities;

namespace WireText.Tests.Quantities;

public class ValueReaderTests
{
    // IEC 60062 letter and digit code for resistors: examples of the standard as printed in public lists.
    [Theory]
    [InlineData("R47", 0.47)] // RK-01
    [InlineData("4R7", 4.7)] // RK-02
    [InlineData("470R", 470)] // RK-03
    [InlineData("4K7", 4.7e3)] // RK-04
    [InlineData("47K", 47e3)] // RK-05
    [InlineData("47K3", 47.3e3)] // RK-06
    [InlineData("470K", 470e3)] // RK-07
    [InlineData("4M7", 4.7e6)] // RK-08
    [InlineData("R10", 0.1)] // RK-09
    [InlineData("R300", 0.300)] // RK-10
    [InlineData("1K0", 1e3)] // RK-11
    [InlineData("2M2", 2.2e6)] // RK-12
    [InlineData("250K", 250e3)] // RK-13
    [InlineData("500K", 500e3)] // RK-14
    [InlineData("1M", 1e6)] // RK-15
    public void Read_ResistorInLettersAndDigits_IsItsOhms(string text, double ohms) =>
        Assert.Equal(ohms, ValueReader.Read(text, ValueUse.Resistor).Value);

    // The same for capacitors.
    [Theory]
    [InlineData("10p", 10e-12)] // RK-16
    [InlineData("4n7", 4.7e-9)] // RK-17
    [InlineData("1µ0", 1e-6)] // RK-18
    [InlineData("2n2", 2.2e-9)] // RK-19
    [InlineData("22n", 22e-9)] // RK-20
    [InlineData("47n", 47e-9)] // RK-21
    [InlineData("n47", 0.47e-9)] // RK-22
    [InlineData("n22", 0.22e-9)] // RK-23
    [InlineData("4p7", 4.7e-12)] // RK-24
    [InlineData("p33", 0.33e-12)] // RK-25
    [InlineData("100n", 100e-9)] // RK-26
    [InlineData("µ1", 0.1e-6)] // RK-27
    [InlineData("u1", 0.1e-6)] // RK-27
    public void Read_CapacitorInLettersAndDigits_IsItsFarads(string text, double farads) =>
        Assert.Equal(farads, ValueReader.Read(text, ValueUse.Capacitor).Value);

    // SI prefixes (BIPM, SI brochure): one value in many dresses.
    [Theory]
    [InlineData(".047uF", 47e-9)]
    [InlineData("0.047µF", 47e-9)]
    [InlineData("0.047μ", 47e-9)]
    [InlineData("47nF", 47e-9)]
    [InlineData("47nf", 47e-9)]
    [InlineData("47000p", 47e-9)]
    [InlineData("4n7F", 4.7e-9)]
    [InlineData("1e", null)]
    [InlineData("4.7.1n", null)]
    [InlineData("4n7n", null)]
    [InlineData(".n", null)]
    public void Read_Capacitor_IsItsFarads(string text, double? farads) =>
        Assert.Equal(farads, ValueReader.Read(text, ValueUse.Capacitor).Value);

    [Theory]
    [InlineData("250k", 250e3)]
    [InlineData("250K", 250e3)]
    [InlineData("250kΩ", 250e3)]
    [InlineData("250k\u2126", 250e3)]
    [InlineData("250kohm", 250e3)]
    [InlineData("0.25M", 250e3)]
    [InlineData("1M", 1e6)]
    public void Read_Pot_IsItsOhms(string text, double ohms) =>
        Assert.Equal(ohms, ValueReader.Read(text, ValueUse.Pot).Value);

    [Theory]
    [InlineData("2.2H", 2.2)]
    [InlineData("2H2", 2.2)]
    [InlineData("850mH", 0.85)]
    public void Read_Inductance_IsItsHenries(string text, double henries) =>
        Assert.Equal(henries, ValueReader.Read(text, ValueUse.CoilInductance).Value);

    [Theory]
    [InlineData("152mm", 0.152)]
    [InlineData("0.152m", 0.152)]
    public void Read_Length_IsItsMetres(string text, double metres) =>
        Assert.Equal(metres, ValueReader.Read(text, ValueUse.TurnLength).Value);

    [Fact]
    public void Read_MilliohmsForAPot_OffersWhatIsUsual()
    {
        var reading = ValueReader.Read("500m", ValueUse.Pot);

        Assert.Null(reading.Value);
        Assert.Equal("500 milliohms? a pot of 500k is usual", reading.Problem);
        Assert.Equal("500k", reading.Suggestion);
    }

    [Theory]
    [InlineData("250", "250k")]
    [InlineData("1", "1M")]
    public void Read_PotWithoutALetter_OffersTheReadings(string text, string likeliest)
    {
        var reading = ValueReader.Read(text, ValueUse.Pot);

        Assert.Contains($"'{text}' needs a letter", reading.Problem, StringComparison.Ordinal);
        Assert.Contains($"'{text}k' is", reading.Problem, StringComparison.Ordinal);
        Assert.Equal(likeliest, reading.Suggestion);
    }

    [Theory]
    [InlineData("47", "47n")]
    [InlineData(".022", ".022u")]
    public void Read_CapacitorWithoutALetter_OffersTheLikeliest(string text, string likeliest) =>
        Assert.Equal(likeliest, ValueReader.Read(text, ValueUse.Capacitor).Suggestion);

    [Theory]
    [InlineData("47n", "47 nanoohms? a pot of 47k is usual")]
    [InlineData("47nF", "is in farads")]
    [InlineData("2.2H", "is in henries")]
    [InlineData("9V", "is in volts")]
    [InlineData("-5k", "has a sign")]
    [InlineData("k", "is not a value")]
    [InlineData("250x", "is not a unit")]
    [InlineData("0k", "0 ohms?")]
    public void Read_WrongForAPot_SaysWhy(string text, string expected)
    {
        var reading = ValueReader.Read(text, ValueUse.Pot);

        Assert.Null(reading.Value);
        Assert.Contains(expected, reading.Problem, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("4,7k", "4.7k")]
    [InlineData("47N", "47n")]
    public void Read_SlipOfThePen_OffersTheRightText(string text, string mended) =>
        Assert.Equal(
            mended,
            ValueReader.Read(text, text.EndsWith('N') ? ValueUse.Capacitor : ValueUse.Resistor).Suggestion
        );
}
