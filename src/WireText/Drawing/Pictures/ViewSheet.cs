using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Drawing.Layout;
using WireText.Drawing.Lettering;
using WireText.Drawing.Shapes;
using WireText.Electrical.Traces;
using WireText.Geometry;

namespace WireText.Drawing.Pictures;

/// <summary>One of the small pictures of a sheet.</summary>
/// <param name="Heading">Where the controls stand.</param>
/// <param name="Says">What is heard there.</param>
public sealed record SheetView(string Heading, string Says, Trace Trace);

/// <summary>One sheet with the same drawing again and again, each time with another position followed.</summary>
public static class ViewSheet
{
    private const double HeadingLine = 1.4 * Tokens.NameSize;

    public static Picture Build(
        Circuit circuit,
        LayoutResult layout,
        PictureOptions options,
        ImmutableArray<SheetView> views
    )
    {
        var drawing = layout.Extent.Grown(Tokens.LabelMargin);
        var moved = LayoutShift.By(layout, new Point(-drawing.X, -drawing.Y));
        var (columns, scale) = Fit(drawing.Width, views.Length);
        var cell = new Size(drawing.Width * scale, (drawing.Height * scale) + (2 * HeadingLine));
        var rows = (views.Length + columns - 1) / columns;
        var width = (2 * Tokens.PageMargin) + (columns * cell.Width) + ((columns - 1) * Tokens.ViewGap);
        var top = Tokens.PageMargin + Tokens.TitleSize + Tokens.BlockGap;
        var page = new Size(
            Math.Max(width, Tokens.NarrowestPage),
            top + (rows * cell.Height) + ((rows - 1) * Tokens.ViewGap) + Tokens.PageMargin
        );
        var items = ImmutableArray.CreateBuilder<PictureItem>();
        items.Add(
            new RectangleShape("paper", new Box(0, 0, page.Width, page.Height), 0, Paint.Filled(options.Theme.Paper))
        );
        items.AddRange(Title(circuit, options, page));
        for (var i = 0; i < views.Length; i++)
        {
            var at = new Point(
                Tokens.PageMargin + (i % columns * (cell.Width + Tokens.ViewGap)),
                top + (i / columns * (cell.Height + Tokens.ViewGap))
            );
            items.AddRange(
                View(circuit, moved, options with { Trace = views[i].Trace, Findings = [] }, views[i], at, scale)
            );
        }

        return new Picture(
            page,
            DrawnText.Clean(circuit.Title ?? "Untitled wiring"),
            PictureBuilder.Describe(circuit) + " Every position, one below the other.",
            options.Theme,
            items.ToImmutable()
        );
    }

    /// <summary>As many columns as make the sheet about as wide as high, and as large as the widest sheet allows.</summary>
    private static (int Columns, double Scale) Fit(double width, int views)
    {
        var columns = Math.Max(1, (int)Math.Round(Math.Sqrt(views)));
        while (true)
        {
            var room = Tokens.ViewSheetWidth - (2 * Tokens.PageMargin) - ((columns - 1) * Tokens.ViewGap);
            var scale = Math.Min(1, room / (columns * width));
            if (scale >= Tokens.SmallestView || columns == 1)
            {
                return (columns, Math.Max(scale, Tokens.SmallestView));
            }

            columns--;
        }
    }

    private static IEnumerable<PictureItem> Title(Circuit circuit, PictureOptions options, Size page)
    {
        var words = circuit.Title ?? "Untitled wiring";
        var room = page.Width - (2 * Tokens.PageMargin);
        yield return TextItem.Start(
            "title",
            DrawnText.Fit(words, TextWeight.SemiBold, Tokens.TitleSize, room * 0.6),
            new Point(Tokens.PageMargin, Tokens.PageMargin + Tokens.TitleSize),
            TextWeight.SemiBold,
            Tokens.TitleSize,
            options.Theme.Ink
        );
        var file = DrawnText.Fit(
            options.FileName is { Length: > 0 } name
                ? $"every position, from behind · {name}"
                : "every position, from behind",
            TextWeight.Regular,
            Tokens.NoteSize,
            room * 0.38
        );
        yield return TextItem.Start(
            "file",
            file,
            new Point(
                page.Width - Tokens.PageMargin - DrawnText.Width(file, TextWeight.Regular, Tokens.NoteSize),
                Tokens.PageMargin + Tokens.TitleSize
            ),
            TextWeight.Regular,
            Tokens.NoteSize,
            options.Theme.QuietInk
        );
    }

    private static IEnumerable<PictureItem> View(
        Circuit circuit,
        LayoutResult layout,
        PictureOptions options,
        SheetView view,
        Point at,
        double scale
    )
    {
        var room = layout.Extent.Right * scale;
        yield return Line("heading", view.Heading, TextWeight.SemiBold, Tokens.NameSize, options.Theme.Ink, 1);
        yield return Line("says", view.Says, TextWeight.Regular, Tokens.NoteSize, options.Theme.QuietInk, 2);
        var scene = new Scene(circuit, layout, options);
        var space = new Box(0, 0, layout.Extent.Right + Tokens.LabelMargin, layout.Extent.Bottom + Tokens.LabelMargin);
        yield return new PictureView(
            "view",
            new Point(at.X, at.Y + (2 * HeadingLine)),
            scale,
            [
                .. PictureBuilder
                    .Drawing(scene, new LabelSpace(scene, space), namesAll: true)
                    .Items.Select(PictureBuilder.WithoutIds),
            ]
        );

        TextItem Line(string name, string text, TextWeight weight, double size, Colour colour, int line) =>
            TextItem.Start(
                name,
                DrawnText.Fit(text, weight, size, room),
                new Point(at.X, at.Y + (line * HeadingLine) - (HeadingLine - Tokens.NameSize)),
                weight,
                size,
                colour
            );
    }
}
