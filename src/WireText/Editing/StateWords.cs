using WireText.Circuits;
using WireText.Electrical.Positions;
using WireText.Electrical.Solving;
using WireText.Electrical.Sound;
using WireText.Electrical.Studies;
using WireText.Output;
using WireText.Quantities;

namespace WireText.Editing;

/// <summary>Says in one line what a state does: what is heard, what a meter on the plug reads, and where the peak lies.</summary>
internal static class StateWords
{
    /// <param name="study">Of the jack that is listened at.</param>
    public static string Of(Circuit circuit, Study study, State state)
    {
        var there = study.Analyse(state);
        var words = new List<string> { new PositionRow(state, there, null).WhatIsHeard(circuit) };
        if (there.Reading is { } reading)
        {
            words.Add(ReadingOf(reading));
        }

        if (there is { Outcome: Outcome.Sound, Resonance: { } peak })
        {
            words.Add($"peak {ValueText.Figure(peak.Hertz, Unit.Hertz)}");
        }

        return string.Join(" · ", words);
    }

    /// <summary>Without the band that tolerances allow, where the value itself means something.</summary>
    private static string ReadingOf(Reading reading) =>
        reading is { Kind: ReadingKind.Value, IsInDoubt: false }
            ? ValueText.Figure(reading.Ohms, Unit.Ohm)
            : PositionSheet.ReadingOf(reading);
}
