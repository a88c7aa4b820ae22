using System.Collections.Immutable;
using WireText.Checks;
using WireText.Circuits;
using WireText.Circuits.Binding;
using WireText.Parts;
using WireText.Syntax;
using WireText.Text;

namespace WireText;

/// <summary>What came of compiling one file.</summary>
/// <param name="Circuit">The circuit; null when none could be built.</param>
/// <param name="Findings">In the order of the text; those in included files come after.</param>
public sealed record CompileResult(
    WiringTree Tree,
    Circuit? Circuit,
    PartCatalogue Catalogue,
    ImmutableArray<Finding> Findings
)
{
    public bool HasErrors => Findings.Any(f => f.Severity == Severity.Error);
}

/// <summary>Text in, findings and a picture out, in one direction.</summary>
public static class WiringCompiler
{
    /// <summary>Reads the text, builds the circuit and checks it.</summary>
    public static CompileResult Check(SourceText source, ISourceProvider sources)
    {
        var tree = Parser.Parse(source);
        var bound = Binder.Bind(tree, sources);
        var found = tree.Findings.AddRange(bound.Findings);

        // A line that could not be read leaves holes: what a check said of them would be the same mistake again.
        if (bound.Circuit is { } circuit && found.All(f => f.Severity != Severity.Error))
        {
            found = found.AddRange(Checker.Run(circuit));
        }

        return new CompileResult(tree, bound.Circuit, bound.Catalogue, InOrder(found, source));
    }

    private static ImmutableArray<Finding> InOrder(IEnumerable<Finding> findings, SourceText main) =>
        [
            .. findings
                .OrderBy(f => f.Location.Source == main ? 0 : 1)
                .ThenBy(f => f.Location.Source?.Path, StringComparer.Ordinal)
                .ThenBy(f => f.Location.Span.Start),
        ];
}
