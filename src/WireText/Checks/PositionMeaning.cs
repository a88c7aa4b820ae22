using WireText.Circuits;

namespace WireText.Checks;

/// <summary>What the name of a position says of the pickups that are heard there.</summary>
/// <param name="Pickups">The parts that it names.</param>
/// <param name="IsExact">True when no other is meant to be heard: the name has no word but theirs, or one that says so.</param>
/// <param name="Count">How many pickups are meant, where the name counts them instead.</param>
/// <param name="IsCut">True when it says that of a pickup of several coils not all are.</param>
internal sealed record PositionMeaning(HashSet<int> Pickups, bool IsExact, int? Count, bool IsCut)
{
    /// <summary>Words for a pickup of which one coil is heard. Common practice.</summary>
    private static readonly string[] CutWords = ["cut", "split", "tap", "tapped"];

    /// <summary>Words for what is not heard, or not alike.</summary>
    private static readonly string[] LeavingWords = ["off", "out", "no", "not", "without", "mute", "kill"];

    /// <summary>Null when the name says nothing of pickups.</summary>
    public static PositionMeaning? Of(Circuit circuit, string position)
    {
        if (PickupNames.Of(circuit, position) is { } all)
        {
            return new PositionMeaning(all, IsExact: true, null, IsCut: false);
        }

        if (PickupNames.IsBoth(position))
        {
            return new PositionMeaning([], IsExact: false, 2, IsCut: false);
        }

        var words = position.Split('+', '-', '_');
        if (words.Any(word => LeavingWords.Contains(word, StringComparer.OrdinalIgnoreCase)))
        {
            return null;
        }

        var named = words
            .Where(word => !PickupNames.IsAlone(word))
            .Select(word => PickupNames.Of(circuit, word))
            .ToList();
        return named.TrueForAll(name => name is null)
            ? null
            : new PositionMeaning(
                [.. named.OfType<HashSet<int>>().SelectMany(parts => parts)],
                IsExact: named.TrueForAll(name => name is not null),
                null,
                words.Any(word => CutWords.Contains(word, StringComparer.OrdinalIgnoreCase))
            );
    }

    /// <summary>True when just what is heard is meant.</summary>
    /// <param name="cut">Pickups that some position of the control cuts by its name: elsewhere they are whole.</param>
    public bool Fits(HeardPickups heard, IReadOnlySet<int> cut) =>
        (IsExact ? Pickups.SetEquals(heard.Parts) : Pickups.IsSubsetOf(heard.Parts))
        && (Count is null || Count == heard.Parts.Count)
        && (
            IsCut
                ? Pickups.Any(part => !heard.Whole.Contains(part) || !heard.Divided.Contains(part))
                : heard.Parts.All(part => heard.Whole.Contains(part) || !cut.Contains(part))
        );
}
