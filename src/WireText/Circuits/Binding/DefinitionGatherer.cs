using System.Collections.Immutable;
using WireText.Parts;
using WireText.Syntax.Nodes;
using WireText.Syntax.Parsing;
using WireText.Text;

namespace WireText.Circuits.Binding;

/// <summary>Gathers the models and the colours that a file defines and includes, behind the standard ones.</summary>
internal sealed class DefinitionGatherer(ISourceProvider sources, FindingSink sink)
{
    /// <summary>How deep files may include files.</summary>
    public const int MaxDepth = 16;

    private readonly HashSet<string> included = new(StringComparer.Ordinal);
    private readonly List<PartDefinition> defined = [];
    private readonly Dictionary<string, PartDefinition> byName = new(Naming.Comparer);

    /// <summary>Kinds whose model could not be read, so that parts of it are not reported again.</summary>
    public HashSet<string> BrokenModels { get; } = new(StringComparer.OrdinalIgnoreCase);

    /// <summary>The files that were included, each once.</summary>
    public List<WiringTree> Included { get; } = [];

    /// <summary>The colours that were gathered.</summary>
    public ColourBinder Colours { get; } = new(sink);

    public PartCatalogue Gather(ImmutableArray<StatementSyntax> statements)
    {
        included.UnionWith(statements.Select(statement => statement.Location.Source.Path));
        GatherFrom(statements, depth: 0);
        return StandardParts.Catalogue.With(defined);
    }

    private void GatherFrom(ImmutableArray<StatementSyntax> statements, int depth)
    {
        foreach (var statement in statements)
        {
            switch (statement)
            {
                case IncludeSyntax include:
                    Include(include, depth + 1);
                    break;
                case DefineSyntax define:
                    Define(define);
                    break;
                case ColourSyntax colour:
                    Colours.Bind(colour);
                    break;
                default:
                    if (depth > 0)
                    {
                        ReportStray(statement);
                    }

                    break;
            }
        }
    }

    private void Include(IncludeSyntax include, int depth)
    {
        if (depth > MaxDepth)
        {
            sink.Add(
                InclusionFindings.IncludeTooDeep.At(
                    include.Path.Location,
                    $"files include files more than {MaxDepth} deep",
                    "include the parts file directly"
                )
            );
            return;
        }

        var load = sources.Load(include.Path.Value, include.Location.Source);
        if (load.Source is not { } source)
        {
            sink.Add(
                InclusionFindings.CannotInclude.At(
                    include.Path.Location,
                    $"cannot read '{include.Path.Value}': {load.Problem}",
                    "put it below this file's folder, or name its folder with --parts"
                )
            );
            return;
        }

        // A file that two others include is read once.
        if (!included.Add(source.Path))
        {
            return;
        }

        var tree = WiringParser.Parse(source);
        Included.Add(tree);
        foreach (var finding in tree.Findings)
        {
            sink.Add(finding);
        }

        GatherFrom(tree.Statements, depth);
    }

    private void Define(DefineSyntax define)
    {
        var name = $"{define.Kind.Text} {define.Model.Text}";
        var standard = StandardParts.Catalogue.Find(define.Kind.Text, define.Model.Text);
        if ((standard ?? byName.GetValueOrDefault(name)) is { } earlier)
        {
            sink.Add(
                earlier.DefinedAt.Source == StandardParts.Source
                    ? Taken($"'{name}' is a standard part")
                    : Taken($"'{name}' is defined already").Beside(earlier.DefinedAt, "defined here first")
            );
            return;
        }

        if (DefinitionReader.Read(define, sink) is { } definition)
        {
            defined.Add(definition);
            byName.Add(name, definition);
        }
        else
        {
            BrokenModels.Add(name);
        }

        Finding Taken(string message) =>
            InclusionFindings.ModelTaken.At(define.Model.Location, message, "give it a name of its own");
    }

    private void ReportStray(StatementSyntax statement) =>
        sink.Add(
            InclusionFindings.OnlyDefinitions.At(
                statement.Location,
                "an included file has definitions and colours alone",
                "move this line to the circuit that includes it"
            )
        );
}
