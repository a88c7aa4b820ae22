namespace WireText.Drawing.Layout.Placement;

/// <summary>The fixed starts of the search for places, by effort.</summary>
internal static class SlotStarts
{
    public static SlotStart[] For(LayoutEffort effort) =>
        effort == LayoutEffort.Quick
            ? [new SlotStart(ExtraColumns: 0, CrossingCost: 140, MostTrials: 1_500)]
            :
            [
                .. from crossing in new[] { 140, 280 }
                from columns in new[] { 0, 1, -1 }
                select new SlotStart(columns, crossing, MostTrials: 30_000),
            ];
}
