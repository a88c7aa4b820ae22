using System.Collections.Immutable;
using WireText.Circuits;

namespace WireText.Drawing.Faces;

/// <summary>In which order pickups stand, from the neck to the bridge: as they are called where all say where they sit, else as they are written.</summary>
internal static class PickupOrder
{
    /// <summary>The place of each, 0 nearest the neck.</summary>
    public static ImmutableArray<int> Of(ImmutableArray<string> names)
    {
        var order = Enumerable.Range(0, names.Length);
        int[] sorted = Seated(names) is { } seats ? [.. order.OrderBy(pickup => seats[pickup])] : [.. order];
        return [.. Enumerable.Range(0, names.Length).Select(pickup => Array.IndexOf(sorted, pickup))];
    }

    /// <summary>Where each sits by its name; null where one does not say.</summary>
    public static ImmutableArray<PickupSeat>? Seated(ImmutableArray<string> names)
    {
        ImmutableArray<PickupSeat> seats = [.. names.Select(PickupSeats.Of).OfType<PickupSeat>()];
        return seats.Length == names.Length ? seats : null;
    }
}
