using System.Collections.Immutable;
using WireText.Drawing.Lettering;
using WireText.Drawing.Shapes;
using WireText.Geometry;

namespace WireText.Documents;

/// <summary>Sets a document on paper: pages of text and shapes, from which a PDF is made like any drawing.</summary>
public sealed class DocumentSetter
{
    private static readonly Theme Theme = Theme.Print;

    private readonly PageFlow flow;
    private readonly Paper paper;
    private readonly TextStyle plain = new(TextWeight.Regular, PageTokens.TextSize, Theme.Ink);

    private DocumentSetter(Paper paper)
    {
        this.paper = paper;
        flow = new PageFlow(paper);
    }

    public static ImmutableArray<Page> Set(Document document, Paper paper)
    {
        var setter = new DocumentSetter(paper);
        for (var i = 0; i < document.Blocks.Length; i++)
        {
            setter.Set(document.Blocks[i], document.Blocks.ElementAtOrDefault(i + 1));
        }

        return PageFeet.Finish(setter.flow.Finish(), document.Title, document.Foot, Theme);
    }

    /// <param name="next">What stands below it; null at the end.</param>
    private void Set(Block block, Block? next)
    {
        switch (block)
        {
            case Block.Heading heading:
                SetHeading(heading, next);
                break;
            case Block.Paragraph paragraph:
                SetParagraph(paragraph.Text);
                break;
            case Block.Bullets bullets:
                SetItems(bullets.Items, Bullet);
                break;
            case Block.Boxes boxes:
                SetItems(boxes.Items, Box);
                break;
            case Block.Table table:
                new TableSetter(flow, table, Theme).Set();
                flow.Skip(PageTokens.BlockGap);
                break;
            case Block.Figure figure:
                flow.Insert(FigurePages.Of(figure, scale: 1, paper));
                break;
            default:
                throw new InvalidOperationException($"No way to set {block.GetType().Name}.");
        }
    }

    private void SetHeading(Block.Heading heading, Block? next)
    {
        var size = heading.Level switch
        {
            1 => PageTokens.HeadingOne,
            2 => PageTokens.HeadingTwo,
            _ => PageTokens.HeadingThree,
        };
        var style = new TextStyle(TextWeight.SemiBold, size, Theme.Ink);
        var below = next is Block.Table table ? new TableSetter(flow, table, Theme).KeptAtStart : 0;
        flow.Need(Math.Max(PageTokens.KeptWithHeading, PageTokens.BlockGap + (2 * size) + below));
        flow.Skip(PageTokens.BlockGap);
        flow.Mark(heading.Level, heading.Text);
        foreach (var line in WholeWords.Wrap(heading.Text, style, flow.Width))
        {
            flow.Line("heading", line, style);
        }

        flow.MoveDown(PageTokens.ItemGap);
    }

    private void SetParagraph(string text)
    {
        foreach (var line in WholeWords.Wrap(text, plain, flow.Width))
        {
            flow.Need(plain.Size * Tokens.LineHeight);
            flow.Line("text", line, plain);
        }

        flow.Skip(PageTokens.BlockGap);
    }

    private void SetItems(IEnumerable<string> items, Func<Point, PictureShape> mark)
    {
        var all = items.Select(item => WholeWords.Wrap(item, plain, flow.Width - PageTokens.Indent)).ToList();
        var heights = all.Select(lines => (lines.Count * plain.Size * Tokens.LineHeight) + PageTokens.ItemGap).ToList();
        for (var i = 0; i < all.Count; i++)
        {
            var lines = all[i];
            flow.Need(PageFlow.KeptFrom(heights, i) - PageTokens.ItemGap);
            flow.Add(
                mark(
                    new Point(
                        PageTokens.Margin + (PageTokens.BoxSide / 2),
                        flow.Y + (plain.Size * DrawnText.CapHeight / 2)
                    )
                )
            );
            foreach (var line in lines)
            {
                flow.Line("text", line, plain, PageTokens.Indent);
            }

            flow.Skip(PageTokens.ItemGap);
        }

        flow.Skip(PageTokens.ItemGap);
    }

    private static CircleShape Bullet(Point at) =>
        new("bullet", at, PageTokens.BulletDiameter / 2, Paint.Filled(Theme.Ink));

    private static RectangleShape Box(Point at) =>
        new(
            "box",
            Geometry.Box.Around(at, PageTokens.BoxSide, PageTokens.BoxSide),
            0,
            Paint.Stroked(Theme.Ink, PageTokens.BoxLine)
        );
}
