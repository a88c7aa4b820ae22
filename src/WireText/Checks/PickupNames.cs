using WireText.Circuits;

namespace WireText.Checks;

/// <summary>Positions named after pickups: <c>neck</c>, <c>neck+middle</c>, <c>both</c>.</summary>
internal static class PickupNames
{
    /// <summary>The word for both of two pickups.</summary>
    private const string Both = "both";

    /// <summary>Words that say of the pickups named beside them that no other is heard.</summary>
    private static readonly string[] AloneWords = ["only", "alone", "solo"];

    /// <summary>The parts that a position's name means; null when it is no name of pickups.</summary>
    public static HashSet<int>? Of(Circuit circuit, string position)
    {
        var pickups = circuit.Parts.Where(part => part.Elements.Any(index => HearsStrings(circuit, index))).ToList();
        if (IsBoth(position))
        {
            return pickups.Count == 2 ? [.. pickups.Select(part => part.Index)] : null;
        }

        var named = new HashSet<int>();
        foreach (var word in position.Split('+'))
        {
            if (
                pickups.Find(part => string.Equals(part.Name, word, StringComparison.OrdinalIgnoreCase)) is not { } part
            )
            {
                return null;
            }

            named.Add(part.Index);
        }

        return named;
    }

    /// <summary>True for a word that names no pickup, and leaves no other.</summary>
    public static bool IsAlone(string word) => AloneWords.Contains(word, StringComparer.OrdinalIgnoreCase);

    /// <summary>True for the word that means two, whichever they are.</summary>
    public static bool IsBoth(string position) => string.Equals(position, Both, StringComparison.OrdinalIgnoreCase);

    private static bool HearsStrings(Circuit circuit, int element) =>
        circuit.Elements[element] is Coil { HearsStrings: true };
}
