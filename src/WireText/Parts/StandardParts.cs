using System.Collections.Immutable;
using System.Text;
using WireText.Geometry;
using WireText.Syntax.Nodes;
using WireText.Syntax.Parsing;
using WireText.Text;

namespace WireText.Parts;

/// <summary>The parts that ship with the tool, written in the circuit language, and the two that need no inside.</summary>
public static class StandardParts
{
    private const string ResourceName = "standard-parts.wiring";

    private static readonly Lazy<PartCatalogue> Loaded = new(Load);

    /// <summary>The text of the standard parts.</summary>
    public static SourceText Source { get; } = ReadSource();

    public static PartCatalogue Catalogue => Loaded.Value;

    /// <summary>Anything bare that must be grounded: it is its own lug and takes many joints.</summary>
    public static PartDefinition Metal { get; } =
        SingleLug(PartKinds.Metal, "bare metal that must be grounded", isMetal: true);

    /// <summary>Leads soldered together in the air: it is its own lug.</summary>
    public static PartDefinition Splice { get; } =
        SingleLug(PartKinds.Splice, "leads soldered together in the air", isMetal: false);

    private static PartCatalogue Load()
    {
        var tree = WiringParser.Parse(Source);
        var sink = new FindingSink();
        var definitions = tree
            .Statements.OfType<DefineSyntax>()
            .Select(define => DefinitionReader.Read(define, sink))
            .OfType<PartDefinition>()
            .ToImmutableArray();
        if (tree.Findings.Length + sink.Count > 0)
        {
            var first = tree.Findings.Concat(sink.ToImmutable()).First();
            throw new InvalidOperationException($"standard part, line {first.Location.Position.Line}: {first.Message}");
        }

        return PartCatalogue.Empty.With(definitions).With([Metal]);
    }

    /// <summary>True for a definition that comes with the program, and not from somebody's file.</summary>
    public static bool Define(PartDefinition definition) => definition.DefinedAt.Source == Source;

    private static SourceText ReadSource()
    {
        using var stream = typeof(StandardParts).Assembly.GetManifestResourceStream(ResourceName)!;
        using var reader = new StreamReader(stream, Encoding.UTF8);
        return new SourceText(ResourceName, reader.ReadToEnd());
    }

    private static PartDefinition SingleLug(string kind, string remark, bool isMetal) =>
        new(
            kind,
            PartDefinition.StandardModel,
            remark,
            Body: null,
            Holes: [],
            Terminals: [new Terminal(kind, TerminalKind.Lug, new Point(0, 0), isMetal, IsSpare: false)],
            Joined: [],
            Insides: [],
            Controls: [],
            SwitchOver.BreakBeforeMake,
            IsEndless: false,
            DialRest: null,
            new SourceLocation(Source, new TextSpan(0, 0))
        );
}
