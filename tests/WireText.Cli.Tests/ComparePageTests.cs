using System.Text.RegularExpressions;
using WireText.Testing;

namespace WireText.Cli.Tests;

/// <summary>What <c>docs/compare.md</c> shows is what the program says, and its set-ups work in a real repository.</summary>
public sealed partial class ComparePageTests : IDisposable
{
    private const string Commit = "git -c user.name=bench -c user.email=bench@example.invalid commit -q -m";

    private static readonly string Page = File.ReadAllText(Repository.PathOf("docs", "compare.md"));

    private readonly TestFolder folder = new();
    private readonly Shell shell = new();

    public void Dispose()
    {
        shell.Dispose();
        folder.Dispose();
    }

    [Fact]
    public void Page_ShowsWhatTheProgramSays()
    {
        var shown = Session().Match(Page).Groups["output"].Value;

        var ran = Ran.Of(
            "compare",
            Repository.PathOf("examples", "mods", "stock.wiring"),
            Repository.PathOf("examples", "mods", "mute-and-capacitor.wiring")
        );

        Assert.Equal(shown, ran.Output);
    }

    [SkippableFact]
    public void SetUps_InARepository_ShowWhatTheChangeDoes()
    {
        var commands = Commands().Matches(Page).Select(match => match.Groups["command"].Value.Trim()).ToList();
        Assert.Equal(2, commands.Count);
        folder.Put("shop/guitar.wiring", Sample.Right);
        folder.Put("shop/.gitattributes", Attributes().Match(Page).Groups["line"].Value);
        InShop($"git init -q . && git add . && {Commit} one");
        folder.Put("shop/guitar.wiring", Sample.Right.Replace("l=2.4H", "l=3.4H", StringComparison.Ordinal));
        InShop($"git add . && {Commit} two");

        var tool = InShop(commands[0]);
        InShop(commands[1]);
        var diff = InShop("git diff HEAD~1 -- guitar.wiring");

        Assert.Contains("parts changed\n", tool.Output, StringComparison.Ordinal);
        Assert.Contains("l=2.4H", tool.Output, StringComparison.Ordinal);
        Assert.Matches(new Regex(@"^\+.*kHz", RegexOptions.Multiline, TimeSpan.FromSeconds(5)), diff.Output);
        Assert.DoesNotContain("pickup  neck", diff.Output, StringComparison.Ordinal);
    }

    private ShellRan InShop(string command) => shell.Run(command, folder, "shop");

    [GeneratedRegex(
        "```console\n\\$ [^\n]+\n(?<output>.*?)```",
        RegexOptions.Singleline | RegexOptions.ExplicitCapture
    )]
    private static partial Regex Session();

    [GeneratedRegex("```sh\n(?<command>.*?)```", RegexOptions.Singleline | RegexOptions.ExplicitCapture)]
    private static partial Regex Commands();

    [GeneratedRegex("```text\n(?<line>.*?)```", RegexOptions.Singleline | RegexOptions.ExplicitCapture)]
    private static partial Regex Attributes();
}
