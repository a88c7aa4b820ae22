using System.Collections.Immutable;
using System.Globalization;
using WireText.Circuits;
using WireText.Electrical.Forms;
using WireText.Electrical.Situations;
using WireText.Electrical.Sound;
using WireText.Quantities;

namespace WireText.Electrical.Positions;

/// <summary>One line of the table of positions: a set of states that give the same at the jack, dials at rest.</summary>
/// <param name="Positions">For each control of the circuit the index of its position, or <see cref="Situation.Any"/>.</param>
/// <param name="LevelDecibels">Over the loudest row; null where nothing sounds.</param>
public sealed record PositionRow(ImmutableArray<int> Positions, StateAnalysis State, double? LevelDecibels)
{
    /// <summary>The coils that hang on the signal by one end: antennas.</summary>
    public IEnumerable<Coil> Antennas =>
        State.Coils.Where(coil => coil.Place == CoilPlace.HangsOnSignal).Select(coil => coil.Coil);

    /// <summary>How the heard coils are joined, or why nothing is heard.</summary>
    public string WhatIsHeard(Circuit circuit) =>
        State.Outcome switch
        {
            Outcome.Sound => FormText.ForPeople(circuit, State.Form),
            Outcome.Short => "silence: tip and sleeve are joined",
            Outcome.Quiet => $"silence: {OhmsText(State.Sound.SourceOhms)} hold the jack",
            Outcome.Dead => $"dead: only {OhmsText(State.Sound.SourceOhms)} stay on the jack",
            Outcome.Open => "open: the jack floats",
            _ => State.Sound.Live.HasFeedback
                ? "not computed: an amplifier feeds its own input"
                : "not computed: the network is too large or has no one solution",
        };

    /// <summary>All that a line shows but the positions; rows with the same are one.</summary>
    internal string Printed(Circuit circuit) =>
        string.Join(
            '|',
            WhatIsHeard(circuit),
            Rounded(LevelDecibels, "0.0"),
            State.Outcome == Outcome.Sound ? State.Sound.Hum?.Word.ToString() : "",
            State.Outcome == Outcome.Sound ? Rounded(State.Sound.Hum?.ResidueDecibels, "0") : "",
            State.Reading?.Kind,
            Figures(State.Reading?.Ohms),
            Figures(State.Resonance?.Hertz),
            Rounded(State.Resonance?.HeightDecibels, "0.0"),
            string.Join(' ', Antennas.Select(coil => coil.Name)),
            State.Sound.IsThin,
            State.Sound.IsPhaseAssumed,
            State.Sound.IsHumAssumed,
            Figures(Math.Abs(State.JackVolts ?? 0) > Thresholds.JackVolts ? State.JackVolts : null)
        );

    private static string OhmsText(double? ohms) => ohms is { } value ? ValueText.Figure(value, Unit.Ohm) : "nothing";

    private static string? Rounded(double? value, string format) =>
        value?.ToString(format, CultureInfo.InvariantCulture);

    private static string? Figures(double? value) => value?.ToString("E2", CultureInfo.InvariantCulture);
}
