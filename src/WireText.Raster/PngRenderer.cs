using System.Globalization;
using SkiaSharp;

namespace WireText.Raster;

/// <summary>Draws an SVG of ours as a PNG: same SVG, same bytes, whatever fonts the machine has.</summary>
public static class PngRenderer
{
    /// <summary>The most pixels of one picture: 64 million, a quarter of a gigabyte while it is drawn.</summary>
    public const long MostPixels = 64_000_000;

    /// <summary>The most pixels along one side.</summary>
    public const int LongestSide = 32_000;

    /// <summary>Flat colours pack best as they are: filtering the rows first takes longer and makes the file larger.</summary>
    private static readonly SKPngEncoderOptions FlatColours = new(SKPngEncoderFilterFlags.None, zLibLevel: 3);

    /// <summary>Renders a whole SVG whose root gives its width and height in millimetres.</summary>
    /// <exception cref="PictureSizeException">The size asked for is not above 0, or beyond the limits.</exception>
    /// <exception cref="ArgumentException">The text is not such an SVG.</exception>
    public static byte[] Render(string svg, PngOptions options)
    {
        var sheet = SvgSheet.Read(svg);
        var dpi = options.WidthPixels is { } width ? width * SvgSheet.MillimetresPerInch / sheet.Width : options.Dpi;
        var size = PixelSize(sheet.Width, sheet.Height, options.WidthPixels, dpi);

        // The last pixel may be only partly paper: what lies under the paper has its colour too.
        var ground = options.IsTransparent ? SKColors.Transparent : sheet.Ground;
        if (options.IsTransparent)
        {
            sheet.RemovePaper();
        }

        using var drawing = sheet.Load();
        return PngResolution.Record(Encode(drawing, size, ground), dpi);
    }

    private static SKSizeI PixelSize(double widthMillimetres, double heightMillimetres, int? widthPixels, double dpi)
    {
        if (!(dpi > 0) || !double.IsFinite(dpi))
        {
            throw new PictureSizeException("a PNG needs a width or a resolution above 0");
        }

        var scale = dpi / SvgSheet.MillimetresPerInch;
        var width = widthPixels ?? Whole(widthMillimetres * scale);
        var height = Whole(heightMillimetres * scale);
        if (width > LongestSide || height > LongestSide || width * height > MostPixels)
        {
            var most = Math.Sqrt(MostPixels / (widthMillimetres * heightMillimetres));
            most = Math.Min(most, LongestSide / Math.Max(widthMillimetres, heightMillimetres));
            throw new PictureSizeException(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"a PNG of {width:F0} × {height:F0} pixels is too large; up to {Math.Floor(most * SvgSheet.MillimetresPerInch):F0} dots per inch, or {Math.Floor(most * widthMillimetres):F0} pixels across, will do"
                )
            );
        }

        return new SKSizeI((int)width, (int)height);
    }

    /// <summary>Rounds up, but not for the noise of a floating-point division.</summary>
    private static double Whole(double pixels) => Math.Max(1, Math.Ceiling(pixels - 1e-6));

    private static byte[] Encode(SKPicture picture, SKSizeI size, SKColor ground)
    {
        using var bitmap = new SKBitmap(
            new SKImageInfo(
                size.Width,
                size.Height,
                SKColorType.Rgba8888,
                ground.Alpha == byte.MaxValue ? SKAlphaType.Opaque : SKAlphaType.Premul
            )
        );
        using var canvas = new SKCanvas(bitmap);
        canvas.Clear(ground);
        var bounds = picture.CullRect;
        canvas.Scale(size.Width / bounds.Width, size.Height / bounds.Height);
        canvas.Translate(-bounds.Left, -bounds.Top);
        canvas.DrawPicture(picture);
        canvas.Flush();
        using var pixels = bitmap.PeekPixels();
        using var data =
            pixels.Encode(FlatColours) ?? throw new InvalidOperationException("The PNG could not be packed.");
        return data.ToArray();
    }
}
