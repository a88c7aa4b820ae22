using WireText.Drawing.Lettering;

namespace WireText.Output;

/// <summary>Text from a file as it stands in XML and HTML, between tags or in quotes.</summary>
internal static class MarkupText
{
    /// <summary>Clean whatever the user wrote.</summary>
    public static string Escaped(string text) =>
        DrawnText
            .Clean(text)
            .Replace("&", "&amp;", StringComparison.Ordinal)
            .Replace("<", "&lt;", StringComparison.Ordinal)
            .Replace(">", "&gt;", StringComparison.Ordinal)
            .Replace("\"", "&quot;", StringComparison.Ordinal);
}
