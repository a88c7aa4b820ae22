using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using WireText.Documents;

namespace WireText.Raster;

/// <summary>
/// What the PDF library leaves out, added behind what it wrote: exact page sizes, bookmarks, and the language of the document. What
/// stands before is not touched (an incremental update, ISO 32000-1, 7.5.6).
/// </summary>
internal sealed partial class PdfSupplement
{
    private readonly byte[] written;
    private readonly PdfText pdf;
    private readonly SortedDictionary<int, string> objects = [];
    private int next;

    private PdfSupplement(byte[] written)
    {
        this.written = written;
        pdf = new PdfText(written);
        next = pdf.Count;
    }

    /// <param name="pages">Of each page its size in points and its headings, in the order of the pages.</param>
    public static byte[] Add(
        byte[] written,
        IReadOnlyList<(double Width, double Height, IReadOnlyList<Bookmark> Bookmarks)> pages
    )
    {
        var supplement = new PdfSupplement(written);
        var numbers = supplement.pdf.Pages;
        var entries = new List<OutlineEntry>();
        for (var i = 0; i < numbers.Count; i++)
        {
            var page = pages[i];
            var top = supplement.Resize(numbers[i], page.Width, page.Height);
            entries.AddRange(
                page.Bookmarks.Select(mark => new OutlineEntry(
                    mark.Level,
                    mark.Text,
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"[{numbers[i]} 0 R /XYZ 0 {Number(top - PdfRenderer.Points(mark.Top))} 0]"
                    )
                ))
            );
        }

        supplement.Describe(supplement.Outline(entries));
        return supplement.Write();
    }

    /// <summary>The library rounds a page to whole points and sets its contents from the top: the top stays where it is.</summary>
    /// <returns>The top, in points.</returns>
    private double Resize(int page, double width, double height)
    {
        var body = pdf.BodyOf(page);
        var top = double.Parse(MediaBox().Match(body).Groups["top"].Value, CultureInfo.InvariantCulture);
        objects[page] = MediaBox().Replace(body, $"/MediaBox [0 {Number(top - height)} {Number(width)} {Number(top)}]");
        return top;
    }

    private void Describe(int? outline)
    {
        var more = $"/Lang ({Document.Language})" + (outline is { } number ? $"\n/Outlines {Reference(number)}" : "");
        objects[pdf.Root] = pdf.BodyOf(pdf.Root)
            .Replace("<</Type /Catalog", $"<</Type /Catalog\n{more}", StringComparison.Ordinal);
    }

    /// <summary>The bookmarks as a tree: a heading holds those of deeper levels behind it.</summary>
    /// <returns>The number of its root; null without a bookmark.</returns>
    private int? Outline(List<OutlineEntry> entries)
    {
        if (entries.Count == 0)
        {
            return null;
        }

        var (root, open) = (new OutlineEntry(0, "", ""), new Stack<OutlineEntry>());
        open.Push(root);
        foreach (var entry in entries)
        {
            while (open.Peek().Level >= entry.Level)
            {
                open.Pop();
            }

            open.Peek().Inner.Add(entry);
            open.Push(entry);
        }

        foreach (var entry in entries.Prepend(root))
        {
            entry.Object = next++;
        }

        objects[root.Object] = $"<</Type /Outlines{Ends(root)}>>";
        AddInner(root);
        return root.Object;
    }

    private void AddInner(OutlineEntry outer)
    {
        for (var i = 0; i < outer.Inner.Count; i++)
        {
            var entry = outer.Inner[i];
            var before = i > 0 ? $"\n/Prev {Reference(outer.Inner[i - 1].Object)}" : "";
            var after = i + 1 < outer.Inner.Count ? $"\n/Next {Reference(outer.Inner[i + 1].Object)}" : "";
            objects[entry.Object] =
                $"<</Title {TextString(entry.Text)}\n/Parent {Reference(outer.Object)}{before}{after}{Ends(entry)}\n/Dest {entry.Place}>>";
            AddInner(entry);
        }
    }

    /// <summary>First, last and how many are shown: all of them.</summary>
    private static string Ends(OutlineEntry entry) =>
        entry.Inner.Count == 0
            ? ""
            : string.Create(
                CultureInfo.InvariantCulture,
                $"\n/First {Reference(entry.Inner[0].Object)}\n/Last {Reference(entry.Inner[^1].Object)}\n/Count {entry.Below}"
            );

    private byte[] Write()
    {
        var (text, places) = (new StringBuilder(), new List<(int Number, int Place)>());
        foreach (var (number, body) in objects)
        {
            places.Add((number, written.Length + text.Length));
            text.Append(CultureInfo.InvariantCulture, $"{number} 0 obj\n{body}\nendobj\n");
        }

        var table = written.Length + text.Length;
        text.Append("xref\n");
        foreach (var (number, place) in places)
        {
            text.Append(CultureInfo.InvariantCulture, $"{number} 1\n{place:D10} 00000 n \n");
        }

        text.Append(CultureInfo.InvariantCulture, $"trailer\n{pdf.TrailerFor(next)}\nstartxref\n{table}\n%%EOF\n");
        return [.. written, .. Encoding.Latin1.GetBytes(text.ToString())];
    }

    /// <summary>As UTF-16 with its mark, in hexadecimal: nothing in it can end the text.</summary>
    private static string TextString(string text) =>
        $"<FEFF{Convert.ToHexString(Encoding.BigEndianUnicode.GetBytes(text))}>";

    private static string Reference(int number) => string.Create(CultureInfo.InvariantCulture, $"{number} 0 R");

    private static string Number(double points) => points.ToString("0.###", CultureInfo.InvariantCulture);

    [GeneratedRegex(@"/MediaBox \[\S+ \S+ \S+ (?<top>[\d.]+)\]", RegexOptions.None, 5000)]
    private static partial Regex MediaBox();

    private sealed record OutlineEntry(int Level, string Text, string Place)
    {
        public List<OutlineEntry> Inner { get; } = [];

        public int Object { get; set; }

        /// <summary>How many there are inside, and inside those.</summary>
        public int Below => Inner.Sum(entry => 1 + entry.Below);
    }
}
