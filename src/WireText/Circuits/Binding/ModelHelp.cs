using System.Collections.Immutable;
using WireText.Parts;
using WireText.Syntax.Parsing;

namespace WireText.Circuits.Binding;

/// <summary>What to write where a model is named that there is not.</summary>
internal static class ModelHelp
{
    /// <summary>The name that a model is given where the word that was written can be none.</summary>
    private const string AnyName = "my-model";

    /// <summary>The models that the word is a piece of; else all, and how to write one's own with a meter at hand.</summary>
    public static string For(string kind, string word, ImmutableArray<PartDefinition> models)
    {
        var names = models.Select(model => model.Model).ToList();
        var name = Names.WhyNoIdentifier(word) is null ? word : AnyName;
        return Alike(word, names)
            ?? $"""
                write one of {string.Join(", ", names)};
                or define it by what a meter finds joined in each position:
                define {kind} {name}
                    lugs A0 A1 A2
                    position 1 A0+A1
                    position 2 A0+A2
                """;
    }

    /// <summary>Offers the names that the word is a piece of, with hyphens or without; null when there are none.</summary>
    public static string? Alike(string word, IEnumerable<string> names)
    {
        var piece = Plain(word);
        var alike = names
            .Where(name => piece.Length > 1 && Plain(name).Contains(piece, StringComparison.OrdinalIgnoreCase))
            .Select(name => $"'{name}'")
            .ToList();
        return alike.Count switch
        {
            0 => null,
            1 => $"did you mean {alike[0]}?",
            _ => $"did you mean {string.Join(", ", alike.SkipLast(1))} or {alike[^1]}?",
        };
    }

    private static string Plain(string name) => name.Replace("-", "", StringComparison.Ordinal);
}
