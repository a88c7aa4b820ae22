using UglyToad.PdfPig;
using UglyToad.PdfPig.Outline;
using WireText.Building;
using WireText.Documents;
using WireText.Drawing.Layout;
using WireText.Drawing.Lettering;
using WireText.Sheets;
using WireText.Testing;
using WireText.Text;

namespace WireText.Raster;

/// <summary>A document of several pages, read back by a library that had no part in writing it.</summary>
public class PagedPdfTests
{
    private const double MillimetresPerPoint = 25.4 / 72;

    private static readonly Document Sheet = SheetOf("2-two-pickups-mute.wiring");

    [Theory]
    [InlineData("a4", 210, 297)]
    [InlineData("letter", 215.9, 279.4)]
    public void Pages_HaveTheSizeOfThePaper(string paper, double width, double height)
    {
        using var pdf = PdfDocument.Open(Render(Sheet, Paper.Read(paper).Value!));

        Every.Item(
            pdf.GetPages(),
            page =>
            {
                Assert.Equal(width, Math.Min(page.Width, page.Height) * MillimetresPerPoint, 0.001);
                Assert.Equal(height, Math.Max(page.Width, page.Height) * MillimetresPerPoint, 0.001);
            }
        );
    }

    [Fact]
    public void Bar_OnADrawing_Is50Millimetres()
    {
        using var pdf = PdfDocument.Open(Render(Sheet, Paper.A4));

        var bars =
            from page in pdf.GetPages()
            where page.Text.Contains("50 mm", StringComparison.Ordinal)
            select page
                .Paths.Select(path => path.GetBoundingRectangle())
                .OfType<UglyToad.PdfPig.Core.PdfRectangle>()
                .Select(box => (Width: box.Width * MillimetresPerPoint, Height: box.Height * MillimetresPerPoint))
                .ToList();

        Every.Item(
            bars,
            boxes => Assert.Contains(boxes, box => Math.Abs(box.Width - 50) < 0.1 && Math.Abs(box.Height - 1.6) < 0.1)
        );
    }

    /// <summary>A drawing whose corner is empty: the page that would show it alone is left out.</summary>
    [Fact]
    public void Pages_WithNothingOnThem_AreLeftOut()
    {
        using var pdf = PdfDocument.Open(Render(SheetOf("4-three-pickups-5way.wiring"), Paper.A4));

        Every.Item(
            pdf.GetPages(),
            page =>
                Assert.Contains(
                    page.Letters,
                    letter => letter.StartBaseLine.Y - page.MediaBox.Bounds.Bottom > 30 / MillimetresPerPoint
                )
        );
    }

    [Fact]
    public void Words_AreTextInTheirOrder()
    {
        using var pdf = PdfDocument.Open(Render(Sheet, Paper.A4));

        var text = string.Concat(pdf.GetPages().Select(page => page.Text.Replace(" ", "", StringComparison.Ordinal)));

        Assert.Contains("Buildsheet:Twopickups", text, StringComparison.Ordinal);
        Assert.Contains("Solderjoint1:", text, StringComparison.Ordinal);
        Assert.Equal(Sheet.Title, pdf.Information.Title);
        Every.Item(
            pdf.GetPages().SelectMany(page => page.Letters),
            letter => Assert.Contains("Inter", letter.FontName!, StringComparison.Ordinal)
        );
    }

    [Fact]
    public void Bookmarks_LeadToTheHeadings_AndTheLanguageIsSaid()
    {
        using var pdf = PdfDocument.Open(Render(Sheet, Paper.A4));

        Assert.True(pdf.TryGetBookmarks(out var bookmarks));
        var marks = bookmarks.GetNodes().OfType<DocumentBookmarkNode>().ToList();
        Assert.Equal(
            Sheet.Blocks.OfType<Block.Heading>().Select(heading => heading.Text).Append("Diagram").Order(),
            marks.Select(mark => mark.Title).Order()
        );
        Every.Item(
            marks,
            mark =>
            {
                var page = pdf.GetPage(mark.PageNumber);
                var top = mark.Destination.Coordinates.Top!.Value;
                Assert.InRange(top, page.MediaBox.Bounds.Bottom, page.MediaBox.Bounds.Top);
                Assert.Contains(
                    page.GetWords(),
                    word => word.Text.TrimEnd('.') == mark.Title.Split(' ')[0] && word.BoundingBox.Top <= top + 1
                );
            }
        );
        Assert.Equal(1, Assert.Single(bookmarks.Roots).Level + 1);
        Assert.Equal(
            "en",
            ((UglyToad.PdfPig.Tokens.StringToken)pdf.Structure.Catalog.CatalogDictionary.Data["Lang"]).Data
        );
    }

    /// <summary>More pages than the library keeps in one node, and headings that would end a text or a name.</summary>
    [Fact]
    public void Bookmarks_OfALongDocument_AreWhole()
    {
        string[] odd = [") >> endobj", "<b>&amp;", "Ω − ünïcode 🎸", "/Lang (xx)"];
        var blocks = Enumerable
            .Range(0, 400)
            .SelectMany(i =>
                new Block[]
                {
                    new Block.Heading(1 + (i % 3), $"{odd[i % odd.Length]} {i}"),
                    new Block.Paragraph("Words that stand below it."),
                }
            );
        var document = new Document("Odd", "foot", [.. blocks]);

        using var pdf = PdfDocument.Open(Render(document, Paper.A4));

        Assert.True(pdf.NumberOfPages > 20, "it is a long document");
        Assert.True(pdf.TryGetBookmarks(out var bookmarks));
        Assert.Equal(
            document.Blocks.OfType<Block.Heading>().Select(heading => heading.Text),
            bookmarks.GetNodes().Select(node => node.Title)
        );
    }

    [Fact]
    public void Bytes_AreTheSameEachTime() => Assert.Equal(Render(Sheet, Paper.A4), Render(Sheet, Paper.A4));

    private static byte[] Render(Document document, Paper paper) =>
        PdfRenderer.Render(DocumentSetter.Set(document, paper));

    private static Document SheetOf(string name)
    {
        var source = new SourceText(name, File.ReadAllText(Repository.PathOf("examples", name)));
        var compiled = Compilation.Of(source, NoSources.Instance);
        var order = WorkOrder.Of(compiled.Circuit!);
        var options = new DrawOptions(LayoutEffort.Quick, Theme.Print, name) { Joints = order.Joints };
        return BuildSheet.Compose(
            new SheetContents(
                compiled.Circuit!,
                order,
                compiled.PictureFor(options),
                compiled.PlanFor(LayoutEffort.Quick)!.Layout,
                name,
                Count: 1
            )
        );
    }
}
