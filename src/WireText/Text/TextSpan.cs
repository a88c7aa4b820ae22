namespace WireText.Text;

/// <summary>A stretch of text, counted in UTF-16 units from the start of the source.</summary>
public readonly record struct TextSpan(int Start, int Length)
{
    /// <summary>The offset just past the last unit.</summary>
    public int End => Start + Length;

    public static TextSpan FromBounds(int start, int end) => new(start, Math.Max(0, end - start));
}
