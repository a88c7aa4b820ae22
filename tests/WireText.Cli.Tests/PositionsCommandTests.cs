namespace WireText.Cli.Tests;

public sealed class PositionsCommandTests : IDisposable
{
    private readonly TestFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Positions_OfARightCircuit_WritesTheTableAlone()
    {
        var ran = Ran.Of("positions", folder.Put("a.wiring", Sample.Right));

        Assert.Equal(0, ran.Code);
        Assert.StartsWith("heard  level", ran.Output, StringComparison.Ordinal);
        Assert.Contains("6.00 kΩ", ran.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Positions_OfACircuitWithAnError_TellsItAsideAndStillWritesTheTable()
    {
        var file = folder.Put("a.wiring", Sample.Right + "wire out.tip to out.sleeve black\n");

        var ran = Ran.Of("positions", file);

        Assert.Equal(1, ran.Code);
        Assert.Contains("[shorted-output]", ran.Error, StringComparison.Ordinal);
        Assert.Contains("silence: tip and sleeve are joined", ran.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("json", "{\n")]
    [InlineData("csv", "heard,outcome,")]
    [InlineData("markdown", "| heard | level |")]
    public void Positions_OtherForms_OfStandardInput(string format, string start)
    {
        var ran = Ran.Of(new TestHost(Sample.Right), "positions", "--format", format, "-");

        Assert.Equal(0, ran.Code);
        Assert.StartsWith(start, ran.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Positions_Expect_WritesLinesThatCheckProves()
    {
        var lines = Ran.Of(new TestHost(Sample.Right), "positions", "--expect", "-").Output;

        var ran = Ran.Of(new TestHost(Sample.Right + lines), "check", "-");

        Assert.StartsWith("expect  rest:  neck, reads 6k", lines, StringComparison.Ordinal);
        Assert.Equal("nothing found\n", ran.Output);
    }

    [Theory]
    [InlineData("pickup neck single-coil\n", "no output jack")]
    [InlineData("base \"stock.wiring\"\n", "no circuit")]
    public void Positions_OfNoCircuit_SaysWhy(string wiring, string why)
    {
        var ran = Ran.Of("positions", folder.Put("a.wiring", wiring));

        Assert.Equal(2, ran.Code);
        Assert.Contains(why, ran.Error, StringComparison.Ordinal);
    }
}
