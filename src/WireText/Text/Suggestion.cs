using System.Collections.Immutable;

namespace WireText.Text;

/// <summary>An edit that may mend a finding, for the author to choose.</summary>
/// <param name="Words">What to do at the bench; it names every lug that it touches.</param>
/// <param name="Edits">The same in the text, all of them together.</param>
public sealed record Suggestion(string Words, ImmutableArray<TextEdit> Edits);
