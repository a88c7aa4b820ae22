using System.Collections.Immutable;
using WireText.Drawing.Lettering;
using WireText.Drawing.Shapes;
using WireText.Geometry;

namespace WireText.Documents;

/// <summary>Pages that fill from the top down; what does not fit goes onto the next.</summary>
internal sealed class PageFlow(Paper paper)
{
    private readonly List<PageDraft> pages = [];
    private readonly List<PictureItem> items = [];
    private readonly List<Bookmark> bookmarks = [];
    private readonly List<PageDraft> waiting = [];

    public double Width => paper.Size.Width - (2 * PageTokens.Margin);

    /// <summary>The top of what comes next.</summary>
    public double Y { get; private set; } = PageTokens.Margin;

    public bool IsAtTop => items.Count == 0;

    /// <summary>The height of a page that is filled from top to bottom.</summary>
    private double Bottom => paper.Size.Height - PageTokens.Margin - PageTokens.FootHeight;

    /// <summary>Leaves room above what comes next, but not at the top of a page.</summary>
    public void Skip(double height) => Y += IsAtTop ? 0 : height;

    /// <summary>True when so much fits on the page. On an empty page everything does: nothing is left out.</summary>
    public bool Fits(double height) => IsAtTop || Y + height <= Bottom;

    /// <summary>Goes on to the next page where so much does not fit.</summary>
    public void Need(double height)
    {
        if (!Fits(height))
        {
            Break();
        }
    }

    /// <summary>How much must fit where one of several things begins, so that no page has one of them alone.</summary>
    /// <param name="heights">Of all of them.</param>
    public static double KeptFrom(IReadOnlyList<double> heights, int first) =>
        first == 0 && heights.Count == 3 ? heights.Sum()
        : first == 0 || first == heights.Count - 2 ? heights.Skip(first).Take(2).Sum()
        : heights[first];

    public void Break()
    {
        if (!IsAtTop)
        {
            pages.Add(new PageDraft(paper.Size, [.. items], [.. bookmarks]));
            items.Clear();
            bookmarks.Clear();
            Y = PageTokens.Margin;
        }

        pages.AddRange(waiting);
        waiting.Clear();
    }

    /// <summary>Pages of their own, after the one that is being filled: text goes on to its end first.</summary>
    public void Insert(IEnumerable<PageDraft> others) => waiting.AddRange(others);

    public void Mark(int level, string text) => bookmarks.Add(new Bookmark(level, DrawnText.Clean(text), Y));

    public void Add(PictureItem item) => items.Add(item);

    public void MoveDown(double height) => Y += height;

    /// <summary>One line of text at the left edge.</summary>
    public void Line(string name, string text, TextStyle style, double indent = 0)
    {
        Add(
            TextItem.Start(
                name,
                text,
                new Point(PageTokens.Margin + indent, Y + (style.Size * DrawnText.CapHeight)),
                style
            )
        );
        MoveDown(style.Size * Tokens.LineHeight);
    }

    public ImmutableArray<PageDraft> Finish()
    {
        Break();
        return [.. pages];
    }
}
