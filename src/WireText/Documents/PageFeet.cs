using System.Collections.Immutable;
using System.Globalization;
using WireText.Drawing.Lettering;
using WireText.Drawing.Shapes;
using WireText.Geometry;

namespace WireText.Documents;

/// <summary>Finishes pages: paper under them, and at their foot the file, the circuit and the number of the page.</summary>
internal static class PageFeet
{
    public static ImmutableArray<Page> Finish(
        IReadOnlyList<PageDraft> drafts,
        string title,
        string foot,
        Theme theme
    ) => [.. drafts.Select((draft, i) => Finish(draft, title, NumberOf(i, drafts.Count), foot, theme))];

    private static Page Finish(PageDraft draft, string title, string number, string foot, Theme theme)
    {
        var style = new TextStyle(TextWeight.Regular, PageTokens.FootSize, theme.QuietInk);
        var at = new Point(draft.Size.Width - PageTokens.FigureMargin, draft.Size.Height - PageTokens.FigureMargin);
        var room = draft.Size.Width / 2;
        ImmutableArray<PictureItem> items =
        [
            new RectangleShape(
                "paper",
                new Box(0, 0, draft.Size.Width, draft.Size.Height),
                0,
                Paint.Filled(theme.Paper)
            ),
            .. draft.Items,
            TextItem.End("foot", style.Fit(foot, room), at with { Y = at.Y - (style.Size * Tokens.LineHeight) }, style),
            TextItem.End("foot", number, at, style),
        ];
        return new Page(
            new Picture(draft.Size, DrawnText.Clean(title), DrawnText.Clean($"{title}, {number}"), theme, items),
            draft.Bookmarks
        );
    }

    private static string NumberOf(int index, int count) =>
        string.Create(CultureInfo.InvariantCulture, $"page {index + 1} of {count}");
}
