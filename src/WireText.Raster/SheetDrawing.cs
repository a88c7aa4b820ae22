using SkiaSharp;
using Svg.Skia;

namespace WireText.Raster;

/// <summary>The shapes of a sheet, to be drawn on any canvas until they are disposed of.</summary>
internal sealed class SheetDrawing(SKSvg shapes, SKPicture picture) : IDisposable
{
    public SKPicture Picture { get; } = picture;

    public void Dispose() => shapes.Dispose();
}
