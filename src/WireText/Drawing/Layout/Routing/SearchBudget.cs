namespace WireText.Drawing.Layout.Routing;

/// <summary>How many more search states a routing may take up: a count and not a clock, so that every machine stops at the same place.</summary>
/// <remarks>What is not routed when it runs out is left without a path, and the drawing says so.</remarks>
internal sealed class SearchBudget
{
    /// <summary>Enough for any harness; a contested drawing past it would not get better, only later.</summary>
    private const long Most = 15_000_000;

    public long Left { get; private set; } = Most;

    public bool IsSpent => Left <= 0;

    public void Spend() => Left--;
}
