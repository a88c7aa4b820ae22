namespace WireText.Output;

/// <summary>Words from a file as Markdown shows them: nothing in them is a mark.</summary>
internal static class MarkdownText
{
    public static string Escaped(string text) =>
        text.Replace("\\", "\\\\", StringComparison.Ordinal)
            .Replace("|", "\\|", StringComparison.Ordinal)
            .Replace("*", "\\*", StringComparison.Ordinal)
            .Replace("<", "\\<", StringComparison.Ordinal)
            .Replace("[", "\\[", StringComparison.Ordinal)
            .Replace("`", "\\`", StringComparison.Ordinal)
            // Of these some readers make links by themselves.
            .Replace("@", "\\@", StringComparison.Ordinal)
            .Replace("www.", "www\\.", StringComparison.Ordinal);
}
