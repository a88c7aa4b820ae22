using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Electrical.Solving;

namespace WireText.Electrical.Tolerances;

/// <summary>
/// Everything that differs in a run of one circuit, in order of declaration: each value within its tolerance, uniform between
/// its limits and independent of the others, and one temperature for all copper of an instrument.
/// </summary>
public sealed class RunFactors
{
    private readonly Dictionary<(int Element, RunQuantity Quantity), int> placeOf = [];

    private RunFactors(ImmutableArray<RunFactor> all)
    {
        All = all;
        for (var place = 0; place < all.Length; place++)
        {
            foreach (var element in all[place].Elements)
            {
                placeOf.Add((element, all[place].Quantity), place);
            }

            if (all[place].Quantity == RunQuantity.Celsius)
            {
                Copper = place;
            }
        }
    }

    public ImmutableArray<RunFactor> All { get; }

    /// <summary>The place of the copper's temperature in <see cref="All"/>; null where it is fixed.</summary>
    public int? Copper { get; }

    public int Count => All.Length;

    /// <param name="isOneBatch">True where parts of one kind and one value come from one batch and are off alike.</param>
    public static RunFactors Of(Circuit circuit, bool isOneBatch = false)
    {
        var single = circuit.Elements.SelectMany(FactorsOf);
        ImmutableArray<RunFactor> values = isOneBatch
            ? [.. single.GroupBy(factor => BatchOf(circuit, factor)).Select(Together)]
            : [.. single];
        var day = circuit.Surroundings;
        return new RunFactors(
            day.CoolestCelsius < day.WarmestCelsius
                ? values.Add(
                    new RunFactor(
                        RunFactor.Copper,
                        RunQuantity.Celsius,
                        [],
                        day.CoolestCelsius,
                        day.WarmestCelsius,
                        IsByRatio: false
                    )
                )
                : values
        );
    }

    /// <summary>Every value of a circuit at any number of times what is written: a deviation is that number less 1. The copper stays as warm as it is.</summary>
    internal static RunFactors Free(Circuit circuit) =>
        new([
            .. circuit
                .Elements.SelectMany(FactorsOf)
                .Select(factor => factor with { Least = 0, Most = 2, IsByRatio = false }),
        ]);

    /// <summary>The place in <see cref="All"/> of what a value of an element follows; null where it has no such value.</summary>
    public int? PlaceOf(Element element, RunQuantity quantity) =>
        placeOf.TryGetValue((element.Index, quantity), out var place) ? place : null;

    /// <summary>Every value as it is written, the copper at the middle of its temperatures.</summary>
    public double[] AsWritten() =>
        [
            .. All.Select(factor =>
                factor.IsByRatio && factor.Least < factor.Most
                    ? (2 * Math.Log(1 / factor.Least) / Math.Log(factor.Most / factor.Least)) - 1
                    : 0
            ),
        ];

    /// <summary>The deviations of one instrument of a run: the same whatever is asked of it, and whatever the size of the run.</summary>
    /// <param name="instrument">From 0.</param>
    /// <param name="deviations">One for each factor, written here.</param>
    public void Draw(SplitMix random, int instrument, Span<double> deviations)
    {
        var first = (ulong)instrument * (ulong)Count;
        for (var factor = 0; factor < Count; factor++)
        {
            deviations[factor] = (2 * random.FractionAt(first + (ulong)factor)) - 1;
        }
    }

    private static IEnumerable<RunFactor> FactorsOf(Element element)
    {
        switch (element)
        {
            case Coil coil:
                yield return Within(coil, ".dcr", RunQuantity.Ohms, ValueTolerance.OfOhms(coil));
                yield return Within(coil, ".l", RunQuantity.Henries, ValueTolerance.OfHenries(coil));
                yield return Within(coil, ".c", RunQuantity.Farads, ValueTolerance.OfFarads(coil));
                break;
            case Inductor choke:
                yield return Within(choke, ".dcr", RunQuantity.Ohms, ValueTolerance.OfOhms(choke));
                yield return Known(choke, RunQuantity.Henries, choke.Henries, ValueTolerance.OfHenries(choke));
                break;
            case Track track:
                yield return Known(track, RunQuantity.Ohms, track.Ohms, ValueTolerance.OfOhms(track));
                break;
            case Resistor resistor:
                yield return Known(resistor, RunQuantity.Ohms, resistor.Ohms, ValueTolerance.OfOhms(resistor));
                break;
            case Capacitor capacitor:
                yield return Known(capacitor, RunQuantity.Farads, capacitor.Farads, ValueTolerance.OfFarads(capacitor));
                break;
        }
    }

    private static RunFactor Known(Element element, RunQuantity quantity, double value, double tolerance) =>
        element.Doubt is { } doubt
            ? new(element.Name, quantity, [element.Index], doubt.Least / value, doubt.Most / value, IsByRatio: true)
            : Within(element, "", quantity, tolerance);

    private static RunFactor Within(Element element, string key, RunQuantity quantity, double tolerance) =>
        new(element.Name + key, quantity, [element.Index], 1 - tolerance, 1 + tolerance, IsByRatio: false);

    private static (Type, RunQuantity, double, double, double) BatchOf(Circuit circuit, RunFactor factor)
    {
        var element = circuit.Elements[factor.Elements[0]];
        return (element.GetType(), factor.Quantity, ValueOf(element, factor.Quantity), factor.Least, factor.Most);
    }

    private static double ValueOf(Element element, RunQuantity quantity) =>
        (element, quantity) switch
        {
            (Coil coil, RunQuantity.Ohms) => coil.Ohms,
            (Coil coil, RunQuantity.Henries) => coil.Henries,
            (Coil coil, _) => coil.Farads,
            (Inductor choke, RunQuantity.Ohms) => choke.Ohms,
            (Inductor choke, _) => choke.Henries,
            (Track track, _) => track.Ohms,
            (Resistor resistor, _) => resistor.Ohms,
            (Capacitor capacitor, _) => capacitor.Farads,
            _ => 0,
        };

    private static RunFactor Together(IEnumerable<RunFactor> batch)
    {
        var all = batch.ToList();
        return all[0] with
        {
            Name = string.Join("+", all.Select(factor => factor.Name)),
            Elements = [.. all.SelectMany(factor => factor.Elements)],
        };
    }
}
