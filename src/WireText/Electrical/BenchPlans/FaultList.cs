using WireText.Circuits;
using WireText.Electrical.Faults;

namespace WireText.Electrical.BenchPlans;

/// <summary>Every single fault that is tried.</summary>
internal static class FaultList
{
    /// <summary>Wires left out, coils, other parts, pots of half their value, wires on a neighbouring lug.</summary>
    public static IEnumerable<Fault> Of(Circuit circuit) =>
        LeftOut(circuit)
            .Concat(Broken(circuit.Elements.Where(element => element is Coil)))
            .Concat(Broken(circuit.Elements.Where(element => element is Resistor or Capacitor or Inductor or Track)))
            .Concat(circuit.Elements.OfType<Track>().Select(track => new TrackHalved(track.Index)))
            .Concat(OnNeighbours(circuit));

    private static IEnumerable<Fault> LeftOut(Circuit circuit) =>
        circuit.Wires.Where(wire => wire is { From: >= 0, To: >= 0 }).Select(wire => new WireLeftOut(wire.Index));

    private static IEnumerable<Fault> Broken(IEnumerable<Element> elements) =>
        elements.SelectMany(element =>
            new Fault[] { new ElementOpen(element.Index), new ElementShorted(element.Index) }
        );

    /// <summary>
    /// A lead is no lug: what is soldered to it cannot be on its neighbour by a slip. A wire with both ends on one lug is one left
    /// out.
    /// </summary>
    private static IEnumerable<Fault> OnNeighbours(Circuit circuit) =>
        from wire in circuit.Wires
        where wire is { From: >= 0, To: >= 0 }
        from end in WireEnd.BothOf(wire)
        where end.PlaceIn(circuit) is not null && !circuit.Lugs[end.LugIn(circuit)].IsLead
        from lug in NeighbouringLugs.Of(circuit, end.LugIn(circuit))
        where !wire.Touches(lug)
        select new WireOnNeighbour(end, lug);
}
