using SkiaSharp;
using Svg.Skia.TypefaceProviders;

namespace WireText.Raster.Fonts;

/// <summary>Gives every text the packaged typeface, in the nearest of its four weights; no font of the machine is asked.</summary>
public sealed class InterTypefaces : ITypefaceProvider
{
    private static readonly Lazy<SKTypeface> Regular = new(() => Load("Inter-Regular.ttf"));
    private static readonly Lazy<SKTypeface> Medium = new(() => Load("Inter-Medium.ttf"));
    private static readonly Lazy<SKTypeface> SemiBold = new(() => Load("Inter-SemiBold.ttf"));
    private static readonly Lazy<SKTypeface> Bold = new(() => Load("Inter-Bold.ttf"));

    /// <summary>The face for a weight from 100 to 900.</summary>
    public static SKTypeface OfWeight(int weight) =>
        weight switch
        {
            < 450 => Regular.Value,
            < 550 => Medium.Value,
            < 650 => SemiBold.Value,
            _ => Bold.Value,
        };

    /// <summary>The same face for any family and slant: a picture never depends on what it asks for.</summary>
    public SKTypeface FromFamilyName(
        string fontFamily,
        SKFontStyleWeight fontWeight,
        SKFontStyleWidth fontWidth,
        SKFontStyleSlant fontStyle
    ) => OfWeight((int)fontWeight);

    private static SKTypeface Load(string name)
    {
        using var stream =
            typeof(InterTypefaces).Assembly.GetManifestResourceStream(name)
            ?? throw new InvalidOperationException($"The font {name} was not built into this program.");
        return SKTypeface.FromStream(stream)
            ?? throw new InvalidOperationException($"The font {name} that was built into this program cannot be read.");
    }
}
