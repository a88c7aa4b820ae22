using WireText.Electrical.Tolerances;

namespace WireText.Tests.Electrical.Tolerances;

public class PercentileTests
{
    /// <summary>Definition 7 by hand: of 1 to 10 the quarter has the rank 1 + 9·0.25 = 3.25, and rank and value are one there.</summary>
    [Theory]
    [InlineData(0, 1)]
    [InlineData(25, 3.25)]
    [InlineData(50, 5.5)]
    [InlineData(95, 9.55)]
    [InlineData(100, 10)]
    public void Of_OneToTen_IsThatOfTheDefinition(double percent, double expected)
    {
        double[] values = [.. Enumerable.Range(1, 10).Select(value => (double)value)];

        Assert.Equal(expected, Percentile.Of(values, percent), 1e-12);
    }

    [Fact]
    public void Of_OneValue_IsIt() => Assert.Equal(4, Percentile.Of([4], 95));
}
