using WireText.Syntax.Nodes;
using WireText.Text;

namespace WireText.Syntax.Parsing;

/// <summary>Reads one line that says something by itself: a statement, or a part by its kind.</summary>
internal static class StatementReader
{
    /// <summary>The statement, or what could be kept of it; why it is bad goes to the sink, as one finding.</summary>
    public static StatementSyntax? Read(SourceLocation content, FindingSink sink)
    {
        var reading = LineReading.OfStatement(content);
        var (statement, problem) = Read(reading);
        if (problem is not null)
        {
            sink.Add(LineSlips.Mend(problem, reading, IsRead));
        }

        return statement;
    }

    /// <summary>The same of a line that has a finding already: it gets no second one, and counts as broken.</summary>
    public static StatementSyntax? ReadReported(SourceLocation content) =>
        Read(LineReading.OfStatement(content)).Statement is { } statement ? statement with { IsBroken = true } : null;

    /// <summary>True for a line that can be read by itself.</summary>
    public static bool IsRead(string line)
    {
        var source = new SourceText("", line);
        var scan = LineScan.Of(source, 1);
        return scan is { IsEmpty: false, OpenQuote: < 0, Stray: < 0 }
            && Read(LineReading.OfStatement(new SourceLocation(source, scan.Content))).Problem is null;
    }

    private static (StatementSyntax? Statement, Finding? Problem) Read(LineReading reading)
    {
        var keyword = reading.FirstWord;
        if (BracketDepth.Problem(reading) is { } tooDeep)
        {
            return (null, tooDeep);
        }

        var byKeyword = StatementParsers.For(keyword.Text);
        if (byKeyword is null && NoKind(keyword) is { } noKind)
        {
            return (null, noKind);
        }

        var parser = WordParsers.ToTheEnd(byKeyword ?? StatementParsers.Part(keyword));
        var result = parser(LineInput.At(reading, keyword.Span.End));
        if (result.WasSuccessful)
        {
            return (result.Value, null);
        }

        var slip = byKeyword is null ? SlipInTheFirstWord(keyword) : null;
        return (BrokenStatements.WhatIsKnown(reading), slip ?? LineExplanation.Of(reading));
    }

    /// <summary>A first word that can start nothing, whatever the rest of the line is; null when it may be a kind of part.</summary>
    private static Finding? NoKind(WordSyntax keyword)
    {
        if (Keywords.NeverKinds.Has(keyword.Text))
        {
            return LineFindings.UnknownStatement.At(
                keyword.Location,
                $"'{keyword.Text}' stands under 'define', indented",
                "indent it, or write 'define' above it"
            );
        }

        return Names.WhyNoIdentifier(keyword.Text) is null
            ? null
            : LineFindings.UnknownStatement.At(
                keyword.Location,
                $"no statement starts with '{LineExplanation.Shorten(keyword.Text)}'",
                Near(keyword.Text) ?? "start the line with a statement such as 'wire', or with a kind of part"
            );
    }

    /// <summary>A part of a kind nobody knows whose line reads like no part is a slip in the first word.</summary>
    private static Finding? SlipInTheFirstWord(WordSyntax keyword) =>
        !Keywords.StandardKinds.Has(keyword.Text) && Near(keyword.Text) is { } near
            ? LineFindings.UnknownStatement.At(keyword.Location, $"no statement starts with '{keyword.Text}'", near)
            : null;

    private static string? Near(string word)
    {
        var words = Keywords.Statements.Concat(Keywords.StandardKinds).ToList();
        return (DidYouMean.Nearest(word, words) ?? DidYouMean.CutShort(word, words)) is { } near
            ? $"did you mean '{near}'?"
            : null;
    }
}
