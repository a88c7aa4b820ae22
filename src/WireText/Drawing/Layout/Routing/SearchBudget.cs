namespace WireText.Drawing.Layout.Routing;

/// <summary>How many more search states a routing may take up: a count and not a clock, so that every machine stops at the same place.</summary>
/// <remarks>What is not routed when it runs out is left without a path, and the drawing says so.</remarks>
internal sealed class SearchBudget(long most, CancellationToken cancellation = default)
{
    /// <summary>Of a routing at quick effort: some hundred times what a harness takes, and enough for two thousand wires.</summary>
    public const long Quick = 15_000_000;

    /// <summary>Of each start at full effort: several times what the densest harness takes; there are up to 24 of them in a layout.</summary>
    public const long FullStart = 4_000_000;

    /// <summary>Of a routing that only compares placements.</summary>
    public const long Trial = 2_000_000;

    /// <summary>A power of two: whether anybody still waits is asked once in so many states, as asking costs more than a state.</summary>
    private const int StatesBetweenLooks = 1024;

    private readonly long whole = most;

    public long Left { get; private set; } = most;

    public bool IsSpent => Left <= 0;

    /// <summary>How many states were taken up.</summary>
    public long Spent => whole - Left;

    /// <exception cref="OperationCanceledException">Nobody waits for the routing any more.</exception>
    public void Spend()
    {
        if (--Left % StatesBetweenLooks == 0)
        {
            cancellation.ThrowIfCancellationRequested();
        }
    }
}
