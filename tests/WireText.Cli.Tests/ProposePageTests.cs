using System.Text.RegularExpressions;
using WireText.Testing;

namespace WireText.Cli.Tests;

/// <summary>What <c>docs/propose.md</c> shows is what the program says.</summary>
public sealed partial class ProposePageTests
{
    private static readonly string Page = File.ReadAllText(Repository.PathOf("docs", "propose.md"));

    public static TheoryData<string, string> Sessions =>
        Rows.Of(
            Every
                .Of(Session().Matches(Page))
                .Select(match => (match.Groups["file"].Value, match.Groups["output"].Value))
        );

    [Theory]
    [MemberData(nameof(Sessions))]
    public void Page_ShowsWhatTheProgramSays(string file, string shown)
    {
        var ran = Ran.Of("propose", Repository.PathOf([.. file.Split('/')]));

        Assert.Equal(shown, ran.Output);
    }

    /// <summary>README shows the wires and what is proven of them, in the program's own lines.</summary>
    [Fact]
    public void Readme_ShowsWhatTheProgramSaysFirstAndLast()
    {
        var readme = File.ReadAllText(Repository.PathOf("README.md"));
        var shown = ShownInReadme().Match(readme).Groups["output"].Value.TrimEnd().Split("\n\n");

        var output = Ran.Of("propose", Repository.PathOf("examples", "propose", "wish.wiring")).Output;

        Assert.Equal(2, shown.Length);
        Assert.StartsWith($"{shown[0]}\n\n", output, StringComparison.Ordinal);
        Assert.Contains($"\n\n{shown[1]}\n", output, StringComparison.Ordinal);
    }

    /// <summary>The text that the page shows is the file that it names.</summary>
    [Fact]
    public void Page_ShowsTheFile()
    {
        var wish = File.ReadAllText(Repository.PathOf("examples", "propose", "wish.wiring"));

        Assert.Contains($"```wiring\n{wish}```", Page, StringComparison.Ordinal);
    }

    [GeneratedRegex(
        @"whose tone is to work everywhere:\n\n```text\n(?<output>.*?)```",
        RegexOptions.Singleline | RegexOptions.ExplicitCapture,
        2000
    )]
    private static partial Regex ShownInReadme();

    [GeneratedRegex(
        @"```console\n\$ wiretext propose (?<file>\S+)\n(?<output>.*?)```",
        RegexOptions.Singleline | RegexOptions.ExplicitCapture,
        2000
    )]
    private static partial Regex Session();
}
