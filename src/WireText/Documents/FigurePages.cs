using System.Collections.Immutable;
using System.Globalization;
using WireText.Drawing.Lettering;
using WireText.Drawing.Shapes;
using WireText.Geometry;

namespace WireText.Documents;

/// <summary>
/// A drawing on paper: on one page where it fits, else on several that overlap, with marks to cut at and a small map that says
/// which page goes where. A bar proves the scale.
/// </summary>
internal sealed class FigurePages
{
    private readonly Picture picture;
    private readonly double scale;
    private readonly Size page;
    private readonly Size window;
    private readonly int columns;
    private readonly int rows;

    private FigurePages(Picture picture, double scale, Size page)
    {
        (this.picture, this.scale, this.page) = (picture, scale, page);
        window = WindowOf(page);
        columns = CountAlong(picture.Page.Width * scale, window.Width);
        rows = CountAlong(picture.Page.Height * scale, window.Height);
    }

    private Theme Theme => picture.Theme;

    /// <param name="scale">Millimetres of paper for a millimetre of the picture.</param>
    public static ImmutableArray<PageDraft> Of(Block.Figure figure, double scale, Paper paper)
    {
        var upright = new FigurePages(figure.Picture, scale, paper.Size);
        var across = new FigurePages(figure.Picture, scale, Turned(paper.Size));
        var best = across.columns * across.rows < upright.columns * upright.rows ? across : upright;
        return
        [
            .. from row in Enumerable.Range(0, best.rows)
            from column in Enumerable.Range(0, best.columns)
            let isFirst = row == 0 && column == 0
            where isFirst || best.HasInk(row, column)
            select new PageDraft(
                best.page,
                best.ItemsOf(row, column, $"{figure.Title}. {figure.Caption}"),
                isFirst ? [new Bookmark(2, DrawnText.Clean(figure.Title), 0)] : []
            ),
        ];
    }

    /// <summary>What a page has for a drawing, upright or across.</summary>
    public static IEnumerable<Size> WindowsOf(Paper paper) => [WindowOf(paper.Size), WindowOf(Turned(paper.Size))];

    private static Size WindowOf(Size page) =>
        new(
            page.Width - (2 * PageTokens.FigureMargin),
            page.Height - (2 * PageTokens.FigureMargin) - PageTokens.FigureFoot
        );

    private static Size Turned(Size size) => new(size.Height, size.Width);

    private static int CountAlong(double length, double window) =>
        length <= window ? 1 : (int)Math.Ceiling((length - PageTokens.Overlap) / (window - PageTokens.Overlap));

    /// <summary>What of the drawing a page shows, in millimetres of paper.</summary>
    private Box ShownOn(int row, int column) =>
        new(
            column * (window.Width - PageTokens.Overlap),
            row * (window.Height - PageTokens.Overlap),
            window.Width,
            window.Height
        );

    private IEnumerable<PictureItem> Within(Box shown)
    {
        var own = new Box(shown.X / scale, shown.Y / scale, shown.Width / scale, shown.Height / scale);
        return picture.Items.Select(item => ItemBounds.Within(item, own)).OfType<PictureItem>();
    }

    /// <summary>False for a page on which nothing but paper would stand: it is left out.</summary>
    private bool HasInk(int row, int column) => Within(ShownOn(row, column)).Any(item => item.Class != "paper");

    private ImmutableArray<PictureItem> ItemsOf(int row, int column, string caption)
    {
        var shown = ShownOn(row, column);
        var corner = new Point(PageTokens.FigureMargin, PageTokens.FigureMargin);
        var items = Within(shown);
        return
        [
            new PictureView("drawing", new Point(corner.X - shown.X, corner.Y - shown.Y), scale, [.. items]),
            .. Frame(),
            .. IsTiled ? CutMarks() : [],
            .. ProofBar(),
            .. Caption(caption, row, column),
            .. IsTiled ? KeyMap(row, column) : [],
        ];
    }

    private bool IsTiled => columns * rows > 1;

    private Box Window => new(PageTokens.FigureMargin, PageTokens.FigureMargin, window.Width, window.Height);

    /// <summary>Paper over what reaches out of the window.</summary>
    private IEnumerable<RectangleShape> Frame()
    {
        var (paint, edge) = (Paint.Filled(Theme.Paper), Window);
        yield return new RectangleShape("frame", new Box(0, 0, page.Width, edge.Y), 0, paint);
        yield return new RectangleShape(
            "frame",
            new Box(0, edge.Bottom, page.Width, page.Height - edge.Bottom),
            0,
            paint
        );
        yield return new RectangleShape("frame", new Box(0, edge.Y, edge.X, edge.Height), 0, paint);
        yield return new RectangleShape(
            "frame",
            new Box(edge.Right, edge.Y, page.Width - edge.Right, edge.Height),
            0,
            paint
        );
    }

    private IEnumerable<PathShape> CutMarks()
    {
        var (paint, edge) = (Paint.Stroked(Theme.Ink, PageTokens.CutLine), Window);
        foreach (var x in new[] { edge.X, edge.Right })
        {
            foreach (var y in new[] { edge.Y, edge.Bottom })
            {
                var corner = new Point(x, y);
                var outX = x == edge.X ? -PageTokens.CutMark : PageTokens.CutMark;
                var outY = y == edge.Y ? -PageTokens.CutMark : PageTokens.CutMark;
                yield return PathShape.Through("cut", paint, corner, corner + new Point(outX, 0));
                yield return PathShape.Through("cut", paint, corner, corner + new Point(0, outY));
            }
        }
    }

    private IEnumerable<PictureItem> ProofBar()
    {
        var top = page.Height - PageTokens.FigureMargin - PageTokens.FootSize - (2 * PageTokens.ProofBarHeight);
        var box = new Box(PageTokens.FigureMargin, top, PageTokens.ProofBar, PageTokens.ProofBarHeight);
        yield return new RectangleShape("proof-bar", box, 0, Paint.Filled(Theme.Ink));
        var text = string.Create(CultureInfo.InvariantCulture, $"{PageTokens.ProofBar:0} mm: measure it");
        yield return Foot(text, new Point(box.X, page.Height - PageTokens.FigureMargin));
    }

    private IEnumerable<TextItem> Caption(string caption, int row, int column)
    {
        var words = IsTiled
            ? string.Create(
                CultureInfo.InvariantCulture,
                $"row {row + 1} of {rows}, column {column + 1} of {columns}: cut at the marks, {PageTokens.Overlap:0} mm lie over the next"
            )
            : "";
        var top = Window.Bottom + PageTokens.CutMark;
        yield return Foot(
            words.Length == 0 ? caption : $"{caption}; {words}",
            new Point(PageTokens.FigureMargin + PageTokens.CutMark, top)
        );
    }

    private IEnumerable<RectangleShape> KeyMap(int row, int column)
    {
        var side = Math.Min(PageTokens.KeyCell, PageTokens.KeyHeight / rows);
        var left = (page.Width / 2) - (columns * side);
        var top = page.Height - PageTokens.FigureMargin - (rows * side);
        for (var i = 0; i < rows * columns; i++)
        {
            var isHere = i == (row * columns) + column;
            var box = new Box(left + (i % columns * side), top + (i / columns * side), side, side);
            yield return new RectangleShape(
                "key",
                box,
                0,
                new Paint(isHere ? Theme.Ink : Theme.Paper, Theme.Ink, PageTokens.CutLine)
            );
        }
    }

    private TextItem Foot(string text, Point at)
    {
        var style = new TextStyle(TextWeight.Regular, PageTokens.FootSize, Theme.QuietInk);
        return TextItem.Start("foot", style.Fit(text, page.Width - PageTokens.FigureMargin - at.X), at, style);
    }
}
