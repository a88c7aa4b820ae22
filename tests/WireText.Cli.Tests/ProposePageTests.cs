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

    /// <summary>The text that the page shows is the file that it names.</summary>
    [Fact]
    public void Page_ShowsTheFile()
    {
        var wish = File.ReadAllText(Repository.PathOf("examples", "propose", "wish.wiring"));

        Assert.Contains($"```wiring\n{wish}```", Page, StringComparison.Ordinal);
    }

    [GeneratedRegex(
        @"```console\n\$ wiretext propose (?<file>\S+)\n(?<output>.*?)```",
        RegexOptions.Singleline | RegexOptions.ExplicitCapture,
        2000
    )]
    private static partial Regex Session();
}
