using System.Xml.Linq;
using WireText.Documents;
using WireText.Output;
using WireText.Testing;
using WireText.Tests.Sheets;

namespace WireText.Tests.Documents;

/// <summary>What strangers write into a file stays words in every output.</summary>
public class HostileDocumentTests
{
    private const string Hostile =
        "<script>alert(1)</script> | a|b \u202Eturned \"quoted\" & [link](http://x) `code` *bold*";

    private static readonly Document Document = new(
        Hostile,
        Hostile,
        [
            new Block.Heading(1, Hostile),
            new Block.Paragraph(Hostile),
            new Block.Paragraph("1. " + Hostile),
            new Block.Paragraph("# " + Hostile),
            new Block.Bullets([Hostile, "- " + Hostile]),
            new Block.Boxes([Hostile]),
            new Block.Table(
                ["a", Hostile],
                [
                    [Hostile, new string('w', 4000)],
                    ["x\ny", Hostile],
                ]
            ),
        ]
    );

    [Fact]
    public void Html_HasNoTagFromTheFile()
    {
        var html = DocumentHtml.Write(Document);

        Assert.DoesNotContain("<script", html, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("&lt;script&gt;", html, StringComparison.Ordinal);
        Assert.DoesNotContain("\u202E", html, StringComparison.Ordinal);
        var body = html[html.IndexOf("<body>", StringComparison.Ordinal)..]
            .Replace("</html>", "", StringComparison.Ordinal)
            .Replace("<input type=\"checkbox\">", "", StringComparison.Ordinal);
        Assert.Equal(2, XElement.Parse(body).Elements("table").Single().Element("tbody")!.Elements("tr").Count());
    }

    [Fact]
    public void Markdown_HasOneLineARowAndNoMarkFromTheFile()
    {
        var lines = DocumentMarkdown.Write(Document, figure: null).Split('\n');

        var rows = lines.Where(line => line.StartsWith("| ", StringComparison.Ordinal)).ToList();
        Assert.Equal(4, rows.Count);
        Every.Item(rows, row => Assert.Equal(3, CountOfBars(row)));
        Assert.DoesNotContain(
            lines,
            line => line.Replace("\\<", "", StringComparison.Ordinal).Contains('<', StringComparison.Ordinal)
        );
        Assert.Contains(lines, line => line.StartsWith("1\\. ", StringComparison.Ordinal));
        Assert.Contains(lines, line => line.StartsWith("\\# ", StringComparison.Ordinal));
        Assert.Contains(lines, line => line.StartsWith("- \\- ", StringComparison.Ordinal));
    }

    [Fact]
    public void Sheet_OfACircuitWithAHostileTitle_AsksForNothingOutside()
    {
        var html = DocumentHtml.Write(
            ComposedSheet.Of(
                "circuit \"<img src=http://x onerror=alert(1)>\"\nremark \"</svg><script>\"\npot vol 250k audio\njack out mono\nwire vol.2 to out.tip white\n"
            )
        );

        Assert.DoesNotContain("<img", html, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("<script", html, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("<link", html, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("url(", html, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("default-src 'none'", html, StringComparison.Ordinal);
    }

    /// <summary>Bars that part cells: those with no backslash before them.</summary>
    private static int CountOfBars(string row) =>
        row.Replace("\\\\", "", StringComparison.Ordinal)
            .Replace("\\|", "", StringComparison.Ordinal)
            .Count(c => c == '|');
}
