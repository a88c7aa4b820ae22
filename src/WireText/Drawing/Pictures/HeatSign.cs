using WireText.Drawing.Lettering;
using WireText.Drawing.Shapes;
using WireText.Geometry;

namespace WireText.Drawing.Pictures;

/// <summary>The sign on a part that heat harms: a thermometer in a ring.</summary>
internal static class HeatSign
{
    /// <summary>What to do where it stands. Common practice.</summary>
    public const string Words = "heat-sensitive: tin first, with a heat sink clipped on the lead";

    /// <summary>The ring, the bulb and the stem, in millimetres. Chosen by eye.</summary>
    private const double Radius = 1.5;
    private const double Bulb = 0.45;
    private const double Stem = 1.5;

    public static IEnumerable<PictureItem> At(Point centre, Theme theme)
    {
        yield return new CircleShape(
            "heat",
            centre,
            Radius,
            new Paint(theme.Paper, theme.Warning, Tokens.DetailLine * 1.5)
        );
        var bulb = centre + new Point(0, Stem / 2);
        yield return PathShape.Through(
            "heat",
            Paint.Stroked(theme.Warning, Bulb) with
            {
                HasRoundEnds = true,
            },
            centre - new Point(0, Stem / 2),
            bulb
        );
        yield return new CircleShape("heat", bulb, Bulb, Paint.Filled(theme.Warning));
    }

    /// <summary>On the upper right corner of a body, where no lead leaves.</summary>
    public static Point PlaceOn(Box body) => new(body.Right - (Radius / 2), body.Y + (Radius / 2));

    /// <summary>What it covers, as words and marks keep off it.</summary>
    public static Box BoxOn(Box body) => Box.Around(PlaceOn(body), 2 * Radius, 2 * Radius);
}
