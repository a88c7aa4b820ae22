using WireText.Text;

namespace WireText.Editing;

/// <summary>What a word of a text is, for its colour.</summary>
public enum WordKind
{
    /// <summary>A word of the language.</summary>
    Keyword,

    /// <summary>A kind of part.</summary>
    Kind,

    Model,

    /// <summary>A part, a splice or a control.</summary>
    Part,

    /// <summary>A lug, or what else stands behind a dot.</summary>
    Lug,

    /// <summary>A position of a control, and a word that says how a part is made.</summary>
    Choice,

    /// <summary>What stands before an equals sign.</summary>
    Key,

    Number,

    /// <summary>Words in quotes.</summary>
    Text,

    Comment,
    Colour,
    Check,
}

/// <summary>A word, or a piece of one, with what it is. It lies in one line.</summary>
/// <param name="IsDeclaration">True where something gets its name.</param>
public sealed record WordToken(TextSpan At, WordKind Kind, bool IsDeclaration);
