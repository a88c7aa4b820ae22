using System.Collections.Immutable;

namespace WireText.Documents;

/// <summary>What is printed and handed on: blocks from top to bottom. Its outputs only set them; none makes a table of its own.</summary>
/// <param name="Foot">What stands at the foot of each page: the file and the mark of the circuit.</param>
public sealed record Document(string Title, string Foot, ImmutableArray<Block> Blocks)
{
    /// <summary>The language of our own words (BCP 47).</summary>
    public const string Language = "en";
}
