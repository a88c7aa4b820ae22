using WireText.Electrical.Solving;

namespace WireText.Electrical.BenchPlans;

/// <summary>All that a meter may show where parts are within their tolerances, in ohms.</summary>
/// <param name="Most">Infinite where the meter may show nothing.</param>
public readonly record struct MeterBand(double Least, double Most)
{
    /// <summary>A joint, a contact and the meter's own leads have less together, in ohms (common practice).</summary>
    public const double ContinuityOhms = 1;

    /// <summary>Nothing was computed: it may be anything.</summary>
    private static readonly MeterBand Anything = new(0, double.PositiveInfinity);

    /// <summary>True when it tells joined metal.</summary>
    public bool IsContinuity => Most <= ContinuityOhms;

    /// <summary>True when the meter shows nothing in its highest range.</summary>
    public bool IsNothing => Least >= MeterRange.Highest;

    /// <param name="reading">Null where the network is too large to solve.</param>
    public static MeterBand Of(Reading? reading) =>
        reading switch
        {
            null => Anything,
            { Kind: ReadingKind.Joined } => new MeterBand(0, ContinuityOhms),
            { Most: > MeterRange.Highest } value => new MeterBand(
                Math.Min(value.Least, MeterRange.Highest),
                double.PositiveInfinity
            ),
            { } value => new MeterBand(value.Least, value.Most),
        };

    /// <summary>True when some reading lies in both: by it alone they cannot be told apart for certain.</summary>
    public bool Meets(MeterBand other) => Least <= other.Most && other.Least <= Most;

    /// <summary>The narrowest band that holds both.</summary>
    public MeterBand With(MeterBand other) => new(Math.Min(Least, other.Least), Math.Max(Most, other.Most));
}
