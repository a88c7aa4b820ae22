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

    [Fact]
    public void Folder_StandsForTheWiringFilesInItAndBelowIt_InTheOrderOfTheirNames()
    {
        var names = new[] { "b.wiring", "a.wiring", "z/c.wiring" };
        Directory.CreateDirectory(bench["shop/z"]);
        string[] files =
        [
            .. names.Select(name => bench.Put($"shop/{name}", Bench.Wrong)).Order(StringComparer.Ordinal),
        ];
        bench.Put("shop/notes.txt", "not a circuit");

        var ran = Bench.Run("check", bench["shop"]);

        Assert.Equal(Bench.Run(["check", .. files]).Output, ran.Output);
        Assert.Equal(1, ran.Code);
    }

    [Fact]
    public void Folder_WithoutAnyWiringFile_Exits2AndSaysSo()
    {
        Directory.CreateDirectory(bench["empty"]);

        var ran = Bench.Run("check", bench["empty"]);

        Assert.Equal(2, ran.Code);
        Assert.Contains("there is no .wiring file in it", ran.Error, StringComparison.Ordinal);
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
