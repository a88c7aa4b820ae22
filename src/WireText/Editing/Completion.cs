using WireText.Text;

namespace WireText.Editing;

/// <summary>What a word is that may follow.</summary>
public enum CompletionKind
{
    Statement,
    Kind,
    Model,
    Part,
    Lug,
    Control,
    Position,
    Colour,
    Claim,
    Check,
    Key,

    /// <summary>Any other word of the language.</summary>
    Word,
}

/// <summary>A word that may stand at a place.</summary>
/// <param name="Word">What is written there.</param>
/// <param name="Detail">What it is, in a few words; empty where its name says all.</param>
/// <param name="At">What of the text it takes the place of.</param>
public sealed record Completion(string Word, CompletionKind Kind, string Detail, TextSpan At)
{
    /// <summary>How a colour looks, as <c>#RRGGBB</c>; null for everything else.</summary>
    public string? Paint { get; init; }
}
