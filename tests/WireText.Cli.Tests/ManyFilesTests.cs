namespace WireText.Cli.Tests;

/// <summary>Many files in one run: the order does not depend on which is done first, and progress is for people alone.</summary>
public sealed class ManyFilesTests : IDisposable
{
    private readonly TestFolder folder = new();

    public void Dispose() => folder.Dispose();

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
                        folder.Put($"{i}.wiring", File.ReadAllText(path)),
                        folder[$"none-{i}.wiring"],
                        folder.Put($"small-{i}.wiring", Sample.Wrong),
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

        Ran Run(string jobs) => Ran.Of(["check", "--format", format, "--jobs", jobs, .. files]);
    }

    [Fact]
    public void Folder_StandsForTheWiringFilesInItAndBelowIt_InTheOrderOfTheirNames()
    {
        var names = new[] { "b.wiring", "a.wiring", "z/c.wiring" };
        Directory.CreateDirectory(folder["shop/z"]);
        string[] files =
        [
            .. names.Select(name => folder.Put($"shop/{name}", Sample.Wrong)).Order(StringComparer.Ordinal),
        ];
        folder.Put("shop/notes.txt", "not a circuit");

        var ran = Ran.Of("check", folder["shop"]);

        Assert.Equal(Ran.Of(["check", .. files]).Output, ran.Output);
        Assert.Equal(1, ran.Code);
    }

    [Fact]
    public void Folder_WithoutAnyWiringFile_Exits2AndSaysSo()
    {
        Directory.CreateDirectory(folder["empty"]);

        var ran = Ran.Of("check", folder["empty"]);

        Assert.Equal(2, ran.Code);
        Assert.Contains("there is no .wiring file in it", ran.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Progress_IsShownOnATerminalAloneAndTakenAway(bool isTerminal)
    {
        string[] files = [folder.Put("a.wiring", Sample.Right), folder.Put("b.wiring", Sample.Right)];

        var ran = Ran.Of(new TestHost { IsErrorTerminal = isTerminal }, ["check", .. files]);

        Assert.Equal(isTerminal, ran.Error.Contains("2 of 2 files checked", StringComparison.Ordinal));
        Assert.Equal(isTerminal, ran.Error.EndsWith("\r\u001b[K", StringComparison.Ordinal));
        Assert.Equal(Ran.Of(["check", .. files]).Output, ran.Output);
    }

    [Fact]
    public void Progress_OfOneFile_IsNone() =>
        Assert.Empty(
            Ran.Of(new TestHost { IsErrorTerminal = true }, "check", folder.Put("a.wiring", Sample.Right)).Error
        );

    [Theory]
    [InlineData("0")]
    [InlineData("257")]
    [InlineData("many")]
    public void Jobs_ThatAreNoNumberOfThem_Exit2(string jobs) =>
        Assert.Equal(2, Ran.Of("check", "--jobs", jobs, folder.Put("a.wiring", Sample.Right)).Code);
}
