using MathNet.Numerics.IntegralTransforms;
using WireText.Listening;
using WireText.Testing;

namespace WireText.Tests.Listening;

/// <summary>Held to the runtime's own library and to the transform of another one.</summary>
public class PortableMathTests
{
    [Fact]
    public void Turn_FromMinusThreeToThree_IsCosineAndSine() =>
        Every.Item(
            Enumerable.Range(-3000, 6001).Select(i => i / 1000.0),
            turns =>
            {
                var (cosine, sine) = PortableMath.Turn(turns);
                var angle = 2 * Math.PI * turns;

                // The angle itself is only known to its last digit, 3.6e-15 at 19.
                Assert.Equal(Math.Cos(angle), cosine, 4e-15);
                Assert.Equal(Math.Sin(angle), sine, 4e-15);
            }
        );

    [Theory]
    [InlineData(0, 1, 0)]
    [InlineData(0.25, 0, 1)]
    [InlineData(0.5, -1, 0)]
    [InlineData(-0.25, 0, -1)]
    [InlineData(1e6 + 0.5, -1, 0)]
    public void Turn_OfQuarters_IsExact(double turns, double cosine, double sine) =>
        Assert.Equal((cosine, sine), PortableMath.Turn(turns));

    [Fact]
    public void Exp_FromMinus40To40_IsThatOfTheRuntime() =>
        Every.Item(
            Enumerable.Range(-4000, 8001).Select(i => i / 100.0),
            power => Assert.Equal(1, PortableMath.Exp(power) / Math.Exp(power), 1e-14)
        );

    [Theory]
    [InlineData(-12, 0.251188643150958)]
    [InlineData(0, 1)]
    [InlineData(-20, 0.1)]
    public void RatioOf_Decibels_IsTenToTheirTwentieth(double decibels, double ratio) =>
        Assert.Equal(ratio, PortableMath.RatioOf(decibels), 1e-14);

    [Theory]
    [InlineData(2)]
    [InlineData(8)]
    [InlineData(1024)]
    public void Forward_OfAnything_IsThatOfAnotherLibraryAndComesBack(int size)
    {
        // A row without any pattern: the fractional parts of multiples of two irrational numbers.
        var real = Enumerable.Range(0, size).Select(i => (i * Math.Sqrt(2) % 1) - 0.5).ToArray();
        var imaginary = Enumerable.Range(0, size).Select(i => (i * Math.Sqrt(5) % 1) - 0.5).ToArray();
        var (re, im) = ((double[])real.Clone(), (double[])imaginary.Clone());
        var theirs = real.Zip(imaginary, (a, b) => new System.Numerics.Complex(a, b)).ToArray();
        Fourier.Forward(theirs, FourierOptions.AsymmetricScaling);

        var fft = new Fft(size);
        fft.Forward(re, im);

        Every.Item(
            theirs,
            (bin, i) => Assert.Equal(0, (bin - new System.Numerics.Complex(re[i], im[i])).Magnitude, 1e-11)
        );
        fft.Back(re, im);
        Every.Item(real, (value, i) => Assert.Equal(value, re[i], 1e-13));
        Every.Item(imaginary, (value, i) => Assert.Equal(value, im[i], 1e-13));
    }
}
