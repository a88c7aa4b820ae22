using System.Collections.Immutable;

namespace WireText.Editing;

/// <summary>What may follow <c>found</c>: where something was measured or heard, and behind the colon what.</summary>
internal static class FoundCompletions
{
    private static readonly ImmutableArray<(string Word, string Meaning)> Facts =
    [
        ("reads", "what a meter showed, such as 7.05k, 0 or open"),
        ("at most", "the highest reading while a dial was turned"),
        ("heard", "the coils that sounded when they were tapped"),
        ("silence", "nothing is heard, and nothing hums"),
        ("dead", "nothing is heard, and it hums"),
        ("thin", "coils cancel"),
        ("hums", "coils do not cancel the hum"),
        ("dark", "the treble is gone"),
        ("weak", "it is quieter than it should be"),
        ("buzzes", "until the strings are touched"),
        ("good", "of a lead or a capacitor alone"),
        ("shorted", "of a lead or a capacitor alone"),
    ];

    /// <param name="said">The words behind <c>found</c>.</param>
    public static IEnumerable<Completion> At(CompletionPlace place, ImmutableArray<string> said)
    {
        var last = said.IsEmpty ? "" : said[^1].ToLowerInvariant();
        return said.Contains(":") || said.Any(word => word.EndsWith(':'))
            ? last is "heard" or "and"
                ? place.Parts()
                : last is "reads" or "most"
                    ? place.Words("open")
                    : Facts.Select(fact => place.Word(fact.Word, CompletionKind.Claim, fact.Meaning))
            : last is "turning"
                ? Dials(place)
                : last is "to" or "joint" or "of"
                    ? place.Lugs()
                    : place.Line.Written.Contains('=', StringComparison.Ordinal)
                        ? place.Settings(mayBeAny: false)
                        : place.Line.Written.Contains('.', StringComparison.Ordinal)
                            ? place.Lugs()
                            :
                            [
                                .. place.Settings(mayBeAny: false),
                                .. place.Lugs(),
                                .. place.Words(
                                    said.IsEmpty ? ["rest", "worked", "fresh", "sleeve", "lead", "joint", "cell"] : []
                                ),
                                .. place.Words(said.IsEmpty ? [] : ["to", "turning", "alone", "of"]),
                            ];
    }

    private static IEnumerable<Completion> Dials(CompletionPlace place) =>
        place.Circuit is { } circuit ? circuit.Dials.Select(dial => place.Word(dial.Name, CompletionKind.Control)) : [];
}
