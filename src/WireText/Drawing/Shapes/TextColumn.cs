using WireText.Drawing.Lettering;
using WireText.Geometry;

namespace WireText.Drawing.Shapes;

/// <summary>A column of words, set from the top down: each line moves the place of the next.</summary>
/// <param name="items">Where the lines go, among the other shapes of a page.</param>
/// <param name="left">The left edge, in millimetres.</param>
/// <param name="right">The right edge.</param>
/// <param name="top">Where the first line begins.</param>
internal sealed class TextColumn(List<PictureItem> items, double left, double right, double top)
{
    public double Left { get; } = left;

    public double Right { get; } = right;

    public double Width => Right - Left;

    /// <summary>The top of the next line.</summary>
    public double Y { get; private set; } = top;

    public void Skip(double height) => Y += height;

    public void MoveTo(double y) => Y = y;

    /// <summary>One line, as long as it is.</summary>
    /// <param name="indent">How far right of the left edge it begins.</param>
    public void Line(string name, string text, TextStyle style, double indent = 0)
    {
        items.Add(TextItem.Start(name, text, new Point(Left + indent, Y + (style.Size * DrawnText.CapHeight)), style));
        Y += style.Size * Tokens.LineHeight;
    }

    /// <summary>Words in as many lines as the width asks for.</summary>
    public void Paragraph(string name, string text, TextStyle style, double indent = 0)
    {
        foreach (var line in DrawnText.Wrap(text, style.Weight, style.Size, Width - indent))
        {
            Line(name, line, style, indent);
        }
    }

    /// <summary>One line that begins at the left edge, on a baseline of its own.</summary>
    public void StartOn(double baseline, string name, string text, TextStyle style, double indent = 0) =>
        items.Add(TextItem.Start(name, text, new Point(Left + indent, baseline), style));

    /// <summary>One line that ends at the right edge, on a baseline of its own.</summary>
    public void EndOn(double baseline, string name, string text, TextStyle style) =>
        items.Add(TextItem.End(name, text, new Point(Right, baseline), style));
}
