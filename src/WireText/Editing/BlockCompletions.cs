using WireText.Syntax.Nodes;
using WireText.Syntax.Parsing;

namespace WireText.Editing;

/// <summary>What may stand in an indented line: parts under <c>arrange</c>, what a part is made of under <c>define</c>.</summary>
internal static class BlockCompletions
{
    public static IEnumerable<Completion> At(CompletionPlace place, int offset) =>
        place.Compiled.Tree.Statements.LastOrDefault(statement => statement.Span.Start < offset) switch
        {
            ArrangeSyntax => [.. place.Parts(), .. place.Words(".")],
            DefineSyntax when place.Line.Words.IsEmpty => Keywords.Insides.Select(word =>
                place.Word(word, CompletionKind.Statement, StatementWords.MeaningOf(word) ?? "")
            ),
            DefineSyntax define => OfInside(place, define),
            _ => [],
        };

    private static IEnumerable<Completion> OfInside(CompletionPlace place, DefineSyntax define) =>
        place.Line.First.ToLowerInvariant() switch
        {
            "body" => place.Words("round", "box"),
            "hole" => place.Words("round", "slot", "at"),
            "between" => place.Words("make-before-break", "break-before-make", "endless"),
            "lugs" or "leads" or "inner" => [],
            _ => Terminals(define).Select(name => place.Word(name, CompletionKind.Lug)),
        };

    private static IEnumerable<string> Terminals(DefineSyntax define) =>
        define
            .Lines.SelectMany(line =>
                line switch
                {
                    TerminalsSyntax terminals => terminals.Terminals.Select(terminal => terminal.Name),
                    NamesSyntax names when names.Keyword.Is("inner") => names.Names,
                    _ => [],
                }
            )
            .Select(word => word.Text);
}
