using WireText.Testing;

namespace WireText.Cli.Tests;

/// <summary>The page for <c>man</c>, read by the programs that read such pages.</summary>
public sealed class ManualCommandTests : IDisposable
{
    private readonly TestFolder folder = new();
    private readonly Shell shell = new();

    public void Dispose()
    {
        shell.Dispose();
        folder.Dispose();
    }

    /// <summary>Long lines are allowed, and the date is left out: the page is the same on every day.</summary>
    [SkippableFact]
    public void Lint_FindsNothing()
    {
        Skip.If(Programs.Find("mandoc") is null, "mandoc is not installed: install it to have the page linted");
        folder.Put("wiretext.1", Ran.Of("man").Output);

        var told = shell
            .Run("mandoc -Tlint wiretext.1", folder)
            .Output.Split('\n', StringSplitOptions.RemoveEmptyEntries);

        Assert.DoesNotContain(
            told,
            line =>
                !line.Contains("STYLE: input text line longer than 80 bytes", StringComparison.Ordinal)
                && !line.Contains("WARNING: missing date", StringComparison.Ordinal)
        );
    }

    [SkippableFact]
    public void Man_ShowsEveryCommandAndOption()
    {
        Skip.If(Programs.Find("man") is null, "man is not installed: install it to have the page shown");
        folder.Put("wiretext.1", Ran.Of("man").Output);

        var ran = shell.Run("MANWIDTH=200 LC_ALL=C.UTF-8 man -l ./wiretext.1 | col -b", folder);

        Assert.Equal((0, ""), (ran.Code, ran.Error));
        Assert.Contains("wiretext - guitar wiring as text, checked and drawn", ran.Output, StringComparison.Ordinal);
        Assert.Contains("wiretext compare OLD NEW", ran.Output, StringComparison.Ordinal);
        Assert.Contains("before → after", ran.Output, StringComparison.Ordinal);
        var help = Ran.Of("draw", "--help").Output;
        Every.Item(
            help.Split(' ', '\n', ',', ':').Where(word => word.StartsWith("--", StringComparison.Ordinal)),
            option => Assert.Contains(option, ran.Output, StringComparison.Ordinal)
        );
    }
}
