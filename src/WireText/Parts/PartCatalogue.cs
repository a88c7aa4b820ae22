using System.Collections.Immutable;
using WireText.Text;

namespace WireText.Parts;

/// <summary>The models that can be named: the standard ones, and those a file defines or includes.</summary>
/// <remarks>Names are alike in upper and lower case. Immutable: adding gives a new catalogue.</remarks>
public sealed class PartCatalogue
{
    public static readonly PartCatalogue Empty = new([]);

    private readonly ImmutableArray<PartDefinition> definitions;
    private readonly Dictionary<string, NameIndex<PartDefinition>> byKind;

    private PartCatalogue(ImmutableArray<PartDefinition> definitions)
    {
        this.definitions = definitions;
        byKind = definitions
            .GroupBy(d => d.Kind, StringComparer.OrdinalIgnoreCase)
            .ToDictionary(
                g => g.Key,
                g => new NameIndex<PartDefinition>([.. g], d => d.Model),
                StringComparer.OrdinalIgnoreCase
            );
    }

    /// <summary>All definitions, in the order they were defined.</summary>
    public ImmutableArray<PartDefinition> Definitions => definitions;

    /// <summary>The kinds, in the order they were first defined.</summary>
    public IEnumerable<string> Kinds => definitions.Select(d => d.Kind).Distinct(StringComparer.OrdinalIgnoreCase);

    /// <summary>The models of a kind in order; empty for an unknown kind. The first is the default where a kind has one.</summary>
    public ImmutableArray<PartDefinition> ModelsOf(string kind) => byKind.GetValueOrDefault(kind)?.Items ?? [];

    public PartDefinition? Find(string kind, string model) => byKind.GetValueOrDefault(kind)?.Find(model);

    /// <summary>What is taken when no model is named; null for a switch, whose models differ too much to guess.</summary>
    public PartDefinition? DefaultOf(string kind)
    {
        var models = ModelsOf(kind);
        var mustSay = string.Equals(kind, PartKinds.Switch, StringComparison.OrdinalIgnoreCase);
        return models.IsEmpty || (mustSay && models.Length > 1) ? null : models[0];
    }

    /// <summary>This catalogue with more definitions behind its own. A kind keeps the spelling of its first definition.</summary>
    public PartCatalogue With(IEnumerable<PartDefinition> more)
    {
        var spellings = byKind.ToDictionary(kind => kind.Key, kind => kind.Key, StringComparer.OrdinalIgnoreCase);
        var added = ImmutableArray.CreateBuilder<PartDefinition>();
        foreach (var definition in more)
        {
            spellings.TryAdd(definition.Kind, definition.Kind);
            added.Add(definition with { Kind = spellings[definition.Kind] });
        }

        return new PartCatalogue([.. definitions, .. added]);
    }
}
