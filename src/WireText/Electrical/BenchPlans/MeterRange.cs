using System.Collections.Immutable;

namespace WireText.Electrical.BenchPlans;

/// <summary>The ranges of a usual hand-held meter, by the most that each shows, in ohms.</summary>
/// <remarks>Meters with 2000 counts have these (common practice); one that chooses its range by itself needs no telling.</remarks>
public static class MeterRange
{
    /// <summary>The most that the meter shows at all: what is more reads as nothing.</summary>
    public const double Highest = 20e6;

    public static ImmutableArray<double> All { get; } = [200, 2e3, 20e3, 200e3, 2e6, Highest];

    /// <summary>The lowest range that shows all of a band; the highest where nothing is to be read.</summary>
    public static double For(MeterBand band) => All.FirstOrDefault(range => band.Most < range, defaultValue: Highest);
}
