using WireText.Syntax.Nodes;
using WireText.Text;

namespace WireText.Editing;

/// <summary>The files that a text stands on or includes.</summary>
public static class OtherFiles
{
    /// <summary>True for a text of which other files have a say.</summary>
    public static bool AreNamedIn(WiringTree tree) =>
        tree.Statements.Any(statement => statement is BaseSyntax or IncludeSyntax);

    /// <summary>Tells where a text names another file, or the one by which it comes to that; the start of the text where it does not.</summary>
    public static Func<SourceText, SourceLocation> NamedIn(Compilation compiled)
    {
        var statements = compiled.Tree.Statements;
        var under = BasesOf(compiled).Select(tree => tree.Source.Path).ToHashSet(StringComparer.Ordinal);
        var standsOn = statements.OfType<BaseSyntax>().FirstOrDefault()?.Path.Location;
        var includes = statements.OfType<IncludeSyntax>().Select(include => include.Path).ToList();
        return other =>
            (under.Contains(other.Path) ? standsOn : null)
            ?? includes.Find(path => other.Path.EndsWith(path.Value, StringComparison.OrdinalIgnoreCase))?.Location
            ?? includes.FirstOrDefault()?.Location
            ?? standsOn
            ?? new SourceLocation(compiled.Source, new TextSpan(0, 0));
    }

    /// <summary>The trees of the files that a mod stands on, the nearest first.</summary>
    internal static IEnumerable<WiringTree> BasesOf(Compilation compiled)
    {
        for (var under = compiled.Resolved.Base; under is not null; under = under.Resolved.Base)
        {
            yield return under.Tree;
        }
    }
}
