using Sprache;
using WireText.Syntax.Nodes;
using WireText.Text;

namespace WireText.Syntax.Parsing;

/// <summary>Reads one line under <c>arrange</c> or <c>define</c>.</summary>
internal static class BlockLineReader
{
    private static readonly Parser<WordSyntax> Cell = WordParsers.Where(
        "the name of a part, or '.' for an empty cell",
        text => text == "." || Names.WhyNoIdentifier(text) is null,
        text => text == "." ? null : Names.WhyNoIdentifier(text)
    );

    private static readonly Parser<ArrangeRowSyntax> Row =
        from cells in Cell.AtLeastOnce()
        from line in WordParsers.WholeLine
        select new ArrangeRowSyntax([.. cells], line);

    public static ArrangeRowSyntax? ReadRow(SourceLocation content, FindingSink sink) =>
        Read(Row, LineReading.OfBlockLine(content), content.Span.Start, sink);

    public static InsideSyntax? ReadInside(SourceLocation content, FindingSink sink)
    {
        var reading = LineReading.OfBlockLine(content);
        var keyword = reading.FirstWord;
        if (InsideParsers.For(keyword) is { } parser)
        {
            return Read(parser, reading, keyword.Span.End, sink);
        }

        var near = DidYouMean.Nearest(keyword.Text, Keywords.Insides);
        sink.Add(
            LineFindings.UnknownStatement.At(
                keyword.Location,
                $"no line of a definition starts with '{LineExplanation.Shorten(keyword.Text)}'",
                near is not null ? $"did you mean '{near}'?" : $"it has {string.Join(", ", Keywords.Insides)}"
            )
        );
        return null;
    }

    private static T? Read<T>(Parser<T> parser, LineReading reading, int start, FindingSink sink)
        where T : SyntaxNode
    {
        var result = WordParsers.ToTheEnd(parser)(LineInput.At(reading, start));
        if (result.WasSuccessful)
        {
            return result.Value;
        }

        sink.Add(LineExplanation.Of(reading));
        return null;
    }
}
