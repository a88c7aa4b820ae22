using System.Collections.Immutable;
using System.Globalization;
using WireText.Documents;
using WireText.Drawing.Lettering;
using WireText.Drawing.Shapes;
using WireText.Geometry;

namespace WireText.Frames;

/// <summary>Puts a frame together: the drawing with its names, the whole of it small, the number of the frame, the caption.</summary>
/// <param name="count">How many frames there are.</param>
internal sealed class FramePainter(FrameLayout frame, Theme theme, string title, string unitWord, int count)
{
    /// <summary>What is said beside the drawing of a frame.</summary>
    public readonly record struct Said(int Number, string Group, string Caption);

    /// <param name="items">The drawing, in its own millimetres.</param>
    /// <param name="names">On the frame.</param>
    public Picture Compose(
        ImmutableArray<PictureItem> items,
        Box whole,
        Box view,
        ImmutableArray<PictureItem> names,
        Said said
    )
    {
        var (stage, page) = (frame.Stage, frame.Page);
        var scale = stage.Width / view.Width;
        var shown = new List<PictureItem>
        {
            new RectangleShape("paper", new Box(0, 0, page.Width, page.Height), 0, Paint.Filled(theme.Paper)),
            new PictureView(
                "stage",
                new Point(stage.X - (view.X * scale), stage.Y - (view.Y * scale)),
                scale,
                [.. items.Select(item => ItemBounds.Within(item, view)).OfType<PictureItem>()]
            ),
        };
        shown.AddRange(names);
        Panels(shown, said.Number);
        Overview(shown, items, whole, view);
        Words(shown, said);
        Caption(shown, said.Caption);
        return new Picture(
            page,
            DrawnText.Clean($"{title}, {unitWord} {Text(said.Number)} of {Text(count)}"),
            DrawnText.Clean(said.Caption),
            theme,
            [.. shown]
        );
    }

    /// <summary>What lies over the drawing where it reaches out of the stage, and how far the work is.</summary>
    private void Panels(List<PictureItem> shown, int number)
    {
        var (stage, page) = (frame.Stage, frame.Page);
        var paint = Paint.Filled(theme.PartFill);
        shown.Add(
            new RectangleShape("panel", new Box(0, stage.Bottom, page.Width, page.Height - stage.Bottom), 0, paint)
        );
        shown.Add(
            new RectangleShape("panel", new Box(stage.Right, 0, page.Width - stage.Right, page.Height), 0, paint)
        );
        var height = FrameTokens.ProgressHeight * frame.Unit;
        shown.Add(
            new RectangleShape("track", new Box(0, stage.Bottom, page.Width, height), 0, Paint.Filled(theme.Detail))
        );
        shown.Add(
            new RectangleShape(
                "progress",
                new Box(0, stage.Bottom, page.Width * number / count, height),
                0,
                Paint.Filled(theme.Warning)
            )
        );
    }

    private void Overview(List<PictureItem> shown, ImmutableArray<PictureItem> items, Box whole, Box view)
    {
        var (box, padding) = (frame.Overview, FrameTokens.OverviewPadding * frame.Unit);
        var line = FrameTokens.OverviewLine * frame.Unit;
        var inner = box.Grown(-padding);
        var scale = Math.Min(inner.Width / whole.Width, inner.Height / whole.Height);
        var at = new Point(inner.Centre.X - (whole.Centre.X * scale), inner.Centre.Y - (whole.Centre.Y * scale));
        shown.Add(new RectangleShape("overview-paper", box, padding, new Paint(theme.Paper, theme.PartLine, line / 2)));
        shown.Add(new PictureView("overview", at, scale, [.. items.Select(Plain).OfType<PictureItem>()]));
        var zoomed = Box.Spanning(
            Inside(inner, new Point(at.X + (view.X * scale), at.Y + (view.Y * scale))),
            Inside(inner, new Point(at.X + (view.Right * scale), at.Y + (view.Bottom * scale)))
        );
        shown.Add(new RectangleShape("zoomed", zoomed, line, Paint.Stroked(theme.Warning, line)));
    }

    private static Point Inside(Box box, Point at) =>
        new(Math.Clamp(at.X, box.X, box.Right), Math.Clamp(at.Y, box.Y, box.Bottom));

    /// <summary>What is seen of an item in the small: bodies and wires.</summary>
    private PictureItem? Plain(PictureItem item) =>
        item switch
        {
            PictureGroup { Class: "lug" or "tag" } or TextItem => null,
            PictureShape { Class: "body", Paint.Fill: not null } body => body with
            {
                Paint = Paint.Filled(theme.Detail),
            },
            PictureShape { Class: "core" or "halo" or "sheath" or "lifted" } => item,
            PictureGroup group when group.Items.Select(Plain).OfType<PictureItem>().ToList() is { Count: > 0 } seen =>
                group with
                {
                    Items = [.. seen],
                },
            _ => null,
        };

    private void Words(List<PictureItem> shown, Said said)
    {
        var (box, unit) = (frame.Words, frame.Unit);
        var column = new TextColumn(shown, box.X, box.Right, box.Y);
        var place = $"{Text(said.Number)} / {Text(count)}";
        var number = new TextStyle(TextWeight.SemiBold, FrameTokens.CountSize * unit, theme.Ink);
        column.Line(
            "number",
            place,
            number with
            {
                Size = number.Size * Math.Min(1, box.Width / number.WidthOf(place)),
            }
        );
        Paragraph(column, "group", said.Group, TextWeight.SemiBold, FrameTokens.GroupSize, theme.Ink, box.Bottom);
        column.Skip(FrameTokens.Gap * unit / 2);
        Paragraph(column, "title", title, TextWeight.Regular, FrameTokens.TitleSize, theme.QuietInk, box.Bottom);
    }

    /// <summary>As many lines as have room.</summary>
    private void Paragraph(
        TextColumn column,
        string name,
        string text,
        TextWeight weight,
        double pixels,
        Colour colour,
        double bottom
    )
    {
        var style = new TextStyle(weight, pixels * frame.Unit, colour);
        foreach (var line in DrawnText.Wrap(text, weight, style.Size, column.Width))
        {
            if (column.Y + (style.Size * Tokens.LineHeight) > bottom)
            {
                break;
            }

            column.Line(name, line, style);
        }
    }

    private void Caption(List<PictureItem> shown, string caption)
    {
        var box = frame.Caption;
        var (style, lines) = FittingCaption(caption);
        var height = ((lines.Count - 1) * style.Size * FrameTokens.CaptionLine) + (style.Size * DrawnText.CapHeight);
        var y = box.Centre.Y - (height / 2) + (style.Size * DrawnText.CapHeight);
        foreach (var line in lines)
        {
            shown.Add(TextItem.Start("caption", line, new Point(box.X, y), style));
            y += style.Size * FrameTokens.CaptionLine;
        }
    }

    private (TextStyle Style, IReadOnlyList<string> Lines) FittingCaption(string caption)
    {
        foreach (var pixels in FrameTokens.CaptionSizes)
        {
            var style = new TextStyle(TextWeight.Medium, pixels * frame.Unit, theme.Ink);
            var lines = DrawnText.Wrap(caption, style.Weight, style.Size, frame.Caption.Width);
            var room = (int)(frame.Caption.Height / (style.Size * FrameTokens.CaptionLine));
            if (lines.Count <= room)
            {
                return (style, lines);
            }

            if (pixels == FrameTokens.CaptionSizes[^1])
            {
                var last = style.Fit(string.Join(' ', lines.Skip(room - 1)), frame.Caption.Width);
                return (style, [.. lines.Take(room - 1), last]);
            }
        }

        throw new InvalidOperationException("A caption has at least one size.");
    }

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}
