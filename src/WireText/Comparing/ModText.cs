using System.Collections.Immutable;
using WireText.Mods;
using WireText.Syntax.Nodes;
using WireText.Text;

namespace WireText.Comparing;

/// <summary>The mod that turns one wiring into another.</summary>
/// <param name="Lines">Behind the line that names the base.</param>
/// <param name="Left">Lines of the base that no mod can take out; with any, the mod does not quite make the other.</param>
public sealed record ModText(ImmutableArray<string> Lines, ImmutableArray<string> Left)
{
    /// <param name="under">What the mod is to stand on.</param>
    /// <param name="other">What it is to make of that.</param>
    public static ModText Of(BaseWiring under, ResolvedWiring other)
    {
        var wanted = other.Statements.Select(Canonical.Of).ToList();
        var now = other.Statements;
        var gone = under.Resolved.Statements.Where(statement => !wanted.Remove(Canonical.Of(statement))).ToList();
        var changing = new BaseChanges(under, new FindingSink());
        ImmutableArray<StatementSyntax> changes =
        [
            // What is expected before parts: it may speak of one. Parts before wires: what is soldered to one comes off with it.
            .. gone.OrderBy(statement =>
                    statement is ExpectSyntax ? 0
                    : statement is PartSyntax or SpliceSyntax ? 1
                    : 2
                )
                .SelectMany(statement => ModLines.TakingOut(statement, under.Resolved.Statements, now))
                .Where(changing.Take),
        ];
        var left = new BaseChanges(under, new FindingSink()).Apply(changes).Select(Canonical.Of).ToList();
        var added = now.Where(statement => !left.Remove(Canonical.Of(statement))).ToList();
        return new ModText(
            [.. changes.Select(ModLines.TextOf), .. added.Select(ModLines.TextOf)],
            [.. left.Where(line => !added.Exists(statement => Canonical.TakesThePlaceOf(statement, line)))]
        );
    }

    /// <summary>The whole file.</summary>
    /// <param name="basePath">As it is to be written.</param>
    public string WriteOn(string basePath) =>
        $"base \"{basePath}\"\n\n{string.Join('\n', Lines)}{(Lines.IsEmpty ? "" : "\n")}";
}
