using WireText.Drawing.Lettering;

namespace WireText.Drawing.Shapes;

/// <summary>How words are set.</summary>
/// <param name="Size">Of the letters, in millimetres.</param>
internal readonly record struct TextStyle(TextWeight Weight, double Size, Colour Colour)
{
    /// <summary>Plain words of the size of notes.</summary>
    public static TextStyle Note(Colour colour) => new(TextWeight.Regular, Tokens.NoteSize, colour);

    /// <summary>What stands above several notes.</summary>
    public static TextStyle Caption(Colour colour) => new(TextWeight.SemiBold, Tokens.NoteSize, colour);

    /// <summary>The title of a page.</summary>
    public static TextStyle Title(Colour colour) => new(TextWeight.SemiBold, Tokens.TitleSize, colour);

    public double WidthOf(string text) => DrawnText.Width(text, Weight, Size);

    /// <summary>The text, cut to a width.</summary>
    public string Fit(string text, double width) => DrawnText.Fit(text, Weight, Size, width);
}
