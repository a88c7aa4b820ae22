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
public sealed record SheetView(string Heading, string Says, Trace Trace)
{
    /// <summary>Each control that stands somewhere in it, and where.</summary>
    public ImmutableArray<ControlAt> Controls { get; init; } = [];
}

/// <param name="Part">Whose control it is: an index into <see cref="Circuit.Parts"/>.</param>
public sealed record ControlAt(int Part, string Name, string Position);

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
        var items = new List<PictureItem>();
        items.Add(
            new RectangleShape("paper", new Box(0, 0, page.Width, page.Height), 0, Paint.Filled(options.Theme.Paper))
        );
        Title(items, circuit, options, page);
        for (var i = 0; i < views.Length; i++)
        {
            var at = new Point(
                Tokens.PageMargin + (i % columns * (cell.Width + Tokens.ViewGap)),
                top + (i / columns * (cell.Height + Tokens.ViewGap))
            );
            Heading(new TextColumn(items, at.X, at.X + (moved.Extent.Right * scale), at.Y), options.Theme, views[i]);
            items.Add(View(circuit, moved, options with { Trace = views[i].Trace, Findings = [] }, at, scale));
        }

        return new Picture(
            page,
            DrawnText.Clean(circuit.Title ?? "Untitled wiring"),
            PictureBuilder.Describe(circuit) + " Every position, one below the other.",
            options.Theme,
            [.. items]
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

    private static void Title(List<PictureItem> items, Circuit circuit, PictureOptions options, Size page)
    {
        const double Baseline = Tokens.PageMargin + Tokens.TitleSize;
        var column = new TextColumn(items, Tokens.PageMargin, page.Width - Tokens.PageMargin, Tokens.PageMargin);
        var title = TextStyle.Title(options.Theme.Ink);
        column.StartOn(Baseline, "title", title.Fit(circuit.Title ?? "Untitled wiring", column.Width * 0.6), title);
        var note = TextStyle.Note(options.Theme.QuietInk);
        var words = options.FileName is { Length: > 0 } name
            ? $"every position, from behind · {name}"
            : "every position, from behind";
        var file = note.Fit(words, column.Width * 0.38);
        column.StartOn(Baseline, "file", file, note, column.Width - note.WidthOf(file));
    }

    private static void Heading(TextColumn column, Theme theme, SheetView view)
    {
        var heading = new TextStyle(TextWeight.SemiBold, Tokens.NameSize, theme.Ink);
        var first = column.Y + Tokens.NameSize;
        column.StartOn(first, "heading", heading.Fit(view.Heading, column.Width), heading);
        var note = TextStyle.Note(theme.QuietInk);
        column.StartOn(first + HeadingLine, "says", note.Fit(view.Says, column.Width), note);
    }

    private static PictureView View(
        Circuit circuit,
        LayoutResult layout,
        PictureOptions options,
        Point at,
        double scale
    )
    {
        var scene = new Scene(circuit, layout, options);
        var space = new Box(0, 0, layout.Extent.Right + Tokens.LabelMargin, layout.Extent.Bottom + Tokens.LabelMargin);
        return new PictureView(
            "view",
            new Point(at.X, at.Y + (2 * HeadingLine)),
            scale,
            [
                .. PictureBuilder
                    .Drawing(scene, new LabelSpace(scene, space), namesAll: true)
                    .Items.Select(PictureBuilder.WithoutIds),
            ]
        );
    }
}
