using System.Collections.Immutable;

namespace WireText.Electrical.Tolerances;

/// <summary>What a run makes of one figure in one state.</summary>
/// <param name="AsWritten">With every value as written; NaN where there is none.</param>
/// <param name="Least">The lowest that was met, or that there can be.</param>
/// <param name="Most">The highest.</param>
/// <param name="IsExact">True where no instrument within its tolerances lies outside: the figure never falls as any of its values rises.</param>
/// <param name="Percentiles">One for each of <see cref="RunSpread.Percents"/>.</param>
/// <param name="Without">Instruments that have no such figure, such as no peak; they count in nothing else.</param>
/// <param name="Shares">Which factor makes how much of the variance, the largest first.</param>
/// <param name="FirstOrder">
/// The variance that the shares add up to over that of the run; near 1 where the figure is nearly linear in all factors, and NaN where
/// nothing varies.
/// </param>
public sealed record FigureSpread(
    RunFigure Figure,
    double AsWritten,
    double Least,
    double Most,
    bool IsExact,
    ImmutableArray<double> Percentiles,
    int Without,
    ImmutableArray<VarianceShare> Shares,
    double FirstOrder
)
{
    /// <summary>
    /// True where the shares rest on straight lines that fit: they make up the variance of the run within a tenth, chosen, and what
    /// the variance of so many instruments strays by, twice √(2/n) for values that are nearly normal.
    /// </summary>
    public bool AreSharesGood { get; init; }
}

/// <param name="Share">Of the variance, 0 to 1.</param>
public readonly record struct VarianceShare(RunFactor Factor, double Share);
