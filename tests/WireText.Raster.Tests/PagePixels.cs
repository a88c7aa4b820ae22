using System.Globalization;
using System.Xml.Linq;
using SkiaSharp;

namespace WireText.Raster;

/// <summary>A drawing as pixels, asked at places on the page in millimetres.</summary>
internal sealed class PagePixels : IDisposable
{
    /// <summary>The bare wire of 0.6 mm is almost five pixels wide, the stroke of a letter of 2 mm one or two.</summary>
    private const int PixelsPerMillimetre = 8;

    private const double MillimetresPerInch = 25.4;

    private readonly SKBitmap bitmap;

    private PagePixels(SKBitmap bitmap) => this.bitmap = bitmap;

    public static PagePixels Of(XDocument svg) =>
        new(
            SKBitmap.Decode(
                PngRenderer.Render(
                    svg.ToString(SaveOptions.DisableFormatting),
                    new PngOptions { Dpi = PixelsPerMillimetre * MillimetresPerInch }
                )
            )
        );

    public SKColor this[int x, int y] => bitmap.GetPixel(x, y);

    public SKColor At(SKPoint millimetres) =>
        this[(int)(millimetres.X * PixelsPerMillimetre), (int)(millimetres.Y * PixelsPerMillimetre)];

    /// <summary>The pixels of a box in millimetres, as far as it is on the page.</summary>
    public IEnumerable<(int X, int Y)> Inside(SKRect millimetres)
    {
        var (left, right) = Range(millimetres.Left, millimetres.Right, bitmap.Width);
        var (top, bottom) = Range(millimetres.Top, millimetres.Bottom, bitmap.Height);
        for (var y = top; y < bottom; y++)
        {
            for (var x = left; x < right; x++)
            {
                yield return (x, y);
            }
        }
    }

    public void Dispose() => bitmap.Dispose();

    private static (int From, int To) Range(float from, float to, int size) =>
        (
            Math.Max(0, (int)MathF.Floor(from * PixelsPerMillimetre)),
            Math.Min(size, (int)MathF.Ceiling(to * PixelsPerMillimetre))
        );
}

/// <summary>What the pixel tests read from an SVG, with nothing of the program that wrote it.</summary>
internal static class SvgShapes
{
    public static string? Class(XElement element) => (string?)element.Attribute("class");

    public static IEnumerable<XElement> OfClass(XContainer within, string name) =>
        within.Descendants().Where(element => Class(element) == name);

    public static IEnumerable<XElement> Texts(XDocument svg) =>
        svg.Descendants().Where(element => element.Name.LocalName == "text");

    /// <summary>The drawing without the shapes that <paramref name="isLeftOut"/> names.</summary>
    public static XDocument Without(XDocument svg, Func<XElement, bool> isLeftOut)
    {
        var copy = new XDocument(svg);
        copy.Root!.Descendants()
            .Where(element => !element.HasElements && isLeftOut(element))
            .ToList()
            .ForEach(e => e.Remove());
        return copy;
    }

    /// <summary>The places of a path's data, <paramref name="step"/> millimetres apart.</summary>
    public static IEnumerable<SKPoint> Along(XElement path, float step)
    {
        using var outline = SKPath.ParseSvgPathData((string)path.Attribute("d")!);
        using var measure = new SKPathMeasure(outline, forceClosed: false);
        for (var at = 0f; at <= measure.Length; at += step)
        {
            yield return measure.GetPosition(at);
        }
    }

    /// <summary>Around a text, with room for what letters reach below their line; turned ones run upwards.</summary>
    public static SKRect BoxOf(XElement text)
    {
        var (x, y, size) = (Number(text, "x"), Number(text, "y"), Number(text, "font-size"));
        var width = text.Attribute("textLength") is null ? size * text.Value.Length : Number(text, "textLength");
        var before = (string?)text.Attribute("text-anchor") switch
        {
            "middle" => width / 2,
            "end" => width,
            _ => 0,
        };
        var (above, below) = (size, 0.3f * size);
        return text.Attribute("transform") is null
            ? new SKRect(x - before, y - above, x - before + width, y + below)
            : new SKRect(x - above, y + before - width, x + below, y + before);
    }

    public static SKColor Fill(XElement element) => SKColor.Parse((string)element.Attribute("fill")!);

    private static float Number(XElement element, string name) =>
        float.Parse((string)element.Attribute(name)!, CultureInfo.InvariantCulture);
}
