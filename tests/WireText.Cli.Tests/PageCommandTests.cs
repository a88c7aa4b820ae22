using System.Text.RegularExpressions;
using WireText.Pages;
using WireText.Testing;

namespace WireText.Cli.Tests;

public sealed partial class PageCommandTests : IDisposable
{
    private readonly TestFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Page_OfACircuit_IsWrittenWhereItIsAskedFor()
    {
        var file = folder.Put("a.wiring", Sample.Right);

        var ran = Ran.Of("page", file, "-o", folder["a.html"]);

        Assert.Equal((0, "", ""), (ran.Code, ran.Output, ran.Error));
        Assert.StartsWith("<!DOCTYPE html>", folder.Text("a.html"), StringComparison.Ordinal);
        Assert.Equal(folder.Text("a.html"), Ran.Of("page", file).Output);
    }

    [Fact]
    public void Page_OfAWiringWithAnError_IsNotWrittenAndTheFindingIsTold()
    {
        var ran = Ran.Of("page", folder.Put("a.wiring", Sample.Wrong), "-o", folder["a.html"]);

        Assert.Equal(1, ran.Code);
        Assert.Contains("blakc", ran.Error, StringComparison.Ordinal);
        Assert.Contains("no page is written", ran.Error, StringComparison.Ordinal);
        Assert.False(File.Exists(folder["a.html"]));
    }

    [Theory]
    [InlineData("", "the circuit has no parts")]
    [InlineData("pickup neck single-coil\nallow unconnected-lug \"a part of one\"\n", "no output jack to listen at")]
    public void Page_OfWhatCannotBeHeard_SaysWhy(string wiring, string words)
    {
        var ran = Ran.Of("page", folder.Put("a.wiring", wiring));

        Assert.Equal(2, ran.Code);
        Assert.Contains(words, ran.Error, StringComparison.Ordinal);
    }

    /// <summary>Twelve switches have 4096 positions together: more than a page has, and that is said at once.</summary>
    [Fact]
    public void Page_OfTooManyPositions_SaysHowManyThereMayBe()
    {
        var switches = string.Concat(Enumerable.Range(1, 12).Select(i => $"switch s{i} spdt\n"));

        var ran = Ran.Of("page", folder.Put("a.wiring", Sample.Right + switches));

        Assert.Contains($"a page has {PageStates.MostStates} positions", ran.Error, StringComparison.Ordinal);
        Assert.Equal(2, ran.Code);
    }

    [Fact]
    public void CommandOfThePage_WritesAPage()
    {
        var words = Command()
            .Match(File.ReadAllText(Repository.PathOf("docs", "page.md")))
            .Groups["args"]
            .Value.Split(' ');

        var ran = Ran.Of([
            .. words.Select(word =>
                word.EndsWith(".wiring", StringComparison.Ordinal) ? Repository.PathOf(word)
                : word.EndsWith(".html", StringComparison.Ordinal) ? folder[word]
                : word
            ),
        ]);

        Assert.Equal(0, ran.Code);
        Assert.Contains("<td>neck parallel bridge</td>", folder.Text("guitar.html"), StringComparison.Ordinal);
    }

    /// <summary>The table of what turns names the bound of the program.</summary>
    [Fact]
    public void PageOnPages_NamesTheBound() =>
        Assert.Contains(
            PageStates.MostStates.ToString("N0", System.Globalization.CultureInfo.InvariantCulture),
            File.ReadAllText(Repository.PathOf("docs", "page.md")),
            StringComparison.Ordinal
        );

    [GeneratedRegex("^wiretext (?<args>page .*)$", RegexOptions.Multiline, 2000)]
    private static partial Regex Command();
}
