using WireText.Text;

namespace WireText.Editing;

/// <summary>What may follow in a line of a wire or a cable: lug, <c>to</c>, lug, and a colour.</summary>
internal static class ConductorCompletions
{
    private static readonly string[] Lengths = ["length=", "awg="];

    public static IEnumerable<Completion> OfWire(CompletionPlace place)
    {
        var line = place.Line;
        return IsLugNext(line, "wire", "to") ? place.Lugs()
            : Naming.Alike(line.LastButOne, "wire") && line.Words.Length == 2 ? place.Words("to")
            : Naming.Alike(line.LastButOne, "to") ? [.. place.Words("to"), .. place.Colours()]
            : [.. place.Words("sleeved"), .. Keys(place)];
    }

    public static IEnumerable<Completion> OfCable(CompletionPlace place)
    {
        var line = place.Line;
        var isBraid = line.Words.Contains("braid", Naming.Comparer);
        return isBraid && (Naming.Alike(line.Last, "braid") || Naming.Alike(line.Last, "to"))
                ? [.. place.Words("cut"), .. place.Lugs()]
            : isBraid ? [.. place.Words("to"), .. Keys(place)]
            : IsLugNext(line, "cable", "to", "and") ? place.Lugs()
            : Naming.Alike(line.LastButOne, "cable") || Naming.Alike(line.LastButOne, "and") ? place.Words("to")
            : Naming.Alike(line.LastButOne, "to") ? place.Colours()
            : [.. place.Words("and", "twisted", "braid"), .. Keys(place)];
    }

    private static bool IsLugNext(LineBefore line, params string[] before) =>
        before.Contains(line.Last, Naming.Comparer);

    private static IEnumerable<Completion> Keys(CompletionPlace place) =>
        Lengths.Select(key => place.Word(key, CompletionKind.Key));
}
