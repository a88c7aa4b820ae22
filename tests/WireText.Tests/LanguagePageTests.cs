using System.Text.RegularExpressions;
using WireText.Syntax.Parsing;
using WireText.Testing;
using WireText.Text;

namespace WireText.Tests;

/// <summary>Every example on the language's pages is read as the page says.</summary>
public partial class LanguagePageTests
{
    public static TheoryData<string, bool> Examples =>
        Rows.Of(Repository.FilesIn("docs/language", "*.md").SelectMany(page => Every.Of(FencesOf(page), page)));

    /// <summary>The examples are fragments: what their lines say is judged, not what the circuit lacks.</summary>
    [Theory]
    [MemberData(nameof(Examples))]
    public void Example_OfAPage_IsReadAsThePageSays(string text, bool isWrong)
    {
        var tree = WiringParser.Parse(new SourceText("page.wiring", text));
        var bound = WireText.Circuits.Binding.Binder.Bind(
            tree,
            new SourcesBeside(Repository.PathOf("examples", "mods"))
        );

        var errors = tree
            .Findings.Concat(bound.Findings)
            .Where(f => f.Severity > Severity.Note)
            .Select(f => f.Message)
            .ToList();

        Assert.True(isWrong == errors.Count > 0, string.Join('\n', errors));
    }

    [Fact]
    public void Pages_HaveRightAndWrongExamples() =>
        Assert.Equal([false, true], Examples.Select(row => (bool)row[1]).Distinct().Order());

    private static IEnumerable<(string Text, bool IsWrong)> FencesOf(string page) =>
        Fence()
            .Matches(File.ReadAllText(page))
            .Select(match => (match.Groups["text"].Value, match.Groups["wrong"].Length > 0));

    [GeneratedRegex("```wiring(?<wrong> wrong)?\n(?<text>.*?)```", RegexOptions.Singleline, 2000)]
    private static partial Regex Fence();
}
