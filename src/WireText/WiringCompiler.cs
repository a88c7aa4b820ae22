using System.Collections.Immutable;
using WireText.Checks;
using WireText.Circuits;
using WireText.Circuits.Binding;
using WireText.Drawing.Faces;
using WireText.Drawing.Layout;
using WireText.Drawing.Lettering;
using WireText.Drawing.Pictures;
using WireText.Drawing.Shapes;
using WireText.Electrical.Traces;
using WireText.Output;
using WireText.Parts;
using WireText.Syntax.Nodes;
using WireText.Syntax.Parsing;
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
    /// <summary>What an <c>allow</c> line took out of the findings, by place in the text.</summary>
    public ImmutableArray<AllowedFinding> Allowed { get; init; } = [];

    public bool HasErrors => Findings.Any(f => f.Severity == Severity.Error);
}

/// <param name="Theme">The colours of the picture.</param>
/// <param name="FileName">For the title block; null for none.</param>
public sealed record DrawOptions(LayoutEffort Effort, Theme Theme, string? FileName)
{
    /// <summary>What is drawn in full colour while the rest steps back; null for everything.</summary>
    public Trace? Trace { get; init; }

    /// <summary>A sheet of small pictures instead of one; empty for one.</summary>
    public ImmutableArray<SheetView> Views { get; init; } = [];

    /// <summary>Millimetres of paper for a millimetre of the real thing.</summary>
    public double Scale { get; init; } = 1;
}

/// <summary>What came of laying out one file.</summary>
/// <param name="Layout">Null when there is no circuit to lay out, or one too large.</param>
public sealed record LaidResult(CompileResult Compiled, LayoutResult? Layout);

/// <summary>What came of drawing one file.</summary>
/// <param name="Svg">Null when there is no circuit to draw, or one too large.</param>
public sealed record DrawResult(LaidResult Laid, string? Svg)
{
    public CompileResult Compiled => Laid.Compiled;
}

/// <summary>Text in, findings and a picture out, in one direction.</summary>
public static class WiringCompiler
{
    /// <summary>Reads the text, builds the circuit and checks it.</summary>
    /// <param name="withNotes">Also tells what is harmless: see <see cref="FindingDescription.OnlyWhenAsked"/>.</param>
    /// <param name="settings">What is made of the checks; null for everything as the table of checks says.</param>
    public static CompileResult Check(
        SourceText source,
        ISourceProvider sources,
        bool withNotes = false,
        CheckSettings? settings = null
    )
    {
        var tree = WiringParser.Parse(source);
        var bound = Binder.Bind(tree, sources);
        var found = tree.Findings.AddRange(bound.Findings);
        ImmutableArray<AllowedFinding> allowed = [];

        // A line that could not be read leaves holes: what a check said of them would be the same mistake again.
        if (bound.Circuit is { } circuit && found.All(f => f.Severity != Severity.Error))
        {
            var report = Checker.Examine(circuit, withNotes, settings ?? CheckSettings.Standard);
            found = found.AddRange(report.Findings);
            allowed = report.Allowed;
        }

        return new CompileResult(tree, bound.Circuit, bound.Catalogue, InOrder(found, source)) { Allowed = allowed };
    }

    /// <summary>Reads, checks and finds a place for every part and a path for every wire.</summary>
    public static LaidResult Lay(
        SourceText source,
        ISourceProvider sources,
        LayoutEffort effort,
        CheckSettings? settings = null
    )
    {
        var compiled = Check(source, sources, settings: settings);
        if (compiled.Circuit is not { } circuit)
        {
            return new LaidResult(compiled, null);
        }

        if (circuit.Wires.Length > CircuitLimits.MaxDrawnWires)
        {
            var tooLarge = CircuitLimits.TooLargeToDraw.At(
                circuit.Wires[CircuitLimits.MaxDrawnWires].DeclaredAt,
                $"a drawing has {CircuitLimits.MaxDrawnWires} wires at most; this circuit has {circuit.Wires.Length}",
                "divide the circuit into several files"
            );
            return new LaidResult(compiled with { Findings = compiled.Findings.Add(tooLarge) }, null);
        }

        return new LaidResult(compiled, LayoutEngine.Lay(FaceBuilder.BuildProblem(circuit), effort));
    }

    /// <summary>Reads, checks and draws. A mistake is drawn and marked, not refused.</summary>
    public static DrawResult Draw(SourceText source, ISourceProvider sources, DrawOptions options) =>
        Paint(Lay(source, sources, options.Effort), options);

    /// <summary>Draws what was laid out; the effort was spent already.</summary>
    public static DrawResult Paint(LaidResult laid, DrawOptions options)
    {
        if (laid is not { Layout: { } layout, Compiled.Circuit: { } circuit })
        {
            return new DrawResult(laid, null);
        }

        var pictured = new PictureOptions
        {
            Theme = options.Theme,
            FileName = options.FileName,
            Trace = options.Trace,
            Findings = laid.Compiled.Findings,
        };
        var picture = options.Views.IsEmpty
            ? PictureBuilder.Build(circuit, layout, pictured)
            : ViewSheet.Build(circuit, layout, pictured, options.Views);
        return new DrawResult(laid, SvgWriter.Write(picture, options.Scale));
    }

    private static ImmutableArray<Finding> InOrder(IEnumerable<Finding> findings, SourceText main) =>
        [
            .. findings
                .OrderBy(f => f.Location.Source == main ? 0 : 1)
                .ThenBy(f => f.Location.Source?.Path, StringComparer.Ordinal)
                .ThenBy(f => f.Location.Span.Start),
        ];
}
