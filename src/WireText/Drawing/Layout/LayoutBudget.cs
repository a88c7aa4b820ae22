using WireText.Drawing.Layout.Routing;

namespace WireText.Drawing.Layout;

/// <summary>
/// The work that one whole layout may take, its search for places and every routing together: a count and not a clock, so that
/// every machine stops at the same place. It is counted in states of the router; other work is told in as many as take as long.
/// </summary>
/// <remarks>
/// Routings that run side by side take equal shares beforehand and give back what is left afterwards, so the order in which they
/// run decides nothing.
/// </remarks>
internal sealed class LayoutBudget(LayoutBounds bounds, CancellationToken cancellation)
{
    /// <summary>How far each of the searches may go that share this.</summary>
    public LayoutBounds Bounds => bounds;

    public CancellationToken Cancellation => cancellation;

    /// <summary>The states that were taken up so far.</summary>
    public long Spent { get; private set; }

    public bool IsSpent => Left <= 0;

    /// <summary>Places are searched for with the first half: the wires have the other.</summary>
    public bool IsHalfSpent => Left <= bounds.States / 2;

    private long Left => bounds.States - Spent;

    public void Spend(long states) => Spent += states;

    /// <summary>What one of several routings may take up.</summary>
    /// <param name="most">Never more than this.</param>
    public SearchBudget Share(long most, int among = 1) => new(Math.Clamp(Left / among, 0, most), cancellation);

    /// <summary>Counts what was taken up of a share.</summary>
    public void Settle(SearchBudget share) => Spend(share.Spent);
}
