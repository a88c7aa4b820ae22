using WireText.Drawing.Layout.Placement;
using WireText.Drawing.Layout.Routing;

namespace WireText.Drawing.Layout;

/// <summary>How far each search of a layout may go: counts, and never a clock. What is done past each stands in <see cref="Bounds"/>.</summary>
public sealed record LayoutBounds
{
    /// <summary>Those that every drawing is laid with.</summary>
    public static LayoutBounds Standard { get; } = new();

    /// <summary>States of the whole layout.</summary>
    public long States { get; init; } = LayoutEngine.MostStates;

    /// <summary>Times that channels are widened.</summary>
    public int Widenings { get; init; } = LayoutEngine.MostWidenings;

    /// <summary>Trials for each big part where they are too many for a search.</summary>
    public int TrialsAPart { get; init; } = SlotSpread.TrialsAPart;

    /// <summary>States of a routing at quick effort.</summary>
    public long QuickStates { get; init; } = SearchBudget.Quick;

    /// <summary>States of each start at full effort.</summary>
    public long FullStartStates { get; init; } = SearchBudget.FullStart;

    /// <summary>States of a routing that compares places.</summary>
    public long TrialStates { get; init; } = SearchBudget.Trial;

    /// <summary>Rounds in which wires compete for lanes.</summary>
    public int Rounds { get; init; } = LaneNegotiation.MostRounds;
}
