namespace WireText.Text;

/// <summary>A place in one source file.</summary>
public readonly record struct SourceLocation(SourceText Source, TextSpan Span)
{
    /// <summary>The line and the column, both from 1, where the place starts.</summary>
    public (int Line, int Column) Position => Source.PositionOf(Span.Start);

    public string Text => Source.Slice(Span);

    /// <summary>From the start of this place to the end of a later one in the same source.</summary>
    public SourceLocation To(SourceLocation last) =>
        this with
        {
            Span = TextSpan.FromBounds(Span.Start, last.Span.End),
        };

    /// <summary>A stretch of this place; both offsets count from its start.</summary>
    public SourceLocation Within(int start, int end) =>
        this with
        {
            Span = TextSpan.FromBounds(Span.Start + start, Span.Start + end),
        };
}
