using WireText.Circuits;
using WireText.Circuits.Binding;
using WireText.Parts;
using WireText.Text;

namespace WireText.Editing;

/// <summary>What may follow the name of a part: models, words, keys with their values, and the lugs that it hangs by.</summary>
internal static class PartCompletions
{
    public static IEnumerable<Completion> At(CompletionPlace place, string kind)
    {
        var words = place.Line.Words;
        var from = words.LastIndexOf("from");
        return words.Length < 2 ? []
            : from >= 2
                ? words.Length - from == 2 ? place.Words("to")
                    : place.Lugs()
            : place.Line.Written.Contains('=', StringComparison.Ordinal) ? Values(place)
            : Arguments(place, kind);
    }

    private static IEnumerable<Completion> Arguments(CompletionPlace place, string kind)
    {
        var said = place.Line.Words.Skip(2).ToHashSet(Naming.Comparer);
        var models = place.Compiled.Catalogue.ModelsOf(kind);
        if (!models.Any(model => said.Contains(model.Model)))
        {
            foreach (var model in models)
            {
                yield return place.Word(model.Model, CompletionKind.Model, model.Remark ?? "");
            }
        }

        if (place.ModelIn(kind, said) is not { } definition)
        {
            yield break;
        }

        foreach (var word in WordsFor(definition).Where(word => !said.Contains(word)))
        {
            yield return place.Word(word, CompletionKind.Word);
        }

        foreach (var key in KnownKeys.Of(definition))
        {
            yield return place.Word($"{key}=", CompletionKind.Key, MeaningOf(key));
        }

        if (definition.Terminals.Count(terminal => terminal.Kind != TerminalKind.Inner) == 2)
        {
            yield return place.Word("from", CompletionKind.Word, "the two lugs that it hangs by: from LUG to LUG");
        }
    }

    private static IEnumerable<string> WordsFor(PartDefinition definition)
    {
        var tapers = definition.Insides.Any(inside => inside is Inside.TrackInside) ? TaperReader.Words : [];
        string[] dielectrics = definition.Insides.Any(inside => inside is Inside.CapacitorInside)
            ? [Part.Film, Part.Ceramic, Part.Electrolytic, Part.PaperInOil]
            : [];
        return [.. tapers, .. dielectrics, Part.HeatSensitive];
    }

    private static string MeaningOf(string key) =>
        key[(key.LastIndexOf('.') + 1)..] switch
        {
            "dcr" => "resistance to direct current, such as 6.2k",
            "l" => "inductance, such as 2.4H",
            "c" => "capacitance, such as 110p",
            "eddy" => "eddy loss, as a resistance across the coil",
            "turns" => "number of turns",
            "awg" => "gauge of the coil's wire",
            "turn-length" => "mean length of a turn, such as 152mm",
            "wind" => "cw or ccw, from its start, seen from the strings",
            "magnet" => "the pole at the strings: north, south or none",
            "at" => "from the bridge to its middle, such as 162mm",
            "aperture" => "the length of string that it hears, such as 15mm",
            "tol" => "tolerance, such as 10%",
            "value" => "its value",
            "taper" => "its taper",
            "code" => "the marking on the part, such as 473",
            "measured" => "what a meter read of this very part",
            "hole" => "what is drilled for it",
            _ => "",
        };

    private static IEnumerable<Completion> Values(CompletionPlace place)
    {
        var key = place.Line.Written[..place.Line.Written.IndexOf('=', StringComparison.Ordinal)];
        IEnumerable<string> values = key[(key.LastIndexOf('.') + 1)..].ToLowerInvariant() switch
        {
            "wind" => Enum.GetValues<Winding>().Select(CoilWords.Of),
            "magnet" => Enum.GetValues<MagnetPole>().Select(CoilWords.Of),
            "taper" => TaperReader.Words,
            _ => [],
        };
        return values.Select(value => new Completion(value, CompletionKind.Word, "", place.Line.Behind('=')));
    }
}
