using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using WireText.Drawing.Lettering;
using WireText.Drawing.Shapes;
using WireText.Geometry;

namespace WireText.Output;

/// <summary>Writes a picture as SVG 1.1: one unit is one millimetre of the real thing, absolute coordinates, no script, no style sheet and nothing from outside.</summary>
public static class SvgWriter
{
    /// <summary>Kerning and alternates off, so that widths add up in every viewer.</summary>
    private const string PlainType =
        "font-kerning:none;font-variant-ligatures:none;font-feature-settings:'kern' 0,'liga' 0,'calt' 0";

    private const int Decimals = 3;

    /// <param name="scale">Millimetres of paper for one of the picture; it sets the size of the page and nothing else.</param>
    public static string Write(Picture picture, double scale = 1)
    {
        var svg = new StringBuilder();
        svg.Append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
        svg.Append("<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" ");
        svg.Append(CultureInfo.InvariantCulture, $"width=\"{Number(picture.Page.Width * scale)}mm\" ");
        svg.Append(CultureInfo.InvariantCulture, $"height=\"{Number(picture.Page.Height * scale)}mm\" ");
        AppendViewBox(svg, picture);
        svg.Append("font-family=\"Inter, sans-serif\" ").Append("style=\"").Append(PlainType).Append("\" ");
        AppendItems(svg, picture);
        return svg.ToString();
    }

    /// <summary>For a page of HTML that says how large it is and how its letters are set: without prolog, size and style.</summary>
    internal static string WriteInline(Picture picture)
    {
        var svg = new StringBuilder();
        svg.Append("<svg role=\"img\" ");
        AppendViewBox(svg, picture);
        AppendItems(svg, picture);
        return svg.ToString();
    }

    private static void AppendViewBox(StringBuilder svg, Picture picture) =>
        svg.Append(
            CultureInfo.InvariantCulture,
            $"viewBox=\"0 0 {Number(picture.Page.Width)} {Number(picture.Page.Height)}\" "
        );

    private static void AppendItems(StringBuilder svg, Picture picture)
    {
        svg.Append("stroke-linejoin=\"round\" fill=\"none\">\n");
        svg.Append("<title>").Append(MarkupText.Escaped(picture.Title)).Append("</title>\n");
        svg.Append("<desc>").Append(MarkupText.Escaped(picture.Description)).Append("</desc>\n");
        foreach (var item in picture.Items)
        {
            Append(svg, item, depth: 0);
        }

        svg.Append("</svg>\n");
    }

    private static void Append(StringBuilder svg, PictureItem item, int depth)
    {
        svg.Append(' ', depth * 2);
        switch (item)
        {
            case PictureGroup group:
                svg.Append("<g");
                AppendIdentity(svg, item);
                svg.Append(">\n");
                foreach (var inner in group.Items)
                {
                    Append(svg, inner, depth + 1);
                }

                svg.Append(' ', depth * 2).Append("</g>\n");
                break;
            case PictureView view:
                svg.Append("<g");
                AppendIdentity(svg, item);
                Attribute(svg, "transform", $"translate({Pair(view.At)}) scale({Number(view.Scale)})");
                svg.Append(">\n");
                foreach (var inner in view.Items)
                {
                    Append(svg, inner, depth + 1);
                }

                svg.Append(' ', depth * 2).Append("</g>\n");
                break;
            case RectangleShape rectangle:
                AppendRectangle(svg, rectangle);
                break;
            case CircleShape circle:
                svg.Append("<circle");
                AppendIdentity(svg, item);
                Attribute(svg, "cx", circle.Centre.X);
                Attribute(svg, "cy", circle.Centre.Y);
                Attribute(svg, "r", circle.Radius);
                AppendPaint(svg, circle.Paint);
                svg.Append("/>\n");
                break;
            case PathShape path:
                svg.Append("<path");
                AppendIdentity(svg, item);
                Attribute(svg, "d", Data(path.Steps));
                AppendPaint(svg, path.Paint);
                svg.Append("/>\n");
                break;
            case TextItem text:
                AppendText(svg, text);
                break;
            default:
                throw new InvalidOperationException($"No way to write {item.GetType().Name}.");
        }
    }

    private static void AppendRectangle(StringBuilder svg, RectangleShape rectangle)
    {
        svg.Append("<rect");
        AppendIdentity(svg, rectangle);
        Attribute(svg, "x", rectangle.Box.X);
        Attribute(svg, "y", rectangle.Box.Y);
        Attribute(svg, "width", rectangle.Box.Width);
        Attribute(svg, "height", rectangle.Box.Height);
        if (rectangle.Corner > 0)
        {
            Attribute(svg, "rx", rectangle.Corner);
        }

        AppendPaint(svg, rectangle.Paint);
        svg.Append("/>\n");
    }

    private static void AppendText(StringBuilder svg, TextItem text)
    {
        svg.Append("<text");
        AppendIdentity(svg, text);
        Attribute(svg, "x", text.At.X);
        Attribute(svg, "y", text.At.Y);
        if (text.IsVertical)
        {
            Attribute(svg, "transform", $"rotate(-90 {Number(text.At.X)} {Number(text.At.Y)})");
        }

        Attribute(svg, "font-size", text.Size);
        if (text.Weight != TextWeight.Regular)
        {
            Attribute(svg, "font-weight", (int)text.Weight);
        }

        if (text.Align != TextAlign.Start)
        {
            Attribute(svg, "text-anchor", text.Align == TextAlign.Middle ? "middle" : "end");
        }

        if (text.Width > 0)
        {
            Attribute(svg, "textLength", text.Width);
        }

        Attribute(svg, "fill", text.Colour.ToString());
        svg.Append('>').Append(MarkupText.Escaped(text.Text)).Append("</text>\n");
    }

    private static void AppendIdentity(StringBuilder svg, PictureItem item)
    {
        Attribute(svg, "class", item.Class);
        if (item.Id is not null)
        {
            Attribute(svg, "id", item.Id);
        }

        foreach (var (name, value) in item.Shows)
        {
            Attribute(svg, "data-" + name, value);
        }
    }

    private static void AppendPaint(StringBuilder svg, Paint paint)
    {
        if (paint.Fill is { } fill)
        {
            Attribute(svg, "fill", fill.ToString());
        }

        if (paint.Line is not { } line)
        {
            return;
        }

        Attribute(svg, "stroke", line.ToString());
        Attribute(svg, "stroke-width", paint.LineWidth);
        if (!paint.Dashes.IsEmpty)
        {
            Attribute(svg, "stroke-dasharray", string.Join(' ', paint.Dashes.Select(Number)));
        }

        if (paint.HasRoundEnds)
        {
            Attribute(svg, "stroke-linecap", "round");
        }
    }

    private static string Data(ImmutableArray<PathStep> steps)
    {
        var data = new StringBuilder();
        foreach (var step in steps)
        {
            data.Append(data.Length == 0 ? "" : " ");
            data.Append(
                step switch
                {
                    PathStep.Move => $"M{Pair(step.To)}",
                    PathStep.Turn turn => $"Q{Pair(turn.Corner)} {Pair(turn.To)}",
                    PathStep.Hop hop =>
                        $"A{Number(hop.Radius)} {Number(hop.Radius)} 0 0 {(hop.IsClockwise ? 1 : 0)} {Pair(hop.To)}",
                    PathStep.Close => "Z",
                    _ => $"L{Pair(step.To)}",
                }
            );
        }

        return data.ToString();
    }

    private static string Pair(Point point) => $"{Number(point.X)} {Number(point.Y)}";

    private static void Attribute(StringBuilder svg, string name, double value) => Attribute(svg, name, Number(value));

    private static void Attribute(StringBuilder svg, string name, string value) =>
        svg.Append(' ').Append(name).Append("=\"").Append(MarkupText.Escaped(value)).Append('"');

    private static string Number(double value)
    {
        var rounded = Math.Round(value, Decimals, MidpointRounding.AwayFromZero);
        return (rounded == 0 ? 0 : rounded).ToString("0.###", CultureInfo.InvariantCulture);
    }
}
