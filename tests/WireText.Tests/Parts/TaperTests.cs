using WireText.Parts;
using WireText.Testing;

namespace WireText.Tests.Parts;

public class TaperTests
{
    // IEC 60393-1:2008 laws 15A, 10A, 15C, 10C by the exponential model: the percentage of the code stands at half
    // travel; 40 % of the resistance lies in the first 75 % of travel for 15A, 60 % in the first 25 % for 15C (printed
    // in a digital pot library's README); 26/80 for 10A at 75 % is exact.
    [Theory]
    [InlineData("linear", 2.5, 0.25)]
    [InlineData("audio", 5, 0.15)]
    [InlineData("audio", 7.5, 0.4014)]
    [InlineData("audio-10", 5, 0.10)]
    [InlineData("audio-10", 7.5, 0.325)]
    [InlineData("reverse-audio", 5, 0.85)]
    [InlineData("reverse-audio", 2.5, 0.5986)]
    [InlineData("reverse-audio-10", 5, 0.90)]
    public void FractionAt_OfANamedLaw_IsTheStandards(string name, double travel, double fraction) =>
        Assert.Equal(fraction, Taper.Named.Single(t => t.Name == name).FractionAt(travel), 5e-5);

    [Fact]
    public void FractionAt_TheEnds_IsExact() =>
        Every.Item(
            Taper.Named,
            taper =>
            {
                Assert.Equal(0, taper.FractionAt(0));
                Assert.Equal(1, taper.FractionAt(10));
            }
        );

    // A reverse law is the mirror image: y_C(t) + y_A(1 - t) = 1, an identity.
    [Fact]
    public void FractionAt_ReverseLaw_MirrorsTheForwardOne()
    {
        for (var travel = 0.0; travel <= 10; travel += 0.5)
        {
            Assert.Equal(1, Taper.ReverseAudio.FractionAt(travel) + Taper.Audio.FractionAt(10 - travel), 12);
        }
    }

    [Fact]
    public void FractionAt_GivenPoints_GoesStraightBetweenThem()
    {
        var taper = new Taper("points", [new(0, 0), new(5, 0.2), new(10, 1)], null, false);

        Assert.Equal(0.1, taper.FractionAt(2.5), 12);
        Assert.Equal(0.6, taper.FractionAt(7.5), 12);
        Assert.Equal(1, taper.FractionAt(10));
    }
}
