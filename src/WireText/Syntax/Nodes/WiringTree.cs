using System.Collections.Immutable;
using System.Text;
using WireText.Text;

namespace WireText.Syntax.Nodes;

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
