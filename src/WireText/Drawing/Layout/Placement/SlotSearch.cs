namespace WireText.Drawing.Layout.Placement;

/// <summary>Arranges the big parts in rows when the author said nothing: pickups on top in their order, then switches, pots and jack, grounds outside.</summary>
internal static class SlotSearch
{
    /// <returns>Part indices by row and column; -1 for an empty cell. Small parts are in none.</returns>
    public static int[][] Arrange(Wiring wiring, int[] turns, LayoutEffort effort)
    {
        _ = (turns, effort);
        return Template(wiring);
    }

    private static int[][] Template(Wiring wiring)
    {
        var pickups = Zone(wiring, LayoutZone.Pickup);
        var rest = Zone(wiring, LayoutZone.Ground)
            .Concat(Zone(wiring, LayoutZone.Switch))
            .Concat(Zone(wiring, LayoutZone.Pot))
            .Concat(Zone(wiring, LayoutZone.Jack))
            .ToArray();
        var all = pickups.Length + rest.Length;
        var columns = Math.Max(3, (int)Math.Ceiling(Math.Sqrt(1.5 * all)));
        return [.. pickups.Chunk(columns), .. rest.Chunk(columns)];
    }

    private static int[] Zone(Wiring wiring, LayoutZone zone) =>
        [
            .. Enumerable
                .Range(0, wiring.Parts.Length)
                .Where(part => wiring.Parts[part].Zone == zone)
                .OrderBy(part => wiring.Parts[part].Order)
                .ThenBy(part => part),
        ];
}
