using System.Collections.Immutable;
using System.Text;
using WireText.Text;

namespace WireText.Syntax;

/// <summary>A piece of a tree. It knows the source it stands in, so that statements of several files can make one circuit.</summary>
/// <param name="Location">From its first word to its last.</param>
public abstract record SyntaxNode(SourceLocation Location)
{
    public TextSpan Span => Location.Span;
}

/// <summary>A run of characters without blanks: a name, a model, a value, a colour, a keyword.</summary>
public sealed record WordSyntax(string Text, SourceLocation Location) : SyntaxNode(Location)
{
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

/// <summary>One line of source, with or without a statement. Lines, spaces and comments are kept by the tree as text.</summary>
/// <param name="Number">From 1.</param>
/// <param name="Location">The line without its ending.</param>
/// <param name="Content">
/// A <see cref="StatementSyntax"/>, or under a block an <see cref="ArrangeRowSyntax"/> or an <see cref="InsideSyntax"/>.
/// Null for a blank line, a comment, and a line too broken to keep anything of.
/// </param>
/// <param name="CommentStart">The offset of <c>#</c>, or -1.</param>
public sealed record LineSyntax(int Number, SourceLocation Location, SyntaxNode? Content, int CommentStart)
    : SyntaxNode(Location)
{
    /// <summary>True when the line has a finding.</summary>
    public bool IsBad { get; init; }
}

/// <summary>A whole file. Printing the spans of its lines with what is between them gives back the source exactly.</summary>
/// <param name="Statements">Top-level statements in order; an <c>arrange</c> or <c>define</c> holds its indented lines.</param>
/// <param name="Findings">Every bad line, in order.</param>
public sealed record WiringTree(
    SourceText Source,
    ImmutableArray<LineSyntax> Lines,
    ImmutableArray<StatementSyntax> Statements,
    ImmutableArray<Finding> Findings
)
{
    /// <summary>The source again, from the lines and what ends them.</summary>
    public string ToText()
    {
        var text = new StringBuilder(Source.Content.Length);
        for (var i = 0; i < Lines.Length; i++)
        {
            var end = i + 1 < Lines.Length ? Lines[i + 1].Span.Start : Source.Content.Length;
            text.Append(Source.Slice(Lines[i].Span)).Append(Source.Content, Lines[i].Span.End, end - Lines[i].Span.End);
        }

        return text.ToString();
    }
}
