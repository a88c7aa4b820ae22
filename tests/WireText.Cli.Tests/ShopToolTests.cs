using System.Text.RegularExpressions;
using WireText.Testing;

namespace WireText.Cli.Tests;

/// <summary>The hooks and the workflow of <c>docs/ci.md</c>: each command is run, as it stands, on a right and a wrong circuit.</summary>
public sealed partial class ShopToolTests : IDisposable
{
    private static readonly string Hooks = File.ReadAllText(Repository.PathOf(".pre-commit-hooks.yaml"));

    private static readonly string Page = File.ReadAllText(Repository.PathOf("docs", "ci.md"));

    private readonly TestFolder folder = new();
    private readonly Shell shell = new();

    public static TheoryData<string> HookEntries => Rows.Of(Values(Hooks, "entry"));

    public static TheoryData<string> Steps => Rows.Of(Values(Page, "run"));

    public void Dispose()
    {
        shell.Dispose();
        folder.Dispose();
    }

    [SkippableTheory]
    [MemberData(nameof(HookEntries))]
    public void Hook_OnARightAndAWrongFile_PassesAndStops(string entry)
    {
        var wrong = entry.Contains("format", StringComparison.Ordinal)
            ? "jack   out    mono\npot vol 250k audio\n"
            : Sample.Wrong;
        folder.Put("shop/right one.wiring", Sample.Right);
        Ran.Of("format", folder["shop/right one.wiring"]);
        folder.Put("shop/wrong.wiring", wrong);

        // pre-commit hands the files over as arguments.
        Assert.Equal(0, InShop($"{entry} 'right one.wiring'").Code);
        Assert.Equal(1, InShop($"{entry} 'right one.wiring' wrong.wiring").Code);
    }

    [SkippableTheory]
    [MemberData(nameof(Steps))]
    public void Step_OnARightAndAWrongFile_PassesAndFails(string step)
    {
        folder.Put("shop/right.wiring", Sample.Right);
        InShop("git init -q . && git add right.wiring");
        Assert.Equal(0, InShop(step).Code);

        folder.Put("shop/harness/wrong.wiring", Sample.Wrong);
        InShop("git add harness");
        var ran = InShop(step);

        Assert.Equal(1, ran.Code);
        var said =
            ran.Output + ran.Error + (File.Exists(folder["shop/wiring.sarif"]) ? folder.Text("shop/wiring.sarif") : "");
        Assert.Contains("harness/wrong.wiring", said, StringComparison.Ordinal);
    }

    [Fact]
    public void Hooks_TakeWiringFilesAlone()
    {
        Assert.Equal(["wiretext-check", "wiretext-format"], Values(Hooks, "- id"));
        Every.Item(
            Values(Hooks, "files"),
            pattern =>
            {
                var files = new Regex(pattern, RegexOptions.None, TimeSpan.FromSeconds(2));
                Assert.Matches(files, "guitars/a.wiring");
                Assert.DoesNotMatch(files, "guitars/a.wiring.svg");
            }
        );
    }

    /// <summary>What the page shows for a shop's own file is the hook that the repository has.</summary>
    [Fact]
    public void Page_ShowsTheCheckHook()
    {
        foreach (var key in new[] { "entry", "files", "language", "name" })
        {
            Assert.Contains(Values(Hooks, key)[0], Values(Page, key));
        }
    }

    private ShellRan InShop(string command) => shell.Run(command, folder, "shop");

    /// <summary>The values of a key, in order, read line by line.</summary>
    private static List<string> Values(string yaml, string key) =>
        [
            .. Entry()
                .Matches(yaml)
                .Where(match => match.Groups["key"].Value == key || match.Groups["key"].Value == $"- {key}")
                .Select(match => match.Groups["value"].Value),
        ];

    [GeneratedRegex(@"^ *(?<key>(?:- )?[a-z]+): (?<value>\S.*)$", RegexOptions.Multiline, 2000)]
    private static partial Regex Entry();
}
