using System.Collections.Immutable;
using Sprache;
using WireText.Syntax.Nodes;
using WireText.Text;

namespace WireText.Syntax.Parsing;

/// <summary>Reads a file, a line at a time: a bad line gives one finding, and the next line is read all the same.</summary>
public static class WiringParser
{
    /// <summary>The longest source that is read, in UTF-16 units.</summary>
    public const int MaxLength = 16 * 1024 * 1024;

    public static WiringTree Parse(SourceText source)
    {
        if (source.Content.Length > MaxLength)
        {
            var finding = LineFindings.TooLarge.At(
                new SourceLocation(source, new TextSpan(0, 0)),
                "a file has 16 MiB at most",
                "divide it into several files"
            );
            return new WiringTree(source, [], [], [finding]);
        }

        return new FileParser(source).Parse();
    }
}

/// <summary>The reading of one file.</summary>
internal sealed class FileParser(SourceText source)
{
    private readonly FindingSink sink = new();
    private readonly ImmutableArray<LineSyntax>.Builder lines = ImmutableArray.CreateBuilder<LineSyntax>();
    private readonly List<StatementSyntax> statements = [];
    private readonly List<ArrangeRowSyntax> rows = [];
    private readonly List<InsideSyntax> insides = [];
    private Block block = Block.None;

    private enum Block
    {
        None,
        Arrange,
        Define,

        /// <summary>Under a first line that could not be read: what belongs to it is passed over.</summary>
        Broken,
    }

    public WiringTree Parse()
    {
        for (var number = 1; number <= source.LineCount; number++)
        {
            ReadLine(number);
        }

        CloseBlock();
        return new WiringTree(source, lines.ToImmutable(), [.. statements], sink.ToImmutable());
    }

    private void ReadLine(int number)
    {
        var scan = LineScan.Of(source, number);
        var findingsBefore = sink.Count;
        var node =
            scan.IsEmpty ? null
            : ReportUnreadable(scan) ? KeepUnreadable(scan)
            : ReadContent(scan);
        lines.Add(
            new LineSyntax(number, new SourceLocation(source, source.LineSpan(number)), node, scan.CommentStart)
            {
                IsBad = sink.Count > findingsBefore,
            }
        );
    }

    private SyntaxNode? ReadContent(LineScan scan)
    {
        var content = new SourceLocation(source, scan.Content);
        if (scan.IsIndented)
        {
            switch (block)
            {
                case Block.Arrange:
                    return Keep(ReadRow(content), rows);
                case Block.Define:
                    return Keep(ReadInside(content), insides);
                case Block.Broken:
                    return null;
                default:
                    sink.Add(
                        LineFindings.StrayIndent.At(
                            FirstWord(content).Location,
                            "an indented line belongs to an 'arrange' or 'define' above it, and there is none",
                            "move it to the left edge"
                        )
                    );
                    return Keep(ReadStatement(content, isReported: true), statements);
            }
        }

        CloseBlock();
        var statement = ReadStatement(content, isReported: false);
        block = statement switch
        {
            ArrangeSyntax => Block.Arrange,
            DefineSyntax { IsBroken: false } => Block.Define,
            _ when statement is null or DefineSyntax && OpensBlock(content) => Block.Broken,
            _ => Block.None,
        };
        return Keep(statement, statements);
    }

    /// <summary>What stands before the place that cannot be read still ends a block above, and still names its part.</summary>
    private StatementSyntax? KeepUnreadable(LineScan scan)
    {
        if (scan.IsIndented)
        {
            return null;
        }

        CloseBlock();
        var content = At(scan.Content.Start, scan.Stray >= 0 ? scan.Stray : scan.OpenQuote);
        block = OpensBlock(content) ? Block.Broken : Block.None;
        return Keep(WhatIsKnown(FirstWord(content), new LineReading(content, hasMarks: false)), statements);
    }

    private static T? Keep<T>(T? node, List<T> list)
        where T : class
    {
        if (node is not null)
        {
            list.Add(node);
        }

        return node;
    }

    private static bool OpensBlock(SourceLocation content) =>
        FirstWord(content).Text.ToUpperInvariant() is "ARRANGE" or "DEFINE";

    /// <summary>Gives the block that ends here the lines that stand under it.</summary>
    private void CloseBlock()
    {
        if (block is Block.Arrange or Block.Define)
        {
            statements[^1] = statements[^1] switch
            {
                ArrangeSyntax arrange => arrange with { Rows = [.. rows] },
                DefineSyntax define => define with { Lines = [.. insides] },
                var other => other,
            };
        }

        rows.Clear();
        insides.Clear();
        block = Block.None;
    }

    private bool ReportUnreadable(LineScan scan)
    {
        if (scan.Stray >= 0)
        {
            var code = char.IsSurrogate(source.Content[scan.Stray])
                ? "half a character"
                : $"U+{(int)source.Content[scan.Stray]:X4}";
            sink.Add(
                LineFindings.StrayCharacter.At(
                    At(scan.Stray, scan.Stray + 1),
                    $"this line has a character that cannot be seen ({code})",
                    "delete it and type the place again"
                )
            );
            return true;
        }

        if (scan.OpenQuote >= 0)
        {
            sink.Add(
                LineFindings.UnclosedText.At(
                    At(scan.OpenQuote, scan.Content.End),
                    "the quote that starts here does not end on this line",
                    "write the closing quote"
                )
            );
            return true;
        }

        return false;
    }

    private StatementSyntax? ReadStatement(SourceLocation content, bool isReported)
    {
        var keyword = FirstWord(content);
        var hasMarks = string.Equals(keyword.Text, "expect", StringComparison.OrdinalIgnoreCase);
        var reading = new LineReading(content, hasMarks);
        if (hasMarks && IsTooDeep(content))
        {
            sink.Add(
                LineFindings.TooDeep.At(
                    content,
                    $"brackets stand more than {ClaimParsers.MaxDepth} deep",
                    "write the claim with fewer brackets"
                )
            );
            return null;
        }

        var byKeyword = StatementParsers.For(keyword.Text);
        if (byKeyword is null && ReportNoKind(keyword, reading, isReported))
        {
            return null;
        }

        var parser =
            from statement in byKeyword ?? StatementParsers.Part(keyword)
            from end in WordParsers.End
            select statement;
        var result = parser(LineInput.At(reading, keyword.Span.End));
        if (result.WasSuccessful)
        {
            return result.Value with { IsBroken = isReported };
        }

        if (!isReported)
        {
            Report(keyword, byKeyword is not null, reading);
        }

        return WhatIsKnown(keyword, reading);
    }

    /// <summary>Reports a first word that can start nothing, before the rest of the line is looked at.</summary>
    private bool ReportNoKind(WordSyntax keyword, LineReading reading, bool isReported)
    {
        if (Keywords.NeverKinds.Has(keyword.Text))
        {
            ReportUnless(
                isReported,
                keyword,
                $"'{keyword.Text}' stands under 'define', indented",
                "indent it, or write 'define' above it"
            );
            return true;
        }

        if (Names.WhyNoIdentifier(keyword.Text) is null && !Names.IsConnective(keyword.Text))
        {
            return false;
        }

        ReportUnless(
            isReported,
            keyword,
            $"no statement starts with '{Shorten(keyword.Text)}'",
            Near(keyword.Text) ?? "start the line with a statement such as 'wire', or with a kind of part"
        );
        return true;
    }

    private void ReportUnless(bool isReported, SyntaxNode at, string message, string? help)
    {
        if (!isReported)
        {
            sink.Add(LineFindings.UnknownStatement.At(at.Location, message, help));
        }
    }

    private void Report(WordSyntax keyword, bool isStatement, LineReading reading)
    {
        // A part of a kind nobody knows whose line reads like no part is a slip in the first word.
        if (!isStatement && !Keywords.StandardKinds.Has(keyword.Text) && Near(keyword.Text) is { } near)
        {
            sink.Add(
                LineFindings.UnknownStatement.At(keyword.Location, $"no statement starts with '{keyword.Text}'", near)
            );
            return;
        }

        ReportExpected(reading);
    }

    private void ReportExpected(LineReading reading)
    {
        var word = reading.Wrong.Text;
        var expected = OneOf(reading.Expected);
        var near = word.Length == 0 ? null : DidYouMean.Nearest(word, Literals(reading.Expected), allowed: 1);
        var message =
            reading.Reason
            ?? (word.Length == 0 ? $"expected {expected}" : $"expected {expected}, not '{Shorten(word)}'");
        var help =
            reading.Help is { } written ? written
            : near is not null ? $"did you mean '{near}'?"
            : reading.Reason is not null && expected.Length > 0 ? $"write {expected} here"
            : null;
        sink.Add(LineFindings.Expected.At(PlaceOf(reading), message, help));
    }

    /// <summary>A line that ended too soon is marked at its last word.</summary>
    private static SourceLocation PlaceOf(LineReading reading)
    {
        if (reading.Wrong.Span.Length > 0)
        {
            return reading.Wrong;
        }

        var line = reading.Content.Text;
        return reading.Content.Within(line.LastIndexOfAny([' ', '\t']) + 1, line.Length);
    }

    private static string OneOf(IReadOnlyList<string> expected) =>
        expected.Count switch
        {
            0 => "",
            1 => expected[0],
            _ => $"{string.Join(", ", expected.Take(expected.Count - 1))} or {expected[^1]}",
        };

    /// <summary>What of the expected could be typed just so.</summary>
    private static IEnumerable<string> Literals(IEnumerable<string> expected) =>
        expected
            .Where(what => what.StartsWith('\'') && what.IndexOf('\'', 1) > 0)
            .Select(what => what[1..what.IndexOf('\'', 1)]);

    private static string? Near(string word) =>
        DidYouMean.Nearest(word, Keywords.Statements.Concat(Keywords.StandardKinds)) is { } near
            ? $"did you mean '{near}'?"
            : null;

    private static string Shorten(string word) => word.Length <= 40 ? word : $"{word[..37]}…";

    /// <summary>What can be kept of a bad line, so that its name stays known.</summary>
    private static StatementSyntax? WhatIsKnown(WordSyntax keyword, LineReading reading)
    {
        var isSplice = string.Equals(keyword.Text, "splice", StringComparison.OrdinalIgnoreCase);
        var isDefine = string.Equals(keyword.Text, "define", StringComparison.OrdinalIgnoreCase);
        if (!isSplice && !isDefine && StatementParsers.For(keyword.Text) is not null)
        {
            return null;
        }

        var names = WordParsers.Identifier("a name").Repeat(isDefine ? 2 : 1)(LineInput.At(reading, keyword.Span.End));
        if (!names.WasSuccessful)
        {
            return null;
        }

        var words = names.Value.ToList();
        StatementSyntax node =
            isSplice ? new SpliceSyntax(words[0], [], null, null, reading.Content)
            : isDefine ? new DefineSyntax(words[0], words[1], null, [], reading.Content)
            : new PartSyntax(keyword, words[0], [], null, reading.Content);
        return node with { IsBroken = true };
    }

    private ArrangeRowSyntax? ReadRow(SourceLocation content)
    {
        var reading = new LineReading(content, hasMarks: false);
        var cell = WordParsers.Where(
            "the name of a part, or '.' for an empty cell",
            text => text == "." || Names.WhyNoIdentifier(text) is null,
            text => text == "." ? null : Names.WhyNoIdentifier(text)
        );
        var parser =
            from cells in cell.AtLeastOnce()
            from end in WordParsers.End
            select new ArrangeRowSyntax([.. cells], content);
        return Run(parser, LineInput.At(reading, content.Span.Start), reading);
    }

    private InsideSyntax? ReadInside(SourceLocation content)
    {
        var keyword = FirstWord(content);
        if (InsideParsers.For(keyword) is not { } byKeyword)
        {
            var near = DidYouMean.Nearest(keyword.Text, Keywords.Insides);
            sink.Add(
                LineFindings.UnknownStatement.At(
                    keyword.Location,
                    $"no line of a definition starts with '{Shorten(keyword.Text)}'",
                    near is not null ? $"did you mean '{near}'?" : $"it has {string.Join(", ", Keywords.Insides)}"
                )
            );
            return null;
        }

        var reading = new LineReading(content, hasMarks: false);
        var parser = from inside in byKeyword from end in WordParsers.End select inside;
        return Run(parser, LineInput.At(reading, keyword.Span.End), reading);
    }

    private T? Run<T>(Parser<T> parser, IInput input, LineReading reading)
        where T : class
    {
        var result = parser(input);
        if (result.WasSuccessful)
        {
            return result.Value;
        }

        ReportExpected(reading);
        return null;
    }

    private static WordSyntax FirstWord(SourceLocation content)
    {
        var line = new LineReading(content, hasMarks: false);
        var word = line.WordAt(content.Span.Start);
        return new WordSyntax(word.Text, word);
    }

    private static bool IsTooDeep(SourceLocation content)
    {
        var (depth, deepest) = (0, 0);
        foreach (var character in content.Text)
        {
            depth += character switch
            {
                '(' => 1,
                ')' => -1,
                _ => 0,
            };
            deepest = Math.Max(deepest, depth);
        }

        return deepest > ClaimParsers.MaxDepth;
    }

    private SourceLocation At(int start, int end) => new(source, TextSpan.FromBounds(start, end));
}
