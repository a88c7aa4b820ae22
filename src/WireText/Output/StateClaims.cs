using System.Collections.Immutable;
using System.Globalization;
using WireText.Circuits;
using WireText.Electrical.Forms;
using WireText.Electrical.Positions;
using WireText.Electrical.Solving;
using WireText.Electrical.Sound;
using WireText.Quantities;

namespace WireText.Output;

/// <summary>What an <c>expect</c> line can claim of a state, in the words of the language.</summary>
internal static class StateClaims
{
    /// <summary>Where the treble is pinned of what has no peak, in hertz: above the peak of a usual pickup on a cable. Chosen.</summary>
    private const double TrebleHertz = 5e3;

    /// <summary>Below it a level is what rounding has left of coils that cancel, in dB. Chosen.</summary>
    private const double LeastDecibels = -100;

    /// <param name="before">The same with all dials at rest, for the level against it; null when they are.</param>
    public static ImmutableArray<string> Of(Circuit circuit, StateAnalysis there, StateAnalysis? before) =>
        there.Outcome == Outcome.Sound
            ? [.. OfSound(circuit, there), .. LevelAgainst(there, before)]
            : [.. OfSilence(there), .. Reading(there)];

    /// <summary>Of a jack without a plug: nobody hears it, but a meter can be put to it.</summary>
    public static ImmutableArray<string> AtBareJack(StateAnalysis there) => [.. OfSilence(there), .. Reading(there)];

    /// <summary>All that tells the state from others, levels of one decibel taken for one.</summary>
    public static string Print(Circuit circuit, StateAnalysis there) =>
        string.Join('|', Of(circuit, there, before: null))
        + (there.Outcome == Outcome.Sound ? Figure(Math.Round(there.Sound.LevelDecibels), "0") : "");

    private static IEnumerable<string> OfSound(Circuit circuit, StateAnalysis there)
    {
        if (FormText.AsClaim(circuit, there.Form) is { } coils)
        {
            yield return coils;
        }

        if (there.Sound.Hum is { Word: HumWord.Cancelled } && there.Sound.Gains!.Coils.Length > 1)
        {
            yield return "hum-cancelling";
        }

        foreach (var reading in Reading(there))
        {
            yield return reading;
        }

        if (there.Resonance is { } peak)
        {
            yield return $"resonates {ValueText.Label(peak.Hertz, Unit.Hertz, 3)}";
        }
        else if (there.DecibelsAt(TrebleHertz) is { } treble and >= LeastDecibels)
        {
            yield return $"level {Decibels(treble)} at {ValueText.Label(TrebleHertz, Unit.Hertz)}";
        }
    }

    private static IEnumerable<string> OfSilence(StateAnalysis there)
    {
        string? word = there.Outcome switch
        {
            Outcome.Short or Outcome.Quiet => "silence",
            Outcome.Open => "open",
            Outcome.Dead => "dead",
            _ => null,
        };
        return word is null ? [] : [word];
    }

    private static IEnumerable<string> Reading(StateAnalysis there) =>
        there.Reading is { Kind: not ReadingKind.None } reading
            ? [$"reads {ValueText.Label(reading.Ohms, Unit.Ohm, 3)}"]
            : [];

    private static IEnumerable<string> LevelAgainst(StateAnalysis there, StateAnalysis? before) =>
        before is { Outcome: Outcome.Sound }
            ? [$"level {Decibels(there.Sound.LevelDecibels - before.Sound.LevelDecibels)}"]
            : [];

    private static string Decibels(double level) => Figure(level, "0.0") + "dB";

    /// <summary>Rounded, and no minus before a zero.</summary>
    private static string Figure(double value, string format)
    {
        var text = value.ToString(format, CultureInfo.InvariantCulture);
        return text.Any(c => c is >= '1' and <= '9') ? text : text.TrimStart('-');
    }
}
