using System.Collections.Immutable;

namespace WireText.Circuits;

/// <summary>Where a pickup sits by its name, from the neck to the bridge.</summary>
public enum PickupSeat
{
    Neck,
    Middle,
    Bridge,
}

/// <summary>Reads where pickups sit off what they are called.</summary>
public static class PickupSeats
{
    /// <summary>What pickups are called by where they sit; common practice.</summary>
    private static readonly ImmutableArray<(PickupSeat Seat, ImmutableArray<string> Words)> Words =
    [
        (PickupSeat.Neck, ["neck", "front"]),
        (PickupSeat.Middle, ["middle", "mid", "centre", "center"]),
        (PickupSeat.Bridge, ["bridge", "rear", "back"]),
    ];

    /// <summary>By one of the words of its name, which hyphens, underscores and dots divide; null where none or several say it.</summary>
    public static PickupSeat? Of(string name)
    {
        var words = name.Split('-', '_', '.').ToHashSet(StringComparer.OrdinalIgnoreCase);
        return Words.Where(seat => seat.Words.Any(words.Contains)).ToList() is [var only] ? only.Seat : null;
    }
}
