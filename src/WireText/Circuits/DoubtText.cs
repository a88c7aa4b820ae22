using WireText.Quantities;

namespace WireText.Circuits;

/// <summary>The words for what nobody knows of a circuit.</summary>
public static class DoubtText
{
    /// <summary>An element and what it may be: <c>vol (25 kΩ to 1.00 MΩ)</c>, <c>tone (its taper)</c>.</summary>
    public static string Of(Element element) => $"{element.Name} ({string.Join(", ", WhatIsUnknown(element))})";

    /// <summary>One line on what stars in a table, or a band in a chart, stand for; null where all is known.</summary>
    public static string? Remark(IEnumerable<Element> elements)
    {
        var names = elements.Select(Of).Distinct(StringComparer.Ordinal).ToList();
        return names.Count == 0
            ? null
            : $"* not known: {string.Join(", ", names)}; figures that rest on it are told from the least to the most";
    }

    private static IEnumerable<string> WhatIsUnknown(Element element)
    {
        if (element.Doubt is { } doubt)
        {
            var unit = UnitOf(element);
            yield return $"{ValueText.Figure(doubt.Least, unit)} to {ValueText.Figure(doubt.Most, unit)}";
        }

        if (element is Track { IsTaperUnknown: true })
        {
            yield return "its taper";
        }
    }

    private static Unit UnitOf(Element element) =>
        element switch
        {
            Capacitor => Unit.Farad,
            Inductor => Unit.Henry,
            _ => Unit.Ohm,
        };
}
