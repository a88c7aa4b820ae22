using System.Text.RegularExpressions;
using WireText.Checks;
using WireText.Syntax.Parsing;
using WireText.Testing;
using WireText.Text;

namespace WireText.Tests;

/// <summary>
/// One word has one meaning in all that people read: a note is the least weight of a finding, right is what is as it should be, a
/// remark is words in quotes that a file says, a comment stands behind <c>#</c>, and what does no harm is asked for with
/// <c>--harmless</c>.
/// </summary>
public partial class WordMeaningTests
{
    /// <summary>The pages, without the pieces of code in them, and every text between quotes in the program's own source.</summary>
    public static TheoryData<string> Texts =>
        Rows.Of([
            "README.md",
            "DEVELOPERS.md",
            .. Repository.FilesBelow("docs", "*.md").Select(Relative),
            .. Repository.FilesBelow("src", "*.cs").Select(Relative),
        ]);

    [Theory]
    [MemberData(nameof(Texts))]
    public void Text_OfAnyKind_SaysNeitherInfoNorAsksForNotes(string path) =>
        Assert.DoesNotMatch(InfoOrNotes(), WordsOf(path));

    /// <summary>A note is never told as anything else than the weight of a finding, beside the other weights.</summary>
    [Theory]
    [MemberData(nameof(Texts))]
    public void Note_WhereverItIsSaid_IsAWeight(string path) =>
        Assert.DoesNotContain(
            SentencesOf(path),
            sentence => Note().IsMatch(sentence) && !Weight().IsMatch(Note().Replace(sentence, ""))
        );

    /// <summary>A remark is what a file says in quotes; nothing that is found is called so.</summary>
    [Theory]
    [MemberData(nameof(Texts))]
    public void Remark_WhereverItIsSaid_StandsInQuotes(string path) =>
        Assert.DoesNotContain(
            SentencesOf(path),
            sentence => Remark().IsMatch(sentence) && !sentence.Contains("quotes", StringComparison.Ordinal)
        );

    [Fact]
    public void Weights_OfTheCatalogue_AreThoseThatThePagesName() =>
        Every.Item(
            FindingCatalogue.All,
            finding => Assert.Contains(WordFor(finding.Severity), CheckPage.Write(finding).Split('\n')[2])
        );

    /// <summary>Files that were written when a remark was called a note are read as before.</summary>
    [Theory]
    [InlineData("remark")]
    [InlineData("note")]
    public void Remark_UnderEitherName_StandsOnTheSheet(string keyword)
    {
        var text = $"{keyword} \"hold it to mute\"\njack out";

        Assert.Empty(WiringParser.Parse(new SourceText("a.wiring", text)).Findings);
        Assert.Equal("hold it to mute", Assert.Single(Drawing.Drawings.CircuitOf(text).Remarks));
    }

    private static string WordFor(Severity severity) =>
        severity switch
        {
            Severity.Error => "(error, ",
            Severity.Warning => "(warning, ",
            Severity.Note => "(note",
            _ => "(right, ",
        };

    private static IEnumerable<string> SentencesOf(string path) =>
        WordsOf(path).Split([". ", ".\n", "\n\n"], StringSplitOptions.None);

    private static string WordsOf(string path)
    {
        var text = File.ReadAllText(Repository.PathOf(path));
        return path.EndsWith(".md", StringComparison.Ordinal)
            ? Code().Replace(Block().Replace(text, "\n\n"), "…")
            : string.Join(
                "\n\n",
                Quoted().Matches(text).Select(match => Hole().Replace(match.Value, "…")).Where(IsProse)
            );
    }

    /// <summary>A text of more than one word: a name alone is a key of data or a class of the drawing, and no sentence.</summary>
    private static bool IsProse(string text) => text.Trim('"').Contains(' ', StringComparison.Ordinal);

    private static string Relative(string path) => Path.GetRelativePath(Repository.Root, path).Replace('\\', '/');

    [GeneratedRegex(@"\b[Ii]nfo\b|--notes\b")]
    private static partial Regex InfoOrNotes();

    [GeneratedRegex(@"\bnotes?\b", RegexOptions.IgnoreCase)]
    private static partial Regex Note();

    [GeneratedRegex(@"\b(?:errors?|warnings?|weighs?|weights?|harmless|no harm|off|belief)\b|\(|--harmless")]
    private static partial Regex Weight();

    [GeneratedRegex(@"\bremark(?:s|ed)?\b", RegexOptions.IgnoreCase)]
    private static partial Regex Remark();

    /// <summary>What a text is filled in with.</summary>
    [GeneratedRegex(@"\{[^{}\n]*\}")]
    private static partial Regex Hole();

    [GeneratedRegex("```.*?```", RegexOptions.Singleline)]
    private static partial Regex Block();

    [GeneratedRegex("`[^`\n]*`")]
    private static partial Regex Code();

    [GeneratedRegex("\"\"\".*?\"\"\"|\"(?:[^\"\\\\\n]|\\\\.)*\"", RegexOptions.Singleline)]
    private static partial Regex Quoted();
}
