using System.Collections.Immutable;
using System.Text;
using WireText.Syntax;
using WireText.Syntax.Nodes;
using WireText.Syntax.Parsing;
using WireText.Text;

namespace WireText.Mods;

/// <summary>Writes a mod and what it stands on as one text: the same circuit, in a file that stands alone.</summary>
/// <remarks>
/// A line that stays is taken over with its comment; one that is changed is written anew, its comment behind it. Comments above
/// lines that all went go with them.
/// </remarks>
public sealed class Flattening
{
    private readonly HashSet<StatementSyntax> left;

    /// <summary>The statements of the circuit by the line that they stand on: of one that was changed there may be several.</summary>
    private readonly ILookup<(SourceText Source, int Line), StatementSyntax> byLine;
    private readonly StringBuilder text = new();
    private CircuitSyntax? title;

    private Flattening(ImmutableArray<StatementSyntax> statements)
    {
        left = new HashSet<StatementSyntax>(statements, ReferenceEqualityComparer.Instance);
        title = statements.OfType<CircuitSyntax>().LastOrDefault();
        byLine = statements.ToLookup(statement => (statement.Location.Source, statement.Location.Position.Line));
    }

    /// <summary>The text, formatted; of a file that stands alone its own.</summary>
    public static string TextOf(WiringTree tree, ResolvedWiring wiring)
    {
        if (wiring.Base is null)
        {
            return tree.Source.Content;
        }

        var flattening = new Flattening(wiring.Statements);
        flattening.Write(tree, wiring, folder: "");
        return Formatter.Format(WiringParser.Parse(new SourceText(tree.Source.Path, flattening.text.ToString())));
    }

    /// <param name="folder">Where the file lies, seen from the mod's; what it includes is looked for from there.</param>
    private void Write(WiringTree tree, ResolvedWiring wiring, string folder)
    {
        if (wiring.Base is { } under)
        {
            var path = tree.Statements.OfType<BaseSyntax>().First(one => !one.IsBroken).Path.Value;
            Write(under.Tree, under.Resolved, folder + path[..(path.LastIndexOf('/') + 1)]);
            text.Append(EndsBlank() ? "" : "\n");
        }

        var whole = new HashSet<StatementSyntax>(
            tree.Statements.Where(left.Contains),
            ReferenceEqualityComparer.Instance
        );
        var wholeLines = whole.Select(statement => statement.Location.Position.Line).ToHashSet();
        foreach (var group in Groups(tree))
        {
            Write(group, line => TextOf(line, wholeLines, folder));
        }
    }

    /// <summary>Writes lines that belong together. Comments alone are not kept where what they speak of is gone.</summary>
    private void Write(List<LineSyntax> group, Func<LineSyntax, string?> textOf)
    {
        var lines = group.ConvertAll(line => (Line: line, Text: textOf(line)));
        var spoken = lines.FindAll(one => one.Line.Content is not null);
        if (spoken.Count > 0 && spoken.TrueForAll(one => one.Text is null))
        {
            return;
        }

        foreach (var one in lines.Where(one => one.Text is not null && !(one.Text.Length == 0 && EndsBlank())))
        {
            text.Append(one.Text).Append('\n');
        }
    }

    /// <summary>True at the start and behind a blank line: lines that went leave no hole.</summary>
    private bool EndsBlank() => text.Length < 2 || (text[^1] == '\n' && text[^2] == '\n');

    /// <summary>A blank line by itself; comments with the lines below them, to the next blank line or comment, and rows with their head.</summary>
    private static IEnumerable<List<LineSyntax>> Groups(WiringTree tree)
    {
        var group = new List<LineSyntax>();
        foreach (var line in tree.Lines)
        {
            if (group.Count > 0 && (IsBlank(line) || IsBlank(group[^1]) || (IsComment(line) && !IsComment(group[^1]))))
            {
                yield return group;
                group = [];
            }

            group.Add(line);
        }

        if (group.Count > 0)
        {
            yield return group;
        }
    }

    private static bool IsComment(LineSyntax line) => line.Content is null && line.CommentStart >= 0;

    private static bool IsBlank(LineSyntax line) => line.Content is null && line.CommentStart < 0;

    /// <summary>What becomes of a line; null where it goes.</summary>
    /// <param name="whole">The lines of the file whose statements stay as they are.</param>
    private string? TextOf(LineSyntax line, HashSet<int> whole, string folder)
    {
        var source = line.Location.Source;
        if (line.Content is IncludeSyntax include && folder.Length > 0)
        {
            return StatementText.Of(include with { Path = include.Path with { Value = folder + include.Path.Value } });
        }

        if (line.Content is CircuitSyntax)
        {
            return Title(line);
        }

        if (line.Content is null || whole.Contains(HeadOf(line)))
        {
            return source.Slice(line.Span);
        }

        var changed = byLine[(source, line.Number)].Select(StatementText.Of).ToList();
        return changed.Count == 0 ? null : string.Join('\n', changed) + CommentOf(line);
    }

    /// <summary>The title that holds stands where the first one stood.</summary>
    private string? Title(LineSyntax line)
    {
        var written = title is { } whole ? StatementText.Of(whole) + CommentOf(line) : null;
        title = null;
        return written;
    }

    /// <summary>The line that a row stands under; of another line its own.</summary>
    private static int HeadOf(LineSyntax line)
    {
        var number = line.Number;
        while (number > 1 && line.Content is not StatementSyntax && IsIndented(line.Location.Source, number))
        {
            number--;
        }

        return number;
    }

    private static bool IsIndented(SourceText source, int number) =>
        LineScan.Of(source, number) is { IsIndented: true } or { IsEmpty: true };

    private static string CommentOf(LineSyntax line) =>
        line.CommentStart < 0
            ? ""
            : "  " + line.Location.Source.Slice(TextSpan.FromBounds(line.CommentStart, line.Span.End));
}
