using WireText.Syntax.Nodes;
using WireText.Text;

namespace WireText.Syntax.Parsing;

/// <summary>The <c>arrange</c> or <c>define</c> that indented lines stand under, with those that were read so far.</summary>
internal sealed class OpenBlock
{
    private readonly List<ArrangeRowSyntax> rows = [];
    private readonly List<InsideSyntax> insides = [];
    private Kind kind = Kind.None;

    private enum Kind
    {
        None,
        Arrange,
        Define,

        /// <summary>Under a first line that could not be read: what belongs to it is passed over.</summary>
        Broken,
    }

    public bool IsOpen => kind != Kind.None;

    /// <summary>Opens a block when a line at the left edge does.</summary>
    /// <param name="statement">What that line was read as; null when nothing could be kept of it.</param>
    public void Open(SourceLocation content, StatementSyntax? statement) =>
        kind = statement switch
        {
            ArrangeSyntax => Kind.Arrange,
            DefineSyntax { IsBroken: false } => Kind.Define,
            _ when OpensBlock(content) => Kind.Broken,
            _ => Kind.None,
        };

    /// <summary>Reads a line that stands in the block.</summary>
    public SyntaxNode? Read(SourceLocation content, FindingSink sink) =>
        kind switch
        {
            Kind.Arrange => Keep(BlockLineReader.ReadRow(content, sink), rows),
            Kind.Define => Keep(BlockLineReader.ReadInside(content, sink), insides),
            _ => null,
        };

    /// <summary>Ends the block.</summary>
    /// <param name="last">The statement that opened it, if one is open.</param>
    /// <returns>That statement with its lines.</returns>
    public StatementSyntax Close(StatementSyntax last)
    {
        var closed = (kind, last) switch
        {
            (Kind.Arrange, ArrangeSyntax arrange) => arrange with { Rows = [.. rows] },
            (Kind.Define, DefineSyntax define) => define with { Lines = [.. insides] },
            _ => last,
        };
        rows.Clear();
        insides.Clear();
        kind = Kind.None;
        return closed;
    }

    private static bool OpensBlock(SourceLocation content)
    {
        var word = LineReading.OfBlockLine(content).FirstWord;
        return word.Is(Keywords.Arrange) || word.Is(Keywords.Define);
    }

    private static T? Keep<T>(T? node, List<T> list)
        where T : SyntaxNode
    {
        if (node is not null)
        {
            list.Add(node);
        }

        return node;
    }
}
