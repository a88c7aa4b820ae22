using WireText.Syntax;
using WireText.Syntax.Nodes;
using WireText.Text;

namespace WireText.Comparing;

/// <summary>A statement in one form, whatever its blanks, its letters' case and the end from which a wire is told.</summary>
internal static class Canonical
{
    public static string Of(StatementSyntax statement) =>
        (statement is WireSyntax wire ? StatementText.Of(Turned(wire)) : Written(statement)).ToUpperInvariant();

    /// <summary>The statement as its line, with the rows below it.</summary>
    public static string Written(StatementSyntax statement) =>
        StatementText.CanWrite(statement) ? StatementText.Of(statement) : FromSource(statement);

    /// <summary>True where a new statement says what can be said once alone, so that the line of the base goes by itself.</summary>
    public static bool TakesThePlaceOf(StatementSyntax statement, string line)
    {
        var words = line.Split(' ', '\n');
        return statement switch
        {
            CircuitSyntax => words[0] == "CIRCUIT",
            FinishSyntax => words[0] == "FINISH",
            AboutSyntax about => words is ["ABOUT", var key, ..] && Naming.Alike(key, about.Key.Text),
            ArrangeSyntax => words[0] == "ARRANGE",
            PositionsSyntax positions => words is ["POSITIONS", var control, ..]
                && Naming.Alike(control, positions.Control.FullName),
            PlaceSyntax place => words is ["PLACE", var name, ..] && Naming.Alike(name, place.Name.Text),
            RestSyntax => words[0] == "REST",
            LoadSyntax => words[0] == "LOAD",
            _ => false,
        };
    }

    private static WireSyntax Turned(WireSyntax wire)
    {
        var (first, last) = (wire.Lugs[0].FullName, wire.Lugs[^1].FullName);
        return Naming.Comparer.Compare(first, last) <= 0 ? wire : wire with { Lugs = [.. wire.Lugs.Reverse()] };
    }

    /// <summary>Its line with single blanks and without the comment; of a block the rows below with it.</summary>
    private static string FromSource(StatementSyntax statement)
    {
        var (source, first) = (statement.Location.Source, statement.Location.Position.Line);
        var lines = new List<string>();
        for (
            var line = first;
            line <= source.LineCount && (line == first || LineScan.Of(source, line).IsIndented);
            line++
        )
        {
            var text = source.Slice(LineScan.Of(source, line).Content);
            lines.Add((line == first ? "" : "    ") + LineScan.Tidied(text));
        }

        return string.Join('\n', lines);
    }
}
