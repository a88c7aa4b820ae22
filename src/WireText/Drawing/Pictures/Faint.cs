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
            TextItem text => text with { Colour = Of(text.Colour, paper, kept) },
            PictureShape shape => shape with { Paint = Of(shape.Paint, paper, kept) },
            _ => item,
        };

    public static Colour Of(Colour colour, Colour paper, int kept) =>
        new(
            Mixed(colour.Red, paper.Red, kept),
            Mixed(colour.Green, paper.Green, kept),
            Mixed(colour.Blue, paper.Blue, kept)
        );

    private static Paint Of(Paint paint, Colour paper, int kept) =>
        paint with
        {
            Fill = paint.Fill is { } fill ? Of(fill, paper, kept) : null,
            Line = paint.Line is { } line ? Of(line, paper, kept) : null,
        };

    private static byte Mixed(byte own, byte paper, int kept) =>
        (byte)(((own * kept) + (paper * (100 - kept)) + 50) / 100);
}
