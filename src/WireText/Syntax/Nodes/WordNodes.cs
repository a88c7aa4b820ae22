using System.Collections.Immutable;
using WireText.Text;

namespace WireText.Syntax.Nodes;

/// <summary>A run of characters without blanks: a name, a model, a value, a colour, a keyword.</summary>
public sealed record WordSyntax(string Text, SourceLocation Location) : SyntaxNode(Location)
{
    /// <summary>True when it is that word, in upper or lower case.</summary>
    public bool Is(string word) => string.Equals(Text, word, StringComparison.OrdinalIgnoreCase);

    /// <summary>Some of its characters as a word of their own.</summary>
    public WordSyntax Part(int start, int end) => new(Text[start..end], Location.Within(start, end));
}

/// <summary>Words in quotes.</summary>
/// <param name="Value">Without the quotes.</param>
public sealed record TextSyntax(string Value, SourceLocation Location) : SyntaxNode(Location);

/// <summary><c>key=value</c>. The key may be dotted: <c>n.dcr</c>, <c>vol.pull</c>.</summary>
public sealed record PairSyntax(WordSyntax Key, WordSyntax Value) : SyntaxNode(Key.Location.To(Value.Location));

/// <summary>A name with its dotted words: <c>neck.hot</c>, <c>duo.top.1</c>, <c>saddle</c>.</summary>
public sealed record LugSyntax(ImmutableArray<WordSyntax> Words) : SyntaxNode(Words[0].Location.To(Words[^1].Location))
{
    /// <summary>The first word.</summary>
    public WordSyntax Name => Words[0];

    /// <summary>The whole name, dots and all.</summary>
    public string FullName => string.Join('.', Words.Select(word => word.Text));
}

/// <summary><c>x,y</c>.</summary>
public sealed record PointSyntax(double X, double Y, SourceLocation Location) : SyntaxNode(Location);

/// <summary><c>A0+A1+A2</c>: lugs that are joined.</summary>
public sealed record JointSyntax(ImmutableArray<WordSyntax> Words)
    : SyntaxNode(Words[0].Location.To(Words[^1].Location));
