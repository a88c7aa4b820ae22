using WireText.Documents;
using WireText.Drawing.Shapes;
using WireText.Geometry;
using WireText.Testing;
using WireText.Tests.Sheets;

namespace WireText.Tests.Documents;

public class DocumentSetterTests
{
    /// <summary>The smallest letter of a page, in millimetres.</summary>
    private const double SmallestLetter = 2;

    /// <summary>More lines of text than a page has.</summary>
    private const int LinesOfAPage = 70;

    public static TheoryData<string> Papers => Rows.Of(Paper.Named.Select(paper => paper.Name).Append("148x210"));

    [Theory, MemberData(nameof(Papers))]
    public void Pages_OfASheet_HoldEverythingWithinThePaper(string paper)
    {
        var pages = DocumentSetter.Set(ComposedSheet.OfExample("2-two-pickups-mute.wiring"), Paper.Read(paper).Value!);

        Every.Item(pages, page => AssertWithin(page));
    }

    [Fact]
    public void Table_LongerThanAPage_RepeatsItsHead()
    {
        var rows = Enumerable.Range(1, 200).Select(i => ImmutableRow($"row {i}", "x"));

        var pages = DocumentSetter.Set(
            new Document("t", "f", [new Block.Table(["first", "second"], [.. rows])]),
            Paper.A4
        );

        Assert.InRange(pages.Length, 3, 20);
        Every.Item(pages, page => Assert.Single(TextsOf(page), text => text.Text == "first"));
        Assert.Equal(
            Enumerable.Range(1, 200).Select(i => $"row {i}"),
            pages
                .SelectMany(TextsOf)
                .Select(text => text.Text)
                .Where(text => text.StartsWith("row ", StringComparison.Ordinal))
        );
    }

    /// <summary>Wherever on a page it begins.</summary>
    [Fact]
    public void Table_OfAFewRows_IsNotTornApart()
    {
        Every.Item(
            Enumerable.Range(1, LinesOfAPage),
            lines =>
                Assert.Equal(
                    [6],
                    RowsAPage(lines, new Block.Table(["a"], [.. Names(6).Select(row => ImmutableRow(row))]))
                )
        );
    }

    /// <summary>A table that goes onto the next page as a whole takes its heading along.</summary>
    [Fact]
    public void Heading_OfATableThatIsKeptWhole_StandsAboveIt()
    {
        Every.Item(
            Enumerable.Range(1, LinesOfAPage),
            lines =>
            {
                Block[] above =
                [
                    .. Enumerable.Repeat(new Block.Paragraph("text"), lines),
                    new Block.Heading(2, "Parts"),
                ];
                var table = new Block.Table(["a"], [.. Names(6).Select(row => ImmutableRow(row))]);
                var pages = DocumentSetter.Set(new Document("t", "f", [.. above, table]), Paper.A4);
                var page = pages.Single(one => TextsOf(one).Any(text => text.Text == "Parts"));
                Assert.Contains(TextsOf(page), text => text.Text == "row 6");
            }
        );
    }

    [Fact]
    public void Table_OfManyRows_LeavesNoneAloneOnItsPage()
    {
        Every.Item(
            Enumerable.Range(1, LinesOfAPage),
            lines =>
                Every.Item(
                    RowsAPage(lines, new Block.Table(["a"], [.. Names(45).Select(row => ImmutableRow(row))])),
                    rows => Assert.InRange(rows, 2, 45)
                )
        );
    }

    [Fact]
    public void List_LeavesNoItemAloneOnItsPage()
    {
        Every.Item(
            Enumerable.Range(1, LinesOfAPage),
            lines =>
                Every.Item(RowsAPage(lines, new Block.Boxes([.. Names(30)])), items => Assert.InRange(items, 2, 30))
        );
    }

    [Fact]
    public void Line_NeverEndsBetweenANumberAndItsUnit()
    {
        var words = string.Join(", ", Enumerable.Range(1, 300).Select(i => $"lug {i} shows {i} kΩ"));

        var pages = DocumentSetter.Set(new Document("t", "f", [new Block.Paragraph(words)]), Paper.A4);

        var lines = pages.SelectMany(TextsOf).Where(text => text.Class == "text").Select(text => text.Text).ToList();
        Assert.Equal(words, string.Join(' ', lines));
        Every.Item(lines, line => Assert.False(line.StartsWith("kΩ", StringComparison.Ordinal), line));
    }

    [Fact]
    public void Word_WiderThanItsColumn_IsBrokenAndNotCut()
    {
        var word = string.Concat(Enumerable.Range(0, 400).Select(i => (char)('a' + (i % 26))));

        var pages = DocumentSetter.Set(
            new Document("t", "f", [new Block.Table(["", ""], [ImmutableRow("a", word)])]),
            Paper.A4
        );

        Assert.Equal(
            word,
            string.Concat(TextsOf(pages.Single()).Where(text => text.Class == "cell").Skip(1).Select(text => text.Text))
        );
    }

    [Fact]
    public void Heading_IsNeverTheLastOfItsPage()
    {
        var blocks = Enumerable
            .Range(1, 60)
            .SelectMany(i => new Block[] { new Block.Heading(2, $"heading {i}"), new Block.Paragraph("words") });

        var pages = DocumentSetter.Set(new Document("t", "f", [.. blocks]), Paper.A4);

        Every.Item(
            pages,
            page => Assert.Equal("text", TextsOf(page).Last(text => text.Class is "heading" or "text").Class)
        );
    }

    /// <summary>True size: two lugs of a pot in the drawing are as far apart on paper as in the picture, and each page shows its part.</summary>
    [Fact]
    public void Figure_LargerThanAPage_IsTiledAtTrueSize()
    {
        var sheet = ComposedSheet.OfExample("2-two-pickups-mute.wiring");
        var figure = sheet.Blocks.OfType<Block.Figure>().Single();

        var views = DocumentSetter
            .Set(sheet, Paper.A4)
            .SelectMany(page => page.Picture.Items.OfType<PictureView>())
            .ToList();

        Assert.InRange(views.Count, 2, 9);
        Every.Item(views, view => Assert.Equal(1, view.Scale));
        // Page for page, the drawing's items together are all of them.
        var shown = views.SelectMany(view => Leaves(view.Items)).Select(LineOf).ToHashSet(StringComparer.Ordinal);
        Assert.Equal(Leaves(figure.Picture.Items).Select(LineOf).Distinct().Order(), shown.Order());
    }

    private static string LineOf(PictureItem item) =>
        item switch
        {
            TextItem text => $"{text.Text} {text.At}",
            _ => $"{item.Class} {item.GetType().Name}",
        };

    private static IEnumerable<PictureItem> Leaves(IEnumerable<PictureItem> items) =>
        items.SelectMany(item => item is PictureGroup group ? Leaves(group.Items) : [item]);

    private static void AssertWithin(Page page)
    {
        var paper = new Box(0, 0, page.Picture.Page.Width, page.Picture.Page.Height);
        Every.Item(
            TextsOf(page),
            text =>
            {
                Assert.True(paper.Contains(text.Ink), $"'{text.Text}' reaches out of the page");
                Assert.InRange(text.Size, SmallestLetter, double.MaxValue);
            }
        );
        foreach (var view in page.Picture.Items.OfType<PictureView>())
        {
            Every.Item(
                Leaves(view.Items).OfType<TextItem>(),
                text => Assert.InRange(text.Size * view.Scale, SmallestLetter, double.MaxValue)
            );
        }
    }

    private static IEnumerable<TextItem> TextsOf(Page page) => page.Picture.Items.OfType<TextItem>();

    private static System.Collections.Immutable.ImmutableArray<string> ImmutableRow(params string[] cells) =>
        [.. cells];

    private static IEnumerable<string> Names(int count) => Enumerable.Range(1, count).Select(i => $"row {i}");

    /// <summary>How many of the names stand on each page that has any, below so many lines of text.</summary>
    private static IEnumerable<int> RowsAPage(int lines, Block block) =>
        DocumentSetter
            .Set(
                new Document("t", "f", [.. Enumerable.Repeat<Block>(new Block.Paragraph("text"), lines), block]),
                Paper.A4
            )
            .Select(page => TextsOf(page).Count(text => text.Text.StartsWith("row ", StringComparison.Ordinal)))
            .Where(count => count > 0);
}
