using System.Collections.Immutable;
using WireText.Syntax.Nodes;
using WireText.Text;

namespace WireText.Editing;

/// <summary>The outline of a text: its statements in their order, each with what it is about.</summary>
public static class Outline
{
    public static ImmutableArray<OutlineItem> Of(WiringTree tree) =>
        [.. tree.Statements.Select(Of).OfType<OutlineItem>()];

    /// <summary>All of the lines of a statement, those that are indented below it with it.</summary>
    internal static TextSpan WholeOf(StatementSyntax statement)
    {
        var last = statement switch
        {
            DefineSyntax { Lines: [.., var line] } => line.Span.End,
            ArrangeSyntax { Rows: [.., var row] } => row.Span.End,
            _ => statement.Span.End,
        };
        return TextSpan.FromBounds(statement.Span.Start, last);
    }

    private static OutlineItem? Of(StatementSyntax statement) =>
        statement switch
        {
            CircuitSyntax circuit => Item(circuit, circuit.Title.Value, "circuit", OutlineKind.Heading, circuit.Title),
            AboutSyntax about => Item(about, about.Key.Text, about.Words.Value, OutlineKind.Heading, about.Key),
            IncludeSyntax include => Item(include, include.Path.Value, "include", OutlineKind.File, include.Path),
            BaseSyntax under => Item(under, under.Path.Value, "base", OutlineKind.File, under.Path),
            PartSyntax part => Item(part, part.Name.Text, WordsBut(part, part.Name), OutlineKind.Part, part.Name),
            SpliceSyntax splice => Item(splice, splice.Name.Text, "splice", OutlineKind.Part, splice.Name),
            ReplaceSyntax replace => Item(replace, replace.Name.Text, "replace", OutlineKind.Change, replace.Name),
            DropSyntax drop => Item(drop, drop.Name.Text, "drop", OutlineKind.Change, drop.Name),
            LiftSyntax lift => Item(lift, lift.Lug.FullName, "lift", OutlineKind.Change, lift.Lug),
            WireSyntax wire => Item(wire, Run(wire.Lugs), wire.Colour.Text, OutlineKind.Wire, wire.Lugs[0]),
            CableSyntax cable => Item(
                cable,
                Run([cable.Cores[0].From, cable.Cores[0].To]),
                "cable",
                OutlineKind.Wire,
                cable.Cores[0]
            ),
            TouchSyntax touch => Item(touch, Run(touch.Lugs), "touch", OutlineKind.Wire, touch.Lugs[0]),
            PositionsSyntax positions => Item(
                positions,
                positions.Control.FullName,
                string.Join(' ', positions.Names.Select(name => name.Text)),
                OutlineKind.Control,
                positions.Control
            ),
            FindSyntax find => Item(
                find,
                "find",
                string.Join(' ', find.Controls.Select(control => control.FullName)),
                OutlineKind.Control,
                find
            ),
            RestSyntax rest => Item(rest, "rest", Pairs(rest.Pairs), OutlineKind.Control, rest),
            ArrangeSyntax arrange => Item(arrange, "arrange", "", OutlineKind.Place, arrange),
            PlaceSyntax place => Item(place, place.Name.Text, "place", OutlineKind.Place, place.Name),
            ExpectSyntax expect => Item(
                expect,
                StateOf(expect),
                string.Join(", ", expect.Claims.Select(claim => claim.Location.Text)),
                OutlineKind.Claim,
                expect
            ),
            FoundSyntax { What.IsEmpty: false } found => Item(
                found,
                found.At.Location.Text,
                string.Join(", ", found.What.Select(what => what.Location.Text)),
                OutlineKind.Claim,
                found
            ),
            AllowSyntax allow => Item(allow, allow.Check.Text, allow.Reason.Value, OutlineKind.Claim, allow.Check),
            DefineSyntax define => Item(
                define,
                define.Model.Text,
                define.Kind.Text,
                OutlineKind.Definition,
                define.Model
            ),
            ColourSyntax colour => Item(colour, colour.Name.Text, "colour", OutlineKind.Definition, colour.Name),
            _ => null,
        };

    private static OutlineItem? Item(StatementSyntax of, string name, string detail, OutlineKind kind, SyntaxNode at) =>
        // A line that could not be read may lack the word itself.
        string.IsNullOrWhiteSpace(name)
            ? null
            : new OutlineItem(name, detail, kind, WholeOf(of), at.Span);

    private static string Run(ImmutableArray<LugSyntax> lugs) => string.Join(" – ", lugs.Select(lug => lug.FullName));

    private static string Pairs(ImmutableArray<PairSyntax> pairs) =>
        string.Join(' ', pairs.Select(pair => $"{pair.Key.Text}={pair.Value.Text}"));

    private static string StateOf(ExpectSyntax expect) =>
        (expect.Jack is { } jack ? $"{jack.Text}: " : "") + (expect.State.IsEmpty ? "rest" : Pairs(expect.State));

    /// <summary>A line's words with single blanks, without one of them.</summary>
    private static string WordsBut(StatementSyntax statement, WordSyntax left) =>
        string.Join(
            ' ',
            LineScan
                .WordsIn(statement.Location.Source.Content, statement.Span)
                .Where(word => word != left.Span)
                .Select(statement.Location.Source.Slice)
        );
}
