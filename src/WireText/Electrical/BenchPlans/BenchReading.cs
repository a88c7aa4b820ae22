using WireText.Circuits;
using WireText.Electrical.Solving;

namespace WireText.Electrical.BenchPlans;

/// <summary>One thing to measure with an ohmmeter, and what a right instrument shows.</summary>
/// <param name="State">Where everything stands: no control at any.</param>
/// <param name="Expected">Null where the network is too large to solve.</param>
/// <param name="IsAssumed">True when the reading rests on a coil's resistance that nobody gave.</param>
public sealed record BenchReading(MeterPoints Points, State State, Reading? Expected, bool IsAssumed)
{
    /// <summary>The dial that is turned for it; null where all stand at rest.</summary>
    public Dial? Turned { get; init; }

    /// <summary>All that parts within their tolerances may make the meter show.</summary>
    public MeterBand Band => MeterBand.Of(Expected);

    /// <summary>The range to set the meter to, in ohms.</summary>
    public double Range => MeterRange.For(Band);
}
