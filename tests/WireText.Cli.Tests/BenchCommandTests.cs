namespace WireText.Cli.Tests;

public sealed class BenchCommandTests : IDisposable
{
    private readonly TestFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Bench_OfARightCircuit_WritesThePlanAlone()
    {
        var ran = Ran.Of("bench", folder.Put("a.wiring", Sample.Right));

        Assert.Equal(0, ran.Code);
        Assert.StartsWith("no.  dials", ran.Output, StringComparison.Ordinal);
        Assert.Contains("6.00 kΩ (5.70–6.30)", ran.Output, StringComparison.Ordinal);
        Assert.Contains(
            "1 shows nothing\n    wire neck.hot to out.tip left out\n",
            ran.Output,
            StringComparison.Ordinal
        );
    }

    /// <summary>6 kΩ ± 5 %, one reading; a neighbouring lug of a jack is its other one.</summary>
    [Theory]
    [InlineData(
        "csv",
        "number,dials,from,to,reads_ohm,reads_least_ohm,reads_most_ohm,range_ohm,assumed,found\n1,at rest,out.tip,out.sleeve,6000,5700,6300,20000,no,\n"
    )]
    [InlineData(
        "faults-csv",
        "group,fault,wrong_readings\n"
            + "1,wire neck.hot to out.tip left out,1 shows nothing\n"
            + "1,wire neck.ground to out.sleeve left out,1 shows nothing\n"
            + "1,coil neck open,1 shows nothing\n"
            + "1,wire neck.hot to out.tip on out.sleeve instead of out.tip,1 shows nothing\n"
            + "1,wire neck.ground to out.sleeve on out.tip instead of out.sleeve,1 shows nothing\n"
            + "2,coil neck shorted,1 shows under 1 Ω\n"
    )]
    public void Bench_AsATable_OfStandardInput(string format, string expected)
    {
        var ran = Ran.Of(new TestHost(Sample.Right), "bench", "--format", format, "-");

        Assert.Equal(0, ran.Code);
        Assert.Equal(expected, ran.Output);
    }

    [Fact]
    public void Bench_OfACircuitWithAnError_TellsItAsideAndPlansWhatIsWired()
    {
        var ran = Ran.Of("bench", folder.Put("a.wiring", Sample.Right + "wire out.tip to out.sleeve black\n"));

        Assert.Equal(1, ran.Code);
        Assert.Contains("[shorted-output]", ran.Error, StringComparison.Ordinal);
        Assert.Contains("under 1 Ω", ran.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Bench_WithAssumedCoils_MarksReadingAndNeedle()
    {
        var file = folder.Put(
            "a.wiring",
            "pickup neck single-coil\njack out mono\nwire neck.hot to out.tip white\nwire neck.ground to out.sleeve black\n"
        );

        var output = Ran.Of("bench", file).Output;

        Assert.Matches(@"(?m)^1 .* kΩ \([^)]*\) \*", output);
        Assert.Contains("alike *", output, StringComparison.Ordinal);
        Assert.Contains("* with coils whose resistance is assumed", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Bench_WithoutAJack_CannotBeDone()
    {
        var ran = Ran.Of("bench", folder.Put("a.wiring", "pickup neck single-coil dcr=6k l=2.4H c=100p\n"));

        Assert.Equal(2, ran.Code);
        Assert.Empty(ran.Output);
    }
}
