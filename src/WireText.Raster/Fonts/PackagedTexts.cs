using ShimSkiaSharp;
using Svg.Model;
using Svg.Skia;

namespace WireText.Raster.Fonts;

/// <summary>Answers which typeface a text takes: of the packaged ones, so once a weight and not once a letter.</summary>
/// <remarks>
/// The library asks this for every beginning of every text. A text with a letter that the face lacks is answered by the library
/// itself. Kept for one drawing, on one thread.
/// </remarks>
internal sealed class PackagedTexts(SkiaModel model)
    : SkiaSvgAssetLoader(model),
        ISvgAssetLoader,
        ISvgTextRunTypefaceResolver
{
    private readonly Dictionary<SKFontStyleWeight, PackagedFace> faces = [];

    List<TypefaceSpan> ISvgAssetLoader.FindTypefaces(string? text, SKPaint paintPreferredTypeface)
    {
        if (text is not { Length: > 0 } || FaceOf(text, paintPreferredTypeface) is not { } face)
        {
            return FindTypefaces(text, paintPreferredTypeface);
        }

        var paint = paintPreferredTypeface.Clone();
        paint.Typeface = face;
        var box = default(SKRect);
        return [new TypefaceSpan(text, MeasureText(text, paint, ref box), face)];
    }

    SKTypeface? ISvgTextRunTypefaceResolver.FindRunTypeface(string? text, SKPaint paintPreferredTypeface) =>
        FaceOf(text ?? "", paintPreferredTypeface) ?? FindRunTypeface(text, paintPreferredTypeface);

    /// <summary>The face that has all of a text; null where none is asked for or a letter is missing.</summary>
    private SKTypeface? FaceOf(string text, SKPaint paint)
    {
        if (paint.Typeface is not { } asked)
        {
            return null;
        }

        if (!faces.TryGetValue(asked.FontWeight, out var face))
        {
            face = new PackagedFace(
                InterTypefaces.OfWeight((int)asked.FontWeight).ToFont(),
                FindRunTypeface("0", paint)
            );
            faces.Add(asked.FontWeight, face);
        }

        return face.Font.ContainsGlyphs(text) ? face.Named : null;
    }

    /// <param name="Font">Which letters there are.</param>
    /// <param name="Named">The same face as the library names it.</param>
    private sealed record PackagedFace(SkiaSharp.SKFont Font, SKTypeface? Named);
}
