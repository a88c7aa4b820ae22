using WireText.Geometry;

namespace WireText.Frames;

/// <summary>Where everything stands on a frame, in millimetres of its picture: the same on all frames of a size.</summary>
/// <param name="Unit">Millimetres for a pixel of <see cref="FrameTokens"/>.</param>
/// <param name="Safe">Every word lies in it.</param>
/// <param name="Stage">What the drawing fills.</param>
/// <param name="Overview">The whole drawing, small.</param>
/// <param name="Words">The number of the frame and what it belongs to.</param>
/// <param name="Caption">What is done.</param>
internal sealed record FrameLayout(Size Page, double Unit, Box Safe, Box Stage, Box Overview, Box Words, Box Caption)
{
    public static FrameLayout Of(FrameSize size)
    {
        var page = new Size(size.Width * FrameTokens.Pixel, size.Height * FrameTokens.Pixel);
        var unit = FrameTokens.Pixel * Math.Max(1, Math.Min(size.Width, size.Height) / FrameTokens.ShorterSide);
        var (edgeX, edgeY) = (page.Width * FrameTokens.Safe, page.Height * FrameTokens.Safe);
        var safe = new Box(edgeX, edgeY, page.Width - (2 * edgeX), page.Height - (2 * edgeY));
        return size.IsTall ? Tall(page, unit, safe) : Wide(page, unit, safe);
    }

    /// <summary>The column stands right of the drawing.</summary>
    private static FrameLayout Wide(Size page, double unit, Box safe)
    {
        var (gap, column) = (FrameTokens.Gap * unit, FrameTokens.ColumnWidth * unit);
        var caption = CaptionOf(safe, FrameTokens.CaptionHeight * unit);
        var left = safe.Right - column;
        var overview = new Box(left, safe.Y, column, FrameTokens.OverviewHeight * unit);
        var top = overview.Bottom + (FrameTokens.WordsGap * unit);
        return new FrameLayout(
            page,
            unit,
            safe,
            new Box(0, 0, left - gap, caption.Y - gap),
            overview,
            new Box(left, top, column, caption.Y - (2 * gap) - top),
            caption
        );
    }

    /// <summary>The column lies under the drawing.</summary>
    private static FrameLayout Tall(Size page, double unit, Box safe)
    {
        var gap = FrameTokens.Gap * unit;
        var caption = CaptionOf(safe, FrameTokens.TallCaptionHeight * unit);
        var height = FrameTokens.OverviewHeight * unit;
        var top = caption.Y - (2 * gap) - height;
        var overview = new Box(safe.X, top, FrameTokens.ColumnWidth * unit, height);
        var left = overview.Right + (FrameTokens.WordsGap * unit);
        return new FrameLayout(
            page,
            unit,
            safe,
            new Box(0, 0, page.Width, top - gap),
            overview,
            new Box(left, top, safe.Right - left, height),
            caption
        );
    }

    private static Box CaptionOf(Box safe, double height) => new(safe.X, safe.Bottom - height, safe.Width, height);
}
