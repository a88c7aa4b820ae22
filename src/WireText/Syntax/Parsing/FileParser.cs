using System.Collections.Immutable;
using WireText.Syntax.Nodes;
using WireText.Text;

namespace WireText.Syntax.Parsing;

/// <summary>The reading of one file: its lines in order, and which block an indented one stands under.</summary>
internal sealed class FileParser(SourceText source)
{
    private readonly FindingSink sink = new();
    private readonly ImmutableArray<LineSyntax>.Builder lines = ImmutableArray.CreateBuilder<LineSyntax>();
    private readonly ImmutableArray<StatementSyntax>.Builder statements =
        ImmutableArray.CreateBuilder<StatementSyntax>();
    private readonly OpenBlock block = new();

    public WiringTree Parse()
    {
        for (var number = 1; number <= source.LineCount; number++)
        {
            ReadLine(number);
        }

        CloseBlock();
        return new WiringTree(source, lines.ToImmutable(), statements.ToImmutable(), sink.ToImmutable());
    }

    private void ReadLine(int number)
    {
        var scan = LineScan.Of(source, number);
        var findingsBefore = sink.Count;
        var node =
            scan.IsEmpty ? null
            : Unreadable(scan) is { } finding ? ReadUntil(scan, finding)
            : scan.IsIndented ? ReadIndented(new SourceLocation(source, scan.Content))
            : ReadAtTheEdge(new SourceLocation(source, scan.Content));
        lines.Add(
            new LineSyntax(number, new SourceLocation(source, source.LineSpan(number)), node, scan.CommentStart)
            {
                IsBad = sink.Count > findingsBefore,
            }
        );
    }

    private SyntaxNode? ReadIndented(SourceLocation content)
    {
        if (block.IsOpen)
        {
            return block.Read(content, sink);
        }

        sink.Add(
            LineFindings.StrayIndent.At(
                LineReading.OfStatement(content).FirstWord.Location,
                "an indented line belongs to an 'arrange' or 'define' above it, and there is none",
                "move it to the left edge"
            )
        );
        return Keep(StatementReader.ReadReported(content));
    }

    private StatementSyntax? ReadAtTheEdge(SourceLocation content)
    {
        CloseBlock();
        var statement = StatementReader.Read(content, sink);
        block.Open(content, statement);
        return Keep(statement);
    }

    /// <summary>What stands before the place that cannot be read still ends a block above, and still names its part.</summary>
    private StatementSyntax? ReadUntil(LineScan scan, Finding unreadable)
    {
        sink.Add(unreadable);
        if (scan.IsIndented)
        {
            return null;
        }

        CloseBlock();
        var content = new SourceLocation(
            source,
            TextSpan.FromBounds(scan.Content.Start, unreadable.Location.Span.Start)
        );
        var statement = BrokenStatements.WhatIsKnown(LineReading.OfBlockLine(content));
        block.Open(content, statement);
        return Keep(statement);
    }

    private StatementSyntax? Keep(StatementSyntax? statement)
    {
        if (statement is not null)
        {
            statements.Add(statement);
        }

        return statement;
    }

    /// <summary>Gives the block that ends here the lines that stand under it.</summary>
    private void CloseBlock()
    {
        if (statements.Count > 0)
        {
            statements[^1] = block.Close(statements[^1]);
        }
    }

    /// <summary>Why a line cannot be divided into words; null when it can.</summary>
    private Finding? Unreadable(LineScan scan)
    {
        if (scan.Stray >= 0)
        {
            var code = char.IsSurrogate(source.Content[scan.Stray])
                ? "half a character"
                : $"U+{(int)source.Content[scan.Stray]:X4}";
            return LineFindings.StrayCharacter.At(
                new SourceLocation(source, new TextSpan(scan.Stray, 1)),
                $"this line has a character that cannot be seen ({code})",
                "delete it and type the place again"
            );
        }

        return scan.OpenQuote < 0
            ? null
            : LineSlips.Mend(
                LineFindings.UnclosedText.At(
                    new SourceLocation(source, TextSpan.FromBounds(scan.OpenQuote, scan.Content.End)),
                    "the quote that starts here does not end on this line",
                    "write the closing quote"
                ),
                LineReading.OfStatement(new SourceLocation(source, scan.Content)),
                StatementReader.IsRead
            );
    }
}
