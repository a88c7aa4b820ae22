using System.Collections.Immutable;

namespace WireText.Matching;

/// <summary>Which part goes where.</summary>
/// <param name="Count">Instruments that were asked for.</param>
/// <param name="Instruments">Those that the bin has all parts for: claims that hold first, then by their cost.</param>
/// <param name="IsExact">True where nothing better exists: more that hold, then more that are whole, then a lower cost.</param>
/// <param name="LeastCost">No choice for so many whole instruments costs less; the cost itself where it is exact.</param>
/// <param name="LeftOver">Parts of the bin that go nowhere, in its order.</param>
/// <param name="Wanted">What is to be bought.</param>
public sealed record MatchPlan(
    ImmutableArray<MatchSlot> Slots,
    ImmutableArray<MatchGoal> Goals,
    int Count,
    ImmutableArray<MatchedInstrument> Instruments,
    bool IsExact,
    double LeastCost,
    ImmutableArray<BinPart> LeftOver,
    ImmutableArray<WantedPart> Wanted
)
{
    /// <summary>Instruments in which every claim of a value holds.</summary>
    public int Holding => Instruments.Count(one => one.Holds);

    /// <summary>The sum over all instruments and goals of the square of the deviation, in tolerances.</summary>
    public double Cost => Instruments.Sum(one => one.Cost);
}

/// <param name="Parts">One for each slot.</param>
/// <param name="Holds">True where every claim of a value holds.</param>
/// <param name="Figures">One for each goal.</param>
/// <param name="Deviations">One for each goal, in tolerances.</param>
public sealed record MatchedInstrument(
    ImmutableArray<BinPart> Parts,
    bool Holds,
    double Cost,
    ImmutableArray<double> Figures,
    ImmutableArray<double> Deviations
);

/// <summary>A part to be bought.</summary>
/// <param name="Least">The lowest value that it may have.</param>
/// <param name="Most">The highest.</param>
/// <param name="Instrument">The instrument whose claims would hold with it, from 0; null where it is missing.</param>
public sealed record WantedPart(MatchSlot Slot, int Count, double Least, double Most, int? Instrument);
