using WireText.Drawing.Lettering;
using WireText.Drawing.Shapes;

namespace WireText.Drawing.Pictures;

/// <summary>Items whose colours step back towards the paper.</summary>
internal static class Faint
{
    /// <param name="kept">How much of its own colour a thing keeps, in percent.</param>
    public static PictureItem Of(PictureItem item, Colour paper, int kept) =>
        item switch
        {
            PictureGroup group => group with { Items = [.. group.Items.Select(inner => Of(inner, paper, kept))] },
            TextItem text => text with { Colour = text.Colour.Over(paper, kept) },
            PictureShape shape => shape with { Paint = Of(shape.Paint, paper, kept) },
            _ => item,
        };

    private static Paint Of(Paint paint, Colour paper, int kept) =>
        paint with
        {
            Fill = paint.Fill is { } fill ? fill.Over(paper, kept) : null,
            Line = paint.Line is { } line ? line.Over(paper, kept) : null,
        };
}
