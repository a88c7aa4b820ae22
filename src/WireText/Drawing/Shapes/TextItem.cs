using WireText.Drawing.Lettering;
using WireText.Geometry;

namespace WireText.Drawing.Shapes;

public enum TextAlign
{
    Start,
    Middle,
    End,
}

/// <summary>One line of text, clean already.</summary>
/// <param name="At">On the baseline, at the place that <paramref name="Align"/> says.</param>
/// <param name="Width">What it takes up by our table of widths.</param>
/// <param name="IsVertical">Read from below upwards: turned round <paramref name="At"/> by 90° to the left.</param>
public sealed record TextItem(
    string Class,
    string Text,
    Point At,
    TextAlign Align,
    TextWeight Weight,
    double Size,
    Colour Colour,
    double Width,
    bool IsVertical
) : PictureItem(Class)
{
    /// <summary>A text centred on a point, both ways, by the height of its capitals.</summary>
    public static TextItem Centred(
        string name,
        string text,
        Point centre,
        TextWeight weight,
        double size,
        Colour colour,
        bool isVertical = false
    )
    {
        var drop = size * DrawnText.CapHeight / 2;
        var at = isVertical ? new Point(centre.X + drop, centre.Y) : new Point(centre.X, centre.Y + drop);
        var width = DrawnText.Width(text, weight, size);
        return new TextItem(name, text, at, TextAlign.Middle, weight, size, colour, width, isVertical);
    }

    public static TextItem Start(string name, string text, Point at, TextWeight weight, double size, Colour colour) =>
        Start(name, text, at, new TextStyle(weight, size, colour));

    internal static TextItem Start(string name, string text, Point at, TextStyle style) =>
        Aligned(name, text, at, TextAlign.Start, style);

    internal static TextItem End(string name, string text, Point at, TextStyle style) =>
        Aligned(name, text, at, TextAlign.End, style);

    internal static TextItem Aligned(string name, string text, Point at, TextAlign align, TextStyle style) =>
        new(name, text, at, align, style.Weight, style.Size, style.Colour, style.WidthOf(text), IsVertical: false);

    /// <summary>What the letters take up, with what hangs below their line.</summary>
    public Box Ink
    {
        get
        {
            var descent = DrawnText.Descent(Text, Size);
            return IsVertical
                ? Bounds with
                {
                    Width = Bounds.Width + descent,
                }
                : Bounds with
                {
                    Height = Bounds.Height + descent,
                };
        }
    }

    /// <summary>What the capitals take up.</summary>
    public Box Bounds
    {
        get
        {
            var height = Size * DrawnText.CapHeight;
            var before = Align switch
            {
                TextAlign.Start => 0,
                TextAlign.Middle => Width / 2,
                _ => Width,
            };
            return IsVertical
                ? new Box(At.X - height, At.Y + before - Width, height, Width)
                : new Box(At.X - before, At.Y - height, Width, height);
        }
    }
}
