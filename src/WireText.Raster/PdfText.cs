using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace WireText.Raster;

/// <summary>The objects of a PDF as its library wrote it: one table of references, no objects in streams (ISO 32000-1, 7.5).</summary>
internal sealed partial class PdfText
{
    /// <summary>A line of the table: ten digits, five, a letter and the line's end.</summary>
    private const int EntryLength = 20;

    private readonly string text;
    private readonly string trailer;

    /// <param name="bytes">The whole file.</param>
    public PdfText(byte[] bytes)
    {
        // One character a byte, so that a place in the text is one in the file.
        text = Encoding.Latin1.GetString(bytes);
        Table = int.Parse(
            TableAt().Match(text, text.LastIndexOf("startxref", StringComparison.Ordinal)).Groups["number"].Value,
            CultureInfo.InvariantCulture
        );
        trailer = text[text.IndexOf("trailer", Table, StringComparison.Ordinal)..];
        Count = int.Parse(Size().Match(trailer).Groups["number"].Value, CultureInfo.InvariantCulture);
        Root = ReferenceIn(trailer, "Root");
    }

    /// <summary>Where the table of references begins.</summary>
    public int Table { get; }

    /// <summary>One more than the highest number of an object.</summary>
    public int Count { get; }

    /// <summary>The number of the catalogue.</summary>
    public int Root { get; }

    /// <summary>The dictionary at the end, for a file with more behind this one.</summary>
    /// <param name="count">One more than the highest number of an object.</param>
    public string TrailerFor(int count) =>
        Size()
            .Replace(
                trailer[
                    trailer.IndexOf("<<", StringComparison.Ordinal)..(
                        trailer.IndexOf(">>", StringComparison.Ordinal) + 2
                    )
                ],
                string.Create(CultureInfo.InvariantCulture, $"/Size {count}\n/Prev {Table}")
            );

    /// <summary>The numbers of the pages, in their order.</summary>
    public List<int> Pages => [.. PagesUnder(ReferenceIn(BodyOf(Root), "Pages"))];

    /// <summary>What stands between the number of an object and its end.</summary>
    public string BodyOf(int number)
    {
        var first = text.IndexOf('\n', text.IndexOf('\n', Table) + 1) + 1;
        var place = int.Parse(text.AsSpan(first + (number * EntryLength), 10), CultureInfo.InvariantCulture);
        var start = text.IndexOf("obj", place, StringComparison.Ordinal) + "obj".Length;
        return text[start..text.IndexOf("endobj", start, StringComparison.Ordinal)].Trim();
    }

    private IEnumerable<int> PagesUnder(int node) =>
        Kids().Match(BodyOf(node)) is { Success: true } kids
            ? Reference()
                .Matches(kids.Groups["kids"].Value)
                .SelectMany(kid => PagesUnder(int.Parse(kid.Groups["number"].Value, CultureInfo.InvariantCulture)))
            : [node];

    private static int ReferenceIn(string dictionary, string key) =>
        int.Parse(
            Regex
                .Match(dictionary, $@"/{key} (?<number>\d+) 0 R", RegexOptions.ExplicitCapture, TimeSpan.FromSeconds(5))
                .Groups["number"]
                .Value,
            CultureInfo.InvariantCulture
        );

    [GeneratedRegex(@"startxref\s+(?<number>\d+)", RegexOptions.ExplicitCapture, 5000)]
    private static partial Regex TableAt();

    [GeneratedRegex(@"/Size (?<number>\d+)", RegexOptions.ExplicitCapture, 5000)]
    private static partial Regex Size();

    [GeneratedRegex(@"/Kids \[(?<kids>[^\]]*)\]", RegexOptions.ExplicitCapture, 5000)]
    private static partial Regex Kids();

    [GeneratedRegex(@"(?<number>\d+) 0 R", RegexOptions.ExplicitCapture, 5000)]
    private static partial Regex Reference();
}
