using System.Text.RegularExpressions;
using WireText.Testing;

namespace WireText.Tests;

/// <summary>The pages are a book: from its index each can be reached, and no link leads nowhere.</summary>
public sealed partial class BookTests
{
    private const string Index = "docs/README.md";

    public static TheoryData<string> Pages =>
        Rows.Of(["README.md", "DEVELOPERS.md", .. Repository.FilesBelow("docs", "*.md").Select(path => NameOf(path))]);

    [Fact]
    public void EveryPage_IsReachedFromTheIndex()
    {
        var reached = new HashSet<string>(StringComparer.Ordinal);
        var open = new Stack<string>([Index]);
        while (open.TryPop(out var page))
        {
            if (reached.Add(page))
            {
                foreach (var target in LinksOf(page).Select(link => link.File).Where(IsPage))
                {
                    open.Push(target);
                }
            }
        }

        Every.Item(
            Repository.FilesBelow("docs", "*.md").Select(path => NameOf(path)),
            page => Assert.True(reached.Contains(page), $"no link leads to {page}: give it a line in {Index}")
        );
    }

    [Theory]
    [MemberData(nameof(Pages))]
    public void EveryLink_LandsOnAFile_AndOnAHeadingOfIt(string page)
    {
        foreach (var (file, heading) in LinksOf(page))
        {
            var path = Repository.PathOf(file);
            Assert.True(File.Exists(path) || Directory.Exists(path), $"{page} leads to {file}, which is not there");
            if (heading.Length > 0)
            {
                Assert.True(
                    HeadingsOf(file).Contains(heading),
                    $"{page} leads to {file}#{heading}, which is not there"
                );
            }
        }
    }

    private static bool IsPage(string file) => file.EndsWith(".md", StringComparison.Ordinal);

    /// <summary>The links of a page to files beside it, from the root; those to other hosts are left out.</summary>
    private static IEnumerable<(string File, string Heading)> LinksOf(string page) =>
        from Match link in Link().Matches(TextOf(page))
        let target = link.Groups["target"].Value
        where !target.Contains("://", StringComparison.Ordinal)
        let parts = target.Split('#')
        let file = parts[0].Length == 0
            ? page
            : NameOf(Path.GetFullPath(Path.Combine(Path.GetDirectoryName(Repository.PathOf(page))!, parts[0])))
        select (file, parts.Length > 1 ? parts[1] : "");

    /// <summary>The headings as a link names them: as code hosts make them, in small letters with dashes (common practice).</summary>
    private static HashSet<string> HeadingsOf(string page) =>
        [
            .. Heading()
                .Matches(TextOf(page))
                .Select(heading =>
                    NotInALink().Replace(heading.Groups["words"].Value.ToLowerInvariant(), "").Replace(' ', '-')
                ),
        ];

    /// <summary>Without what is shown as code: brackets there are no links.</summary>
    private static string TextOf(string page) =>
        Code().Replace(Fence().Replace(File.ReadAllText(Repository.PathOf(page)), ""), "");

    private static string NameOf(string path) =>
        Path.GetRelativePath(Repository.Root, path).Replace(Path.DirectorySeparatorChar, '/');

    [GeneratedRegex(@"\]\((?<target>[^)\s]+)\)", RegexOptions.ExplicitCapture, 2000)]
    private static partial Regex Link();

    [GeneratedRegex(@"^#+ (?<words>.*)$", RegexOptions.ExplicitCapture | RegexOptions.Multiline, 2000)]
    private static partial Regex Heading();

    [GeneratedRegex(@"[^\p{L}\p{Nd} _-]", RegexOptions.None, 2000)]
    private static partial Regex NotInALink();

    [GeneratedRegex("^(?<fence>`{3,}).*?^\\k<fence>$", RegexOptions.Multiline | RegexOptions.Singleline, 2000)]
    private static partial Regex Fence();

    // What is code within a heading stays: only code with a bracket in it can be taken for a link.
    [GeneratedRegex(@"`[^`\n]*\]\([^`\n]*`", RegexOptions.None, 2000)]
    private static partial Regex Code();
}
