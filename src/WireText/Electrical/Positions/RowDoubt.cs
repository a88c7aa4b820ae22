using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Electrical.Sound;

namespace WireText.Electrical.Positions;

/// <summary>What a state comes to over all that unknown values may be, so far as it was looked at.</summary>
/// <param name="Elements">Whose values it rests on.</param>
/// <param name="LeastDecibels">The level over the EMF of one coil; null where with some values nothing sounds.</param>
/// <param name="MostDecibels">The same; null where with some values nothing sounds.</param>
/// <param name="Lowest">The peak of the lowest frequency; null where there is none with any value.</param>
/// <param name="Highest">That of the highest; null where there is none with any value.</param>
/// <param name="MayHaveNoPeak">True when with some values there is none.</param>
/// <param name="IsHeardSure">True when with all values the same is heard.</param>
public sealed record RowDoubt(
    ImmutableArray<Element> Elements,
    double? LeastDecibels,
    double? MostDecibels,
    Resonance? Lowest,
    Resonance? Highest,
    bool MayHaveNoPeak,
    bool IsHeardSure
)
{
    /// <summary>Null where the state rests on nothing that is unknown.</summary>
    /// <param name="variants">Of the same circuit with values in place of the unknown.</param>
    public static RowDoubt? Of(Circuit circuit, StateAnalysis there, ImmutableArray<Analyst> variants)
    {
        if (variants.IsEmpty || there.InDoubt is not { IsEmpty: false } elements)
        {
            return null;
        }

        var all = variants.Select(variant => variant.Analyse(there.State)).Prepend(there).ToList();
        var doSound = all.TrueForAll(one => one.Outcome == Outcome.Sound);
        var peaks = all.Select(one => one.Resonance).OfType<Resonance>().OrderBy(peak => peak.Hertz).ToList();
        var heard = WordsOf(there);
        return new RowDoubt(
            elements,
            doSound ? all.Min(one => one.Sound.LevelDecibels) : null,
            doSound ? all.Max(one => one.Sound.LevelDecibels) : null,
            peaks.FirstOrDefault(),
            peaks.LastOrDefault(),
            peaks.Count < all.Count,
            all.TrueForAll(one => WordsOf(one) == heard)
        );

        // Of silence how much holds the jack is a figure, and no other thing to hear.
        string WordsOf(StateAnalysis one) =>
            one.Outcome == Outcome.Sound
                ? new PositionRow(one.State, one, null).WhatIsHeard(circuit)
                : one.Outcome.ToString();
    }

    /// <summary>All that it says; rows with another are not the same.</summary>
    internal string Printed =>
        FormattableString.Invariant(
            $"{string.Join(' ', Elements.Select(element => element.Name))} {LeastDecibels:0.0} {MostDecibels:0.0} {Lowest?.Hertz:E2} {Highest?.Hertz:E2} {MayHaveNoPeak} {IsHeardSure}"
        );
}
