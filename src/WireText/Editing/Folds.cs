using System.Collections.Immutable;
using WireText.Syntax.Nodes;

namespace WireText.Editing;

/// <summary>Lines that can be folded away behind their first one.</summary>
/// <param name="First">The line that stays, from 1.</param>
/// <param name="Last">The last that goes, from 1.</param>
public sealed record Fold(int First, int Last, bool IsComment);

/// <summary>What can be folded: blocks, comments of several lines, and runs of neighbouring statements that start with one word.</summary>
public static class Folds
{
    /// <summary>The shortest run of like statements that is worth a fold, in lines. Chosen.</summary>
    private const int ShortestRun = 3;

    public static ImmutableArray<Fold> Of(WiringTree tree) =>
        [.. Blocks(tree).Concat(Runs(tree)).OrderBy(fold => fold.First).ThenByDescending(fold => fold.Last)];

    private static IEnumerable<Fold> Blocks(WiringTree tree) =>
        from statement in tree.Statements
        where statement is DefineSyntax or ArrangeSyntax
        let last = tree.Source.PositionOf(Outline.WholeOf(statement).End).Line
        let first = statement.Location.Position.Line
        where last > first
        select new Fold(first, last, IsComment: false);

    private static IEnumerable<Fold> Runs(WiringTree tree)
    {
        var start = 0;
        for (var line = 1; line <= tree.Lines.Length; line++)
        {
            if (line < tree.Lines.Length && KindOf(tree.Lines[line]) is { } kind && kind == KindOf(tree.Lines[start]))
            {
                continue;
            }

            var isComment = KindOf(tree.Lines[start]) == Comment;
            if (KindOf(tree.Lines[start]) is not null && line - start >= (isComment ? 2 : ShortestRun))
            {
                yield return new Fold(tree.Lines[start].Number, tree.Lines[line - 1].Number, isComment);
            }

            start = line;
        }
    }

    private const string Comment = "#";

    /// <summary>What neighbouring lines must have in common; null for a line that is in no run.</summary>
    private static string? KindOf(LineSyntax line) =>
        line.Content switch
        {
            null when line.CommentStart >= 0 && !line.IsBad => Comment,
            PartSyntax or SpliceSyntax => "part",
            DefineSyntax or ArrangeSyntax => null,
            StatementSyntax statement => statement.GetType().Name,
            _ => null,
        };
}
