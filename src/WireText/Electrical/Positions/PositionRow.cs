using System.Globalization;
using WireText.Circuits;
using WireText.Electrical.Forms;
using WireText.Electrical.Sound;
using WireText.Quantities;

namespace WireText.Electrical.Positions;

/// <summary>One line of the table of positions: a set of states that give the same at the jack, dials at rest.</summary>
/// <param name="State">The states, any where a control makes no difference.</param>
/// <param name="LevelDecibels">Over what the table says, see <see cref="LevelReference"/>; null where nothing sounds.</param>
public sealed record PositionRow(State State, StateAnalysis Analysis, double? LevelDecibels)
{
    /// <summary>The part of the jack that it is about; null in a table of one jack.</summary>
    public int? Jack { get; init; }

    /// <summary>What it comes to over all that unknown values may be; null where it rests on none.</summary>
    public RowDoubt? Doubt { get; init; }

    /// <summary>The coils that hang on the signal by one end: antennas.</summary>
    public IEnumerable<Coil> Antennas =>
        Analysis.Coils.Where(coil => coil.Place == CoilPlace.HangsOnSignal).Select(coil => coil.Coil);

    /// <summary>How the heard coils are joined, or why nothing is heard.</summary>
    public string WhatIsHeard(Circuit circuit) =>
        Analysis.Outcome switch
        {
            Outcome.Sound => FormText.ForPeople(circuit, Analysis.Form),
            Outcome.Short => "silence: tip and sleeve are joined",
            Outcome.Quiet => $"silence: {OhmsText(Analysis.Sound.SourceOhms)} hold the jack",
            Outcome.Dead => $"dead: only {OhmsText(Analysis.Sound.SourceOhms)} stay on the jack",
            Outcome.Open => "open: the jack floats",
            _ => Analysis.Sound.Live.HasFeedback
                ? "not computed: an amplifier feeds its own input"
                : "not computed: the network is too large or has no one solution",
        };

    /// <summary>All that a line shows but the positions; rows with the same are one.</summary>
    internal string Printed(Circuit circuit) =>
        string.Join(
            '|',
            WhatIsHeard(circuit),
            Rounded(LevelDecibels, "0.0"),
            Analysis.Outcome == Outcome.Sound ? Analysis.Sound.Hum?.Word.ToString() : "",
            Analysis.Outcome == Outcome.Sound ? Rounded(Analysis.Sound.Hum?.ResidueDecibels, "0") : "",
            Analysis.Reading?.Kind,
            Figures(Analysis.Reading?.Ohms),
            Figures(Analysis.Resonance?.Hertz),
            Rounded(Analysis.Resonance?.HeightDecibels, "0.0"),
            string.Join(' ', Antennas.Select(coil => coil.Name)),
            Analysis.Sound.IsThin,
            Analysis.Sound.IsPhaseAssumed,
            Analysis.Sound.IsHumAssumed,
            Doubt?.Printed,
            Figures(Math.Abs(Analysis.JackVolts ?? 0) > Thresholds.JackVolts ? Analysis.JackVolts : null)
        );

    private static string OhmsText(double? ohms) => ohms is { } value ? ValueText.Figure(value, Unit.Ohm) : "nothing";

    private static string? Rounded(double? value, string format) =>
        value?.ToString(format, CultureInfo.InvariantCulture);

    private static string? Figures(double? value) => value?.ToString("E2", CultureInfo.InvariantCulture);
}
