using System.Collections.Immutable;
using WireText.Checks;
using WireText.Syntax.Parsing;
using WireText.Text;

namespace WireText.Editing;

/// <summary>The words that may stand where somebody writes. What is begun is for the editor to choose by.</summary>
public static class Completions
{
    public static ImmutableArray<Completion> At(Compilation compiled, int offset)
    {
        var place = new CompletionPlace(compiled, LineBefore.Of(compiled.Source, offset));
        return place.Line.IsInText ? []
            : place.Line.IsIndented ? [.. BlockCompletions.At(place, offset)]
            : place.Line.Words.IsEmpty ? [.. FirstWords(place)]
            : [.. After(place)];
    }

    private static IEnumerable<Completion> FirstWords(CompletionPlace place)
    {
        var kinds = Keywords.StandardKinds.Concat(place.Compiled.Catalogue.Kinds).Distinct(Naming.Comparer);
        return Keywords
            .Statements.Where(word => word != Keywords.OlderRemark)
            .Select(word => place.Word(word, CompletionKind.Statement, StatementWords.MeaningOf(word) ?? ""))
            .Concat(
                kinds.Select(kind =>
                    place.Word(kind, CompletionKind.Kind, StatementWords.MeaningOf(kind) ?? "a kind of your own")
                )
            );
    }

    private static IEnumerable<Completion> After(CompletionPlace place)
    {
        var line = place.Line;
        return line.First.ToLowerInvariant() switch
        {
            "wire" => ConductorCompletions.OfWire(place),
            "cable" => ConductorCompletions.OfCable(place),
            "splice" => line.Words.Length > 1 ? [.. place.Lugs(), .. place.Words("sleeved")] : [],
            "touch" => place.Lugs(),
            "lift" => line.Words.Length == 2 ? place.Words("to") : place.Lugs(),
            "drop" => OfDrop(place),
            "place" => line.Words.Length == 1 ? place.Parts() : place.Words("at", "turned"),
            "positions" => line.Words.Length == 1 ? Controls(place) : [],
            "find" => line.Words.Contains("at", Naming.Comparer)
                ? place.Lugs()
                : [.. Controls(place), .. place.Words("at")],
            "found" => FoundCompletions.At(place, line.Words[1..]),
            "rest" => place.Settings(mayBeAny: false),
            "expect" => ExpectCompletions.At(place, line.Words[1..]),
            "allow" => OfAllow(place),
            "load" => Loads(place),
            "define" => line.Words.Length == 1
                ? Keywords.StandardKinds.Select(kind => place.Word(kind, CompletionKind.Kind))
                : [],
            "replace" => line.Words.Length == 1
                ? place.Parts()
                : PartCompletions.At(place, place.Circuit?.FindPart(line.Words[1])?.Kind ?? ""),
            var first when Keywords.Statements.Has(first) => [],
            var kind => PartCompletions.At(place, kind),
        };
    }

    private static IEnumerable<Completion> OfDrop(CompletionPlace place) =>
        place.Line.Words.Length == 1 ? [.. place.Parts(), .. place.Words(Keywords.Expect)]
        : Naming.Alike(place.Line.Words[1], Keywords.Expect)
            ? [.. place.Settings(mayBeAny: true), .. place.Words("rest")]
        : [];

    private static IEnumerable<Completion> Controls(CompletionPlace place) =>
        place.Circuit is { } circuit
            ? circuit.Controls.Select(control =>
                place.Word(
                    control.Name,
                    CompletionKind.Control,
                    string.Join(' ', control.Positions.Select(position => position.Name))
                )
            )
            : [];

    private static IEnumerable<Completion> OfAllow(CompletionPlace place) =>
        place.Line.Words.Length switch
        {
            1 => FindingCatalogue.All.Select(check => place.Word(check.Id, CompletionKind.Check, check.Title)),
            2 => place.Words("at"),
            3 => place.Lugs(),
            _ => [],
        };

    private static IEnumerable<Completion> Loads(CompletionPlace place) =>
        place.Line.Written.Contains('=', StringComparison.Ordinal)
            ? []
            :
            [
                place.Word("cable=", CompletionKind.Key, "the cable's capacitance, such as 470p"),
                place.Word("input=", CompletionKind.Key, "the input of the amplifier, such as 1M"),
                place.Word("mains=", CompletionKind.Key, "the frequency of hum, 50 or 60"),
                place.Word("temperature=", CompletionKind.Key, "at the bench in °C, such as 15..30"),
                place.Word("scale=", CompletionKind.Key, "the length of an open string, such as 648mm"),
                place.Word("strings=", CompletionKind.Key, "guitar or bass"),
            ];
}
