using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Electrical.Solving;
using WireText.Electrical.Tolerances;
using WireText.Parts;
using WireText.Text;

namespace WireText.Matching;

/// <summary>A place in the circuit that a measured part may take: a part whose value is known and may be another.</summary>
/// <param name="Part">Of the circuit.</param>
/// <param name="Value">As written: ohms of a pot or of a pickup's coils in series, farads, henries.</param>
/// <param name="Least">The lowest value that fits there: that of its tolerance.</param>
/// <param name="Most">The highest.</param>
public sealed record MatchSlot(Part Part, double Value, double Least, double Most)
{
    /// <summary>A part at the very limit fits, however its value is rounded; relative.</summary>
    private const double Edge = 1e-9;

    private ImmutableArray<Element> Elements { get; init; } = [];

    /// <summary>Every slot of a circuit, in order of declaration.</summary>
    public static ImmutableArray<MatchSlot> Of(Circuit circuit) =>
        [.. circuit.Parts.Select(part => SlotOf(circuit, part)).OfType<MatchSlot>()];

    /// <summary>True for a part of that kind, or one kept for this very place, whose value lies within the tolerance.</summary>
    public bool Fits(BinPart part) =>
        (Naming.Alike(part.Kind, Part.Name) || Naming.Alike(part.Kind, Part.Kind))
        && part.Value >= Least * (1 - Edge)
        && part.Value <= Most * (1 + Edge);

    /// <summary>Which factors of a run the part moves, and to how many times the value as written.</summary>
    public IEnumerable<(int Factor, double Times)> MovedBy(BinPart part, RunFactors factors)
    {
        foreach (var element in Elements)
        {
            var times = part.Value / Value;
            switch (element)
            {
                case Coil:
                    yield return Moved(element, RunQuantity.Ohms, times);
                    yield return Moved(element, RunQuantity.Henries, part.Henries / Coils(coil => coil.Henries));
                    // The inverses of capacitances in series add up.
                    yield return Moved(element, RunQuantity.Farads, part.Farads * Coils(coil => 1 / coil.Farads));
                    break;
                case Capacitor:
                    yield return Moved(element, RunQuantity.Farads, times);
                    break;
                case Inductor:
                    yield return Moved(element, RunQuantity.Henries, times);
                    break;
                default:
                    yield return Moved(element, RunQuantity.Ohms, times);
                    break;
            }
        }

        (int, double) Moved(Element element, RunQuantity quantity, double? times) =>
            (factors.PlaceOf(element, quantity)!.Value, times is > 0 and < double.PositiveInfinity ? times.Value : 1);
    }

    private double Coils(Func<Coil, double> of) => Elements.OfType<Coil>().Sum(of);

    private static MatchSlot? SlotOf(Circuit circuit, Part part)
    {
        var own = part
            .Elements.Select(element => circuit.Elements[element])
            .Where(element => element is Coil or Track or Resistor or Capacitor or Inductor)
            .ToImmutableArray();
        double? value = (part.Kind, own) switch
        {
            (PartKinds.Pickup, [Coil, ..]) => own.OfType<Coil>().Sum(coil => coil.Ohms),
            // All tracks of one shaft are of one value.
            (PartKinds.Pot, [Track first, ..]) when own.OfType<Track>().All(track => track.Ohms == first.Ohms) =>
                first.Ohms,
            (PartKinds.Resistor, [Resistor one]) => one.Ohms,
            (PartKinds.Cap, [Capacitor one]) => one.Farads,
            (PartKinds.Inductor, [Inductor one]) => one.Henries,
            _ => null,
        };
        if (value is not { } written)
        {
            return null;
        }

        var tolerance = own[0] switch
        {
            Capacitor cap => ValueTolerance.OfFarads(cap),
            Inductor choke => ValueTolerance.OfHenries(choke),
            var other => ValueTolerance.OfOhms(other),
        };
        var (least, most) = own[0].Doubt is { } doubt
            ? (doubt.Least, doubt.Most)
            : (written * (1 - tolerance), written * (1 + tolerance));
        return new MatchSlot(part, written, least, most) { Elements = own };
    }
}
