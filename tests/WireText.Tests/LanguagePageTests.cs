using System.Text.RegularExpressions;
using WireText.Testing;
using WireText.Text;

namespace WireText.Tests;

/// <summary>Every example on the language's pages is read as the page says.</summary>
public partial class LanguagePageTests
{
    public static TheoryData<string, bool> Examples
    {
        get
        {
            var data = new TheoryData<string, bool>();
            foreach (
                var page in Directory
                    .EnumerateFiles(Repository.PathOf("docs", "language"), "*.md")
                    .Order(StringComparer.Ordinal)
            )
            {
                foreach (Match match in Fence().Matches(File.ReadAllText(page)))
                {
                    data.Add(match.Groups["text"].Value, match.Groups["wrong"].Length > 0);
                }
            }

            return data;
        }
    }

    /// <summary>The examples are fragments: what their lines say is judged, not what the circuit lacks.</summary>
    [Theory]
    [MemberData(nameof(Examples))]
    public void Example_OfAPage_IsReadAsThePageSays(string text, bool isWrong)
    {
        var tree = WireText.Syntax.Parser.Parse(new SourceText("page.wiring", text));
        var bound = WireText.Circuits.Binding.Binder.Bind(tree, NoSources.Instance);

        var errors = tree
            .Findings.Concat(bound.Findings)
            .Where(f => f.Severity > Severity.Info)
            .Select(f => f.Message)
            .ToList();

        Assert.True(isWrong == errors.Count > 0, string.Join('\n', errors));
    }

    [Fact]
    public void Pages_HaveExamples() => Assert.True(Examples.Count > 8);

    [GeneratedRegex("```wiring(?<wrong> wrong)?\n(?<text>.*?)```", RegexOptions.Singleline, 2000)]
    private static partial Regex Fence();
}
