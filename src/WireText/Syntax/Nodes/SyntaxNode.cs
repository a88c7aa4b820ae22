using WireText.Text;

namespace WireText.Syntax.Nodes;

/// <summary>A piece of a tree. It knows the source it stands in, so that statements of several files can make one circuit.</summary>
/// <param name="Location">From its first word to its last.</param>
public abstract record SyntaxNode(SourceLocation Location)
{
    public TextSpan Span => Location.Span;
}
