namespace WireText.Cli.Tests;

/// <summary>Many files in one run: the order does not depend on which is done first, and progress is for people alone.</summary>
public sealed class ManyFilesTests : IDisposable
{
    private readonly Bench bench = new();

    public void Dispose() => bench.Dispose();

    /// <summary>Large and small files, right and wrong ones and some that are not there, so that none is done in order by chance.</summary>
    [Theory]
    [InlineData("text")]
    [InlineData("json")]
    [InlineData("sarif")]
    [InlineData("github")]
    public void Output_WithAnyNumberOfJobs_IsTheSameBytes(string format)
    {
        var files = Shown
            .Examples.Reverse()
            .SelectMany(
                (path, i) =>
                    new[]
                    {
                        bench.Put($"{i}.wiring", File.ReadAllText(path)),
                        bench[$"none-{i}.wiring"],
                        bench.Put($"small-{i}.wiring", Bench.Wrong),
                    }
            )
            .ToArray();

        var alone = Run("1");

        Assert.Equal(2, alone.Code);
        foreach (var jobs in new[] { "2", "3", "8", "64" })
        {
            var ran = Run(jobs);
            Assert.Equal(alone.OutputBytes, ran.OutputBytes);
            Assert.Equal(alone.Error, ran.Error);
            Assert.Equal(alone.Code, ran.Code);
        }

        Ran Run(string jobs) => Bench.Run(["check", "--format", format, "--jobs", jobs, .. files]);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Progress_IsShownOnATerminalAloneAndTakenAway(bool isTerminal)
    {
        string[] files = [bench.Put("a.wiring", Bench.Right), bench.Put("b.wiring", Bench.Right)];

        var ran = Bench.Run(new TestHost { IsErrorTerminal = isTerminal }, ["check", .. files]);

        Assert.Equal(isTerminal, ran.Error.Contains("2 of 2 files checked", StringComparison.Ordinal));
        Assert.Equal(isTerminal, ran.Error.EndsWith("\r\u001b[K", StringComparison.Ordinal));
        Assert.Equal(Bench.Run(["check", .. files]).Output, ran.Output);
    }

    [Fact]
    public void Progress_OfOneFile_IsNone() =>
        Assert.Empty(
            Bench.Run(new TestHost { IsErrorTerminal = true }, "check", bench.Put("a.wiring", Bench.Right)).Error
        );

    [Theory]
    [InlineData("0")]
    [InlineData("257")]
    [InlineData("many")]
    public void Jobs_ThatAreNoNumberOfThem_Exit2(string jobs) =>
        Assert.Equal(2, Bench.Run("check", "--jobs", jobs, bench.Put("a.wiring", Bench.Right)).Code);
}
