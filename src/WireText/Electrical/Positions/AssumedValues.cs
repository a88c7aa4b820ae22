using WireText.Circuits;
using WireText.Electrical.Solving;
using WireText.Electrical.Sound;

namespace WireText.Electrical.Positions;

/// <summary>Which answers about a state rest on values that nobody gave: what is assumed must not pass for what was measured.</summary>
public static class AssumedValues
{
    /// <summary>Stands behind a figure, or a word, that rests on one.</summary>
    public const string Mark = " *";

    /// <summary>True when the meter's reading rests on an assumed resistance, or on a value that nobody knows.</summary>
    public static bool BearReading(StateAnalysis analysis) =>
        analysis.Reading is { Kind: ReadingKind.Value } reading
        && (reading.IsInDoubt || LiveCoils(analysis).Any(IsResistanceAssumed));

    /// <summary>True when the peak rests on an assumed inductance or capacitance, or on a value that nobody knows.</summary>
    public static bool BearPeak(StateAnalysis analysis) =>
        analysis.Resonance is not null && (!analysis.InDoubt.IsEmpty || LiveCoils(analysis).Any(IsResonanceAssumed));

    /// <summary>True when a coil's own values behind the reading or the peak are assumed.</summary>
    public static bool AreOfCoils(StateAnalysis analysis) =>
        (analysis.Reading is { Kind: ReadingKind.Value } && LiveCoils(analysis).Any(IsResistanceAssumed))
        || (analysis.Resonance is not null && LiveCoils(analysis).Any(IsResonanceAssumed));

    /// <summary>True when the phase of what is heard, or its hum, rests on an assumed winding or magnet.</summary>
    public static bool BearSigns(StateAnalysis analysis) =>
        analysis.Outcome == Outcome.Sound && (analysis.Sound.IsPhaseAssumed || analysis.Sound.IsHumAssumed);

    /// <summary>The coils whose assumed values shape the level over frequency.</summary>
    public static IEnumerable<Coil> BehindResponse(StateAnalysis analysis) =>
        analysis.Outcome != Outcome.Sound
            ? []
            : LiveCoils(analysis)
                .Where(coil =>
                    IsResistanceAssumed(coil)
                    || IsResonanceAssumed(coil)
                    || (analysis.Sound.IsPhaseAssumed && CoilSigns.ArePhaseAssumed(coil))
                );

    /// <summary>True when where the coil resonates by itself rests on an assumed value.</summary>
    public static bool IsResonanceAssumed(Coil coil) =>
        coil.Origins.Henries == ValueOrigin.Assumed || coil.Origins.Farads == ValueOrigin.Assumed;

    private static bool IsResistanceAssumed(Coil coil) => coil.Origins.Ohms == ValueOrigin.Assumed;

    private static IEnumerable<Coil> LiveCoils(StateAnalysis analysis) =>
        analysis.Coils.Where(coil => coil.Place == CoilPlace.Live).Select(coil => coil.Coil);
}
