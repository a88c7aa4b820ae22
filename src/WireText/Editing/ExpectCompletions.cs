using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Parts;
using WireText.Text;

namespace WireText.Editing;

/// <summary>What may follow <c>expect</c>: a jack, a state, and behind its colon what is claimed of it.</summary>
internal static class ExpectCompletions
{
    private static readonly ImmutableArray<(string Word, string Meaning)> Claims =
    [
        ("silence", "nothing is heard, and nothing hums"),
        ("dead", "nothing is heard, and nothing holds the jack"),
        ("open", "nothing hangs on the jack"),
        ("hum-cancelling", "hum of the coils cancels"),
        ("battery", "on or off"),
        ("reads", "what a meter on the plug reads, such as 6.2k"),
        ("resonates", "where the peak lies, such as 3.4kHz"),
        ("level", "how loud, against the dials at rest: -6dB"),
    ];

    /// <param name="said">The words behind <c>expect</c>.</param>
    public static IEnumerable<Completion> At(CompletionPlace place, ImmutableArray<string> said)
    {
        var colon = said.LastIndexOf(":");
        var isStateSaid = said.Take(colon + 1)
            .Any(word => word.Contains('=', StringComparison.Ordinal) || IsRest(word));
        return isStateSaid ? OfClaims(place, said)
            : place.Line.Written.Contains('=', StringComparison.Ordinal) ? place.Settings(mayBeAny: true)
            :
            [
                .. place.Settings(mayBeAny: true),
                .. place.Words(said.Length == 0 || colon >= 0 ? [StateText.RestWord] : []),
                .. Jacks(place, said),
            ];
    }

    private static bool IsRest(string word) => Naming.Alike(word, StateText.RestWord);

    /// <summary>Where there are several, a line may name the one that it is about.</summary>
    private static IEnumerable<Completion> Jacks(CompletionPlace place, ImmutableArray<string> said) =>
        said.IsEmpty && place.Circuit is { Outputs.Length: > 1 } circuit
            ? circuit.Outputs.Select(jack =>
                place.Word($"{circuit.Parts[jack.Part].Name}:", CompletionKind.Part, "the jack that is listened at")
            )
            : [];

    private static IEnumerable<Completion> OfClaims(CompletionPlace place, ImmutableArray<string> said) =>
        said[^1].ToLowerInvariant() switch
        {
            ":" or "," =>
            [
                .. Claims.Select(claim => place.Word(claim.Word, CompletionKind.Claim, claim.Meaning)),
                .. Coils(place),
            ],
            "(" or "parallel" or "series" or "reversed" => [.. Coils(place)],
            "battery" => place.Words("on", "off"),
            "through" => place.Parts(),
            "reads" or "resonates" or "level" or "at" or "for" => [],
            _ when IsOfAValue(said) => place.Words("for"),
            _ => place.Words("parallel", "series", "through"),
        };

    /// <summary>True where the claim that is being written is of a value, and that is there.</summary>
    private static bool IsOfAValue(ImmutableArray<string> said)
    {
        var start = Math.Max(said.LastIndexOf(":"), said.LastIndexOf(","));
        return start + 1 < said.Length
            && said[start + 1].ToLowerInvariant() is "reads" or "resonates" or "level"
            && !said.Skip(start).Any(word => Naming.Alike(word, "for"));
    }

    /// <summary>The pickups; behind a dot the coils of the one before it.</summary>
    private static IEnumerable<Completion> Coils(CompletionPlace place)
    {
        if (place.Circuit is not { } circuit)
        {
            return [];
        }

        var coils = circuit.Elements.OfType<Coil>().ToList();
        return place.Line.Written.Contains('.', StringComparison.Ordinal)
            ? coils
                .Where(coil => coil.Name.Contains('.', StringComparison.Ordinal))
                .Select(coil => place.Word(coil.Name, CompletionKind.Lug, "coil"))
            : circuit
                .Parts.Where(part => Naming.Alike(part.Kind, PartKinds.Pickup))
                .Select(part => place.Word(part.Name, CompletionKind.Part, place.WordsOf(part)))
                .Concat(place.Words("reversed"));
    }
}
