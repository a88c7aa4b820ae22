using System.Collections.Immutable;
using WireText.Parts;

namespace WireText.Circuits;

/// <summary>Circuits with values in place of those that nobody knows, spread over all that they may be.</summary>
public static class DoubtVariants
{
    /// <summary>Circuits that are looked at for one whose values are not all known. Chosen: two values by five steps each are 25.</summary>
    public const int Most = 32;

    /// <summary>Steps of one value: with fewer where several are unknown. Chosen.</summary>
    private static readonly ImmutableArray<int> Steps = [5, 3, 2];

    /// <summary>Between these two lies every taper that has a name; linear is the middle.</summary>
    private static readonly ImmutableArray<Taper> OuterTapers = [Taper.Audio10, Taper.Linear, Taper.ReverseAudio10];

    /// <summary>True for an element of which the value or the taper is not known.</summary>
    public static bool IsInDoubt(Element element) =>
        element.Doubt is not null || element is Track { IsTaperUnknown: true };

    /// <summary>The elements of which something is not known, in order of declaration.</summary>
    public static IEnumerable<Element> InDoubt(Circuit circuit) => circuit.Elements.Where(IsInDoubt);

    /// <summary>
    /// Every combination of so many steps of each value as keep below <see cref="Most"/>; past that each value by itself at its
    /// ends, then all at their low and all at their high ends. Empty where all is known.
    /// </summary>
    public static ImmutableArray<Circuit> Of(Circuit circuit)
    {
        var doubted = InDoubt(circuit).ToList();
        if (doubted.Count == 0)
        {
            return [];
        }

        foreach (var steps in Steps)
        {
            var choices = doubted.ConvertAll(element => ChoicesOf(element, steps));
            if (choices.Aggregate(1.0, (product, one) => product * one.Length) <= Most)
            {
                return [.. Combined(choices).Select(elements => With(circuit, elements))];
            }
        }

        var ends = doubted.ConvertAll(element => ChoicesOf(element, Steps[^1]));
        return
        [
            With(circuit, ends.Select(choice => choice[0])),
            With(circuit, ends.Select(choice => choice[^1])),
            .. ends.Take((Most / 2) - 1)
                .SelectMany(choice => new[] { choice[0], choice[^1] })
                .Select(one => With(circuit, [one])),
        ];
    }

    /// <summary>The circuit with each step of what one element may be, all else as it is taken.</summary>
    public static IEnumerable<Circuit> Of(Circuit circuit, Element element) =>
        ChoicesOf(element, Steps[0]).Select(one => With(circuit, [one]));

    /// <summary>The element with each of its values, and each of its tapers.</summary>
    private static ImmutableArray<Element> ChoicesOf(Element element, int steps)
    {
        var values = element.Doubt is { } doubt
            ? doubt.Spread(steps).Select(value => Valued(element, value))
            : [element];
        return element is Track { IsTaperUnknown: true }
            ?
            [
                .. values
                    .OfType<Track>()
                    .SelectMany(track =>
                        OuterTapers.Select(taper => track with { Taper = taper, IsTaperUnknown = false })
                    ),
            ]
            : [.. values];
    }

    private static Element Valued(Element element, double value) =>
        element switch
        {
            Track track => track with { Ohms = value },
            Resistor resistor => resistor with { Ohms = value },
            Capacitor capacitor => capacitor with { Farads = value },
            Inductor inductor => inductor with { Henries = value },
            _ => element,
        };

    private static IEnumerable<ImmutableArray<Element>> Combined(List<ImmutableArray<Element>> choices) =>
        choices.Aggregate(
            (IEnumerable<ImmutableArray<Element>>)
                [
                    [],
                ],
            (taken, choice) => taken.SelectMany(elements => choice.Select(elements.Add))
        );

    private static Circuit With(Circuit circuit, IEnumerable<Element> elements) =>
        circuit with
        {
            Elements = elements.Aggregate(circuit.Elements, (all, element) => all.SetItem(element.Index, element)),
        };
}
