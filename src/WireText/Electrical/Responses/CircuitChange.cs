using WireText.Circuits;
using WireText.Quantities;
using WireText.Text;

namespace WireText.Electrical.Responses;

/// <summary>Other values in thought, before a part is unsoldered: <c>dark=22n</c>.</summary>
/// <param name="Words">What is changed, in the circuit's words.</param>
/// <param name="Circuit">The circuit with the other values.</param>
public sealed record CircuitChange(string Words, Circuit Circuit)
{
    /// <summary>
    /// Reads one change or several, parted by commas: a capacitor, resistor, inductor or pot by its name, <c>NAME.l</c>,
    /// <c>NAME.dcr</c> and <c>NAME.c</c> of a coil, and <c>cable</c> and <c>input</c> of the load.
    /// </summary>
    public static Read<CircuitChange> Read(Circuit circuit, string text)
    {
        var words = new List<string>();
        foreach (var part in text.Split([',', ' ', '\t'], StringSplitOptions.RemoveEmptyEntries))
        {
            var sides = part.Split('=', 2);
            if (sides is not [var name, { Length: > 0 } value])
            {
                return Bad($"'{part}' is no change; write NAME=VALUE, such as cable=700p");
            }

            var places = PlacesIn(circuit);
            var found = places.Where(place => IsSame(place.Name, name)).ToList();
            if (found.Count == 0)
            {
                return Bad(Unknown(circuit, name, places));
            }

            var reading = ValueReader.Read(value, found[0].Use);
            if (reading.Value is not { } number)
            {
                return Bad(
                    $"{found[0].Name}: {reading.Problem}"
                        + (reading.Suggestion is { } meant ? $"; did you mean '{meant}'?" : "")
                );
            }

            circuit = found.Aggregate(circuit, (changed, place) => place.Set(changed, number));
            words.Add($"{found[0].Name}={ValueText.Label(number, found[0].Use.Unit)}");
        }

        return words.Count == 0
            ? Bad("no change is given; write NAME=VALUE, such as cable=700p")
            : new(new CircuitChange(string.Join(' ', words), circuit), null);
    }

    /// <summary>Every value that may be changed, by its name; a name that several elements share changes all of them.</summary>
    private static List<ValuePlace> PlacesIn(Circuit circuit)
    {
        var places = circuit.Elements.SelectMany(element => PlacesOf(circuit, element)).ToList();
        ValuePlace[] load =
        [
            new(
                "cable",
                ValueUse.CableCapacitance,
                (c, farads) => Loaded(c, c.Surroundings with { CableFarads = farads })
            ),
            new("input", ValueUse.AmplifierInput, (c, ohms) => Loaded(c, c.Surroundings with { InputOhms = ohms })),
        ];
        return [.. places, .. load.Where(place => !places.Exists(own => IsSame(own.Name, place.Name)))];
    }

    private static IEnumerable<ValuePlace> PlacesOf(Circuit circuit, Element element) =>
        element switch
        {
            Capacitor =>
            [
                Place(
                    element,
                    "",
                    ValueUse.Capacitor,
                    (e, value) => ((Capacitor)e) with { Farads = value, Doubt = null }
                ),
            ],
            Resistor =>
            [
                Place(element, "", ValueUse.Resistor, (e, value) => ((Resistor)e) with { Ohms = value, Doubt = null }),
            ],
            Inductor =>
            [
                Place(
                    element,
                    "",
                    ValueUse.Inductor,
                    (e, value) => ((Inductor)e) with { Henries = value, Doubt = null }
                ),
            ],
            Track track => PotPlaces(circuit, track),
            Coil =>
            [
                Place(
                    element,
                    ".l",
                    ValueUse.CoilInductance,
                    (e, value) =>
                        Given((Coil)e, origins => origins with { Henries = ValueOrigin.Given }) with
                        {
                            Henries = value,
                        }
                ),
                Place(
                    element,
                    ".dcr",
                    ValueUse.CoilResistance,
                    (e, value) =>
                        Given((Coil)e, origins => origins with { Ohms = ValueOrigin.Given }) with
                        {
                            Ohms = value,
                        }
                ),
                Place(
                    element,
                    ".c",
                    ValueUse.CoilCapacitance,
                    (e, value) =>
                        Given((Coil)e, origins => origins with { Farads = ValueOrigin.Given }) with
                        {
                            Farads = value,
                        }
                ),
            ],
            _ => [],
        };

    /// <summary>A pot with several tracks is changed whole by its name, or track by track.</summary>
    private static IEnumerable<ValuePlace> PotPlaces(Circuit circuit, Track track)
    {
        var part = circuit.Parts[track.Part].Name;
        return new[] { track.Name, part }
            .Distinct(StringComparer.OrdinalIgnoreCase)
            .Select(name => new ValuePlace(
                name,
                ValueUse.Pot,
                (changed, ohms) =>
                    Replaced(changed, ((Track)changed.Elements[track.Index]) with { Ohms = ohms, Doubt = null })
            ));
    }

    private static ValuePlace Place(Element element, string key, ValueUse use, Func<Element, double, Element> set) =>
        new(
            element.Name + key,
            use,
            (changed, value) => Replaced(changed, set(changed.Elements[element.Index], value))
        );

    /// <summary>The coil with a value that is no longer assumed.</summary>
    private static Coil Given(Coil coil, Func<CoilOrigins, CoilOrigins> origins) =>
        coil with
        {
            Origins = origins(coil.Origins),
        };

    private static Circuit Replaced(Circuit circuit, Element element) =>
        circuit with
        {
            Elements = circuit.Elements.SetItem(element.Index, element),
        };

    private static Circuit Loaded(Circuit circuit, Surroundings load) => circuit with { Surroundings = load };

    private static string Unknown(Circuit circuit, string name, List<ValuePlace> places) =>
        circuit.Elements.OfType<Coil>().FirstOrDefault(coil => IsSame(coil.Name, name)) is { } coil
            ? $"'{coil.Name}' is a coil; write {coil.Name}.l=, {coil.Name}.dcr= or {coil.Name}.c="
            : $"nothing called '{name}' has a value{StateReader.Offer(name, [.. places.Select(place => place.Name).Distinct(StringComparer.Ordinal)])}";

    private static bool IsSame(string a, string b) => string.Equals(a, b, StringComparison.OrdinalIgnoreCase);

    private static Read<CircuitChange> Bad(string problem) => new(null, problem);

    /// <summary>A value of a circuit: its name, what it is for, and the circuit with another.</summary>
    private sealed record ValuePlace(string Name, ValueUse Use, Func<Circuit, double, Circuit> Set);
}
