using System.Text.RegularExpressions;
using WireText.Quantities;
using WireText.Testing;

namespace WireText.Cli.Tests;

/// <summary>What README and the pages show is what the program says.</summary>
public partial class ReadmeTests
{
    [Theory]
    [InlineData("README.md")]
    [InlineData("docs/bench.md")]
    [InlineData("docs/ci.md")]
    [InlineData("docs/findings-json.md")]
    [InlineData("docs/match.md")]
    [InlineData("docs/listen.md")]
    [InlineData("docs/positions.md")]
    [InlineData("docs/preamps.md")]
    [InlineData("docs/repairs.md")]
    [InlineData("docs/response.md")]
    [InlineData("docs/spread.md")]
    [InlineData("docs/start.md")]
    [InlineData("docs/unknown-values.md")]
    public void EveryCommandOfAPage_GivesTheOutputShown(string page)
    {
        var shown = Console().Matches(File.ReadAllText(Repository.PathOf(page))).Select(m => m.Groups["text"].Value);
        var sessions = shown.Where(text => text.StartsWith("$ wiretext ", StringComparison.Ordinal)).ToList();

        Assert.NotEmpty(sessions);
        foreach (var session in sessions)
        {
            var (command, output) = Split(session);
            using var folder = new TestFolder();

            var ran = Ran.Of(
                new TestHost { WorkingFolder = Repository.Root },
                [.. ArgumentsOf(command["$ wiretext ".Length..], folder)]
            );

            // The paths that the tests give are whole ones; README's are from the repository's root.
            Assert.Equal(
                output,
                ran.Output.Replace(Repository.Root.Replace('\\', '/') + "/", "", StringComparison.Ordinal)
                    .Replace(folder.Root + Path.DirectorySeparatorChar, "", StringComparison.Ordinal)
            );
        }
    }

    /// <summary>The file that the page shows is the one that its commands read, and its table has the values that are taken.</summary>
    [Fact]
    public void ThePageOnUnknownValues_ShowsItsFile_AndWhatIsTaken()
    {
        var page = File.ReadAllText(Repository.PathOf("docs", "unknown-values.md"));

        Assert.Contains(
            $"```wiring\n{File.ReadAllText(Repository.PathOf("docs", "unknown", "bench-find.wiring"))}```",
            page,
            StringComparison.Ordinal
        );
        ValueUse[] uses = [ValueUse.Pot, ValueUse.Resistor, ValueUse.Capacitor, ValueUse.Inductor];
        foreach (var use in uses)
        {
            var (least, usual, most) = use.WhenUnknown!.Value;
            var row = string.Join(
                " | ",
                new[] { least, usual, most }.Select(value => ValueText.Label(value, use.Unit))
            );
            Assert.Contains($"| {use.What.Split(' ')[1]} | {row} |", page, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void TheDrawCommandOfReadme_DrawsARealCircuit()
    {
        var command = DrawCommandLine().Match(File.ReadAllText(Repository.PathOf("README.md"))).Groups["args"].Value;
        using var folder = new TestFolder();
        var ran = Ran.Of([.. ArgumentsOf(command, folder)]);

        Assert.Equal(0, ran.Code);
        Assert.Contains("<svg", folder.Text("guitar.svg"), StringComparison.Ordinal);
    }

    /// <summary>The chart that README shows is what the command above it writes.</summary>
    [Fact]
    public void TheResponseCommandOfReadme_WritesTheChartShown()
    {
        var command = ResponseCommandLine()
            .Match(File.ReadAllText(Repository.PathOf("README.md")))
            .Groups["args"]
            .Value;
        using var folder = new TestFolder();

        var ran = Ran.Of([.. ArgumentsOf(command, folder)]);

        Assert.Equal(0, ran.Code);
        Assert.Equal(
            File.ReadAllText(Repository.PathOf("examples", "response", "2-tone.svg")),
            folder.Text("tone.svg")
        );
    }

    /// <summary>Sources come from the repository; what is written goes to the folder.</summary>
    private static IEnumerable<string> ArgumentsOf(string command, TestFolder folder) =>
        command
            .Split(' ')
            .Select(word =>
                word.EndsWith(".wiring", StringComparison.Ordinal) ? Repository.PathOf(word)
                : word.EndsWith(".svg", StringComparison.Ordinal) || word.EndsWith(".wav", StringComparison.Ordinal)
                    ? folder[word]
                : word
            );

    private static (string Command, string Output) Split(string session)
    {
        var end = session.IndexOf('\n', StringComparison.Ordinal);
        return (session[..end], session[(end + 1)..]);
    }

    [GeneratedRegex("(?<fence>`{3,})console\n(?<text>.*?)\\k<fence>", RegexOptions.Singleline, 2000)]
    private static partial Regex Console();

    [GeneratedRegex("\\$ wiretext (?<args>response .*)", RegexOptions.None, 2000)]
    private static partial Regex ResponseCommandLine();

    [GeneratedRegex("dotnet run --project src/WireText.Cli -- (?<args>draw .*)", RegexOptions.None, 2000)]
    private static partial Regex DrawCommandLine();
}
