using WireText.Text;

namespace WireText.Editing;

/// <summary>What there is to say about a word.</summary>
/// <param name="At">The word.</param>
/// <param name="Markdown">What is quoted from a file is in code, where it does nothing.</param>
public sealed record Hover(TextSpan At, string Markdown);
