using System.Collections.Immutable;

namespace WireText.Drawing.Faces;

/// <summary>In which order pickups stand, from the neck to the bridge: as they are called where all say where they sit, else as they are written.</summary>
internal static class PickupOrder
{
    /// <summary>What pickups are called by where they sit; common practice.</summary>
    private static readonly ImmutableArray<ImmutableArray<string>> Seats =
    [
        ["neck", "front"],
        ["middle", "mid", "centre", "center"],
        ["bridge", "rear", "back"],
    ];

    /// <summary>The place of each, 0 nearest the neck.</summary>
    public static ImmutableArray<int> Of(ImmutableArray<string> names)
    {
        var order = Enumerable.Range(0, names.Length);
        int[] sorted = Seated(names) is { } seats ? [.. order.OrderBy(pickup => seats[pickup])] : [.. order];
        return [.. Enumerable.Range(0, names.Length).Select(pickup => Array.IndexOf(sorted, pickup))];
    }

    /// <summary>Where each sits by its name, 0 at the neck; null where one does not say.</summary>
    public static ImmutableArray<int>? Seated(ImmutableArray<string> names)
    {
        ImmutableArray<int> seats = [.. names.Select(SeatOf)];
        return seats.Contains(-1) ? null : seats;
    }

    /// <summary>By one of the words of its name; -1 where none or several say it.</summary>
    private static int SeatOf(string name)
    {
        var words = name.Split('-', '_', '.').ToHashSet(StringComparer.OrdinalIgnoreCase);
        var found = Enumerable.Range(0, Seats.Length).Where(seat => Seats[seat].Any(words.Contains)).ToList();
        return found.Count == 1 ? found[0] : -1;
    }
}
