namespace WireText.Drawing.Layout.Routing;

/// <summary>How much work the router does.</summary>
/// <param name="Order">In which order wires are routed at first: 0 short ones first, 1 long ones first, 2 as they come.</param>
/// <param name="CrossingCost">See <see cref="SearchTerms.CrossingCost"/>.</param>
/// <param name="Haste">See <see cref="SearchTerms.Haste"/>; for the first way of each wire, and while wires compete.</param>
/// <param name="ImproveHaste">The same for gains on a legal picture.</param>
/// <param name="Negotiation">How the wires compete for lanes.</param>
/// <param name="ImproveSweeps">Times that each wire is taken out and routed anew.</param>
/// <param name="ImprovePairs">Whether pairs that cross are routed anew together.</param>
internal readonly record struct RouterEffort(
    int Order,
    int CrossingCost,
    int Haste,
    int ImproveHaste,
    Negotiation Negotiation,
    int ImproveSweeps,
    bool ImprovePairs
);

/// <summary>How the price of a lane that another wire has rises from round to round.</summary>
/// <param name="FirstPresent">The price at first; never more than <see cref="RouteCosts.MostPresent"/>.</param>
/// <param name="GrowthInFifths">By how many fifths it is multiplied each round.</param>
/// <param name="MostRoundsWithoutGain">After so many rounds without fewer wires in conflict it ends.</param>
internal readonly record struct Negotiation(int FirstPresent, int GrowthInFifths, int MostRoundsWithoutGain)
{
    /// <summary>After so many rounds in all it ends too.</summary>
    public int MostRounds { get; init; } = LaneNegotiation.MostRounds;

    /// <summary>Wires begin almost free to overlap, so that each shows where it would rather be.</summary>
    public static readonly Negotiation Patient = new(30, 8, 6);

    /// <summary>Wires keep apart from the start: fewer rounds, and a few crossings more.</summary>
    public static readonly Negotiation Brisk = new(120, 12, 3);
}
