using WireText.Circuits;

namespace WireText.Comparing;

/// <summary>Tells a part that was measured from one that was replaced: nobody takes out what is only known better now.</summary>
internal static class Learning
{
    /// <summary>
    /// True where the later circuit only says more of the same part: a value that nobody knew, a taper, or what a meter read beside
    /// what is printed on it.
    /// </summary>
    public static bool IsOf(Circuit before, Part was, Circuit after, Part now) =>
        was.Definition.Kind == now.Definition.Kind
        && was.Definition.Model == now.Definition.Model
        && was.Traits.SequenceEqual(now.Traits, StringComparer.Ordinal)
        && was.Elements.Length == now.Elements.Length
        && was.Elements.Zip(now.Elements)
            .All(pair =>
                MayBe(
                    before.Elements[pair.First],
                    after.Elements[pair.Second],
                    IsReadBeside(was.ValueLabel, now.ValueLabel)
                )
            );

    /// <summary>The same print with a reading in brackets behind it.</summary>
    private static bool IsReadBeside(string? was, string? now) =>
        was is not null && now is not null && now.StartsWith(was + " (", StringComparison.Ordinal);

    private static bool MayBe(Element was, Element now, bool isRead) =>
        ValueOf(was) is { } before
        && ValueOf(now) is { } after
        && (was.Doubt is { } doubt ? after >= doubt.Least && after <= doubt.Most : after == before || isRead)
        && (
            was is not Track { IsTaperUnknown: false } track
            || (now is Track { Taper: var taper } && taper == track.Taper)
        );

    /// <summary>Null for what has no one value; such a part is another one when anything of it differs.</summary>
    private static double? ValueOf(Element element) =>
        element switch
        {
            Track track => track.Ohms,
            Resistor resistor => resistor.Ohms,
            Capacitor capacitor => capacitor.Farads,
            Inductor inductor => inductor.Henries,
            _ => null,
        };
}
