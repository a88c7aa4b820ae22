using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Electrical.Studies;

namespace WireText.Electrical.BenchPlans;

/// <summary>
/// How a finished instrument is tested: a lead plugged into it alone, no amplifier on the lead, batteries out.
/// </summary>
/// <param name="Readings">What an ohmmeter must show, in the order in which it is measured.</param>
/// <param name="AreAllReadings">False where there were more readings than a plan has.</param>
/// <param name="Taps">What must sound when it is tapped: for this alone the lead is plugged into an amplifier.</param>
/// <param name="Faults">What a wrong reading points to.</param>
public sealed record BenchPlan(
    Circuit Circuit,
    ImmutableArray<BenchReading> Readings,
    bool AreAllReadings,
    ImmutableArray<TapCheck> Taps,
    FaultTable Faults
)
{
    /// <summary>The plan of an instrument, at all of its jacks that are in use.</summary>
    public static BenchPlan Of(Study study, CancellationToken cancellation = default)
    {
        var (readings, areAll) = ReadingList.Of(study, cancellation);
        return new BenchPlan(
            study.Circuit,
            readings,
            areAll,
            TapCheck.All(study, cancellation),
            FaultTable.Of(study.Circuit, readings, cancellation)
        );
    }

    /// <summary>The switches that stand in more than one position over the plan.</summary>
    public IEnumerable<Control> Moved =>
        Circuit.Controls.Where(control =>
            !control.IsPlug && Readings.Select(reading => reading.State[control.Index]).Distinct().Skip(1).Any()
        );
}
