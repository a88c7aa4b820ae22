using System.Collections.Immutable;
using WireText.Syntax.Nodes;

namespace WireText.Syntax;

/// <summary>Writes a statement as its line, for one that no source has: with single blanks, and rows below it indented.</summary>
public static class StatementText
{
    private const string RowIndent = "    ";

    /// <summary>True for a statement that a mod may change; the others are only taken over.</summary>
    public static bool CanWrite(StatementSyntax statement) =>
        statement
            is CircuitSyntax
                or IncludeSyntax
                or PartSyntax
                or WireSyntax
                or SpliceSyntax
                or CableSyntax
                or TouchSyntax
                or RestSyntax
                or LoadSyntax
                or PositionsSyntax
                or ArrangeSyntax
                or FindSyntax;

    /// <summary>The line, without its ending; several where the statement has rows.</summary>
    /// <exception cref="ArgumentOutOfRangeException">For one that cannot be written, see <see cref="CanWrite"/>.</exception>
    public static string Of(StatementSyntax statement) =>
        statement switch
        {
            CircuitSyntax circuit => $"circuit {Quoted(circuit.Title)}",
            IncludeSyntax include => $"include {Quoted(include.Path)}",
            PartSyntax part => Joined([
                part.Kind.Text,
                part.Name.Text,
                .. part.Arguments.Select(Argument),
                .. Hanging(part.Hangs),
            ]),
            WireSyntax wire => Joined([
                "wire",
                string.Join(" to ", wire.Lugs.Select(lug => lug.FullName)),
                wire.Colour.Text,
                .. wire.Sleeved is null ? Array.Empty<string>() : ["sleeved"],
                .. wire.Pairs.Select(Pair),
            ]),
            SpliceSyntax splice => Joined([
                "splice",
                splice.Name.Text,
                .. splice.Lugs.Select(lug => lug.FullName),
                .. splice.Sleeved is null ? Array.Empty<string>() : ["sleeved"],
                .. splice.Remark is { } remark ? new[] { Quoted(remark) } : [],
            ]),
            CableSyntax cable => Joined([
                "cable",
                string.Join(
                    " and ",
                    cable.Cores.Select(core => $"{core.From.FullName} to {core.To.FullName} {core.Colour.Text}")
                ),
                .. cable.Twisted is null ? Array.Empty<string>() : ["twisted"],
                .. cable.Braid is { } braid ? new[] { $"braid {End(braid.From)} to {End(braid.To)}" } : [],
                .. cable.Pairs.Select(Pair),
            ]),
            TouchSyntax touch => Joined(["touch", .. touch.Lugs.Select(lug => lug.FullName)]),
            RestSyntax rest => Joined(["rest", .. rest.Pairs.Select(Pair)]),
            LoadSyntax load => Joined(["load", .. load.Pairs.Select(Pair)]),
            PositionsSyntax positions => Joined([
                "positions",
                positions.Control.FullName,
                .. positions.Names.Select(name => name.Text),
            ]),
            FindSyntax find => Joined([
                "find",
                .. find.Controls.Select(control => control.FullName),
                .. find.At.IsEmpty ? Array.Empty<string>() : ["at"],
                .. find.At.Select(lug => lug.FullName),
            ]),
            ArrangeSyntax arrange => string.Join(
                '\n',
                arrange
                    .Rows.Select(row => RowIndent + string.Join(' ', row.Cells.Select(cell => cell.Text)))
                    .Prepend("arrange")
            ),
            _ => throw new ArgumentOutOfRangeException(nameof(statement), statement, "it has no text of its own"),
        };

    /// <summary>What follows a part's name, with single blanks.</summary>
    public static string Arguments(ImmutableArray<SyntaxNode> arguments) => Joined(arguments.Select(Argument));

    private static string Argument(SyntaxNode argument) =>
        argument switch
        {
            WordSyntax word => word.Text,
            PairSyntax pair => Pair(pair),
            TextSyntax text => Quoted(text),
            _ => throw new ArgumentOutOfRangeException(nameof(argument), argument, "a part has no such argument"),
        };

    private static IEnumerable<string> Hanging(FromToSyntax? hangs) =>
        hangs is null ? [] : [$"from {hangs.From.FullName} to {hangs.To.FullName}"];

    private static string End(LugSyntax? end) => end?.FullName ?? "cut";

    private static string Pair(PairSyntax pair) => $"{pair.Key.Text}={pair.Value.Text}";

    private static string Quoted(TextSyntax text) => $"\"{text.Value}\"";

    private static string Joined(IEnumerable<string> words) => string.Join(' ', words);
}
