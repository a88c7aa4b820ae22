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
        foreach (var block in document.Blocks)
        {
            setter.Set(block);
        }

        return PageFeet.Finish(setter.flow.Finish(), document.Title, document.Foot, Theme);
    }

    private void Set(Block block)
    {
        switch (block)
        {
            case Block.Heading heading:
                SetHeading(heading);
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

    private void SetHeading(Block.Heading heading)
    {
        var size = heading.Level switch
        {
            1 => PageTokens.HeadingOne,
            2 => PageTokens.HeadingTwo,
            _ => PageTokens.HeadingThree,
        };
        var style = new TextStyle(TextWeight.SemiBold, size, Theme.Ink);
        flow.Need(PageTokens.KeptWithHeading);
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
        foreach (var item in items)
        {
            var lines = WholeWords.Wrap(item, plain, flow.Width - PageTokens.Indent);
            flow.Need(lines.Count * plain.Size * Tokens.LineHeight);
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
