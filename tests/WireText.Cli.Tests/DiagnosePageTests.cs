using System.Globalization;
using System.Text.RegularExpressions;
using WireText.Electrical.Faults;
using WireText.Testing;

namespace WireText.Cli.Tests;

/// <summary>What <c>docs/diagnose.md</c> shows is what the program says and what its list has.</summary>
public sealed partial class DiagnosePageTests
{
    private const string Name = "docs/diagnose.md";

    private static readonly string Page = File.ReadAllText(Repository.PathOf("docs", "diagnose.md"));

    [Fact]
    public void Page_ShowsWhatTheProgramSaysAndTheWeightsThatItTakes()
    {
        var page = Session()
            .Replace(
                Page,
                match =>
                {
                    var file = match.Groups["file"].Value;
                    var output = Ran.Of("diagnose", Repository.PathOf([.. file.Split('/')])).Output;
                    return $"```console\n$ wiretext diagnose {file}\n{output}```";
                }
            );
        AcceptedFile.Check(Name, Weights().Replace(page, match => match.Groups["head"].Value + Table() + "<!-- end"));
    }

    /// <summary>The lines that the page shows stand in the file that it names.</summary>
    [Fact]
    public void Page_ShowsTheLinesOfTheFile()
    {
        var file = File.ReadAllText(Repository.PathOf("examples", "diagnose", "hums-in-the-middle.wiring"));
        var shown = Found().Match(Page).Groups["lines"].Value;

        Assert.NotEmpty(shown);
        Assert.EndsWith(shown, file, StringComparison.Ordinal);
    }

    private static string Table() =>
        "| name | fault | instances | fresh | worked | from |\n| --- | --- | --- | ---: | ---: | --- |\n"
        + string.Concat(
            FaultWeights.Usual.All.Select(one =>
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"| `{one.Key}` | {one.Title} | {one.Instances} | {one.Fresh} | {one.Worked} | {one.Why} |\n"
                )
            )
        );

    [GeneratedRegex(
        @"```console\n\$ wiretext diagnose (?<file>\S+)\n.*?```",
        RegexOptions.Singleline | RegexOptions.ExplicitCapture,
        2000
    )]
    private static partial Regex Session();

    [GeneratedRegex(
        @"(?<head><!-- weights[^\n]*\n).*?<!-- end",
        RegexOptions.Singleline | RegexOptions.ExplicitCapture,
        2000
    )]
    private static partial Regex Weights();

    [GeneratedRegex(@"```wiring\n(?<lines>found .*?)```", RegexOptions.Singleline | RegexOptions.ExplicitCapture, 2000)]
    private static partial Regex Found();
}
