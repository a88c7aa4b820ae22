using WireText.Checks;
using WireText.Checks.Intent;
using WireText.Checks.Repairs;
using WireText.Circuits;

namespace WireText.Tests.Checks.Repairs;

/// <summary>
/// The slips of a soldering iron: a wire left out, a wire's end on the next lug, two wire ends of one part exchanged.
/// </summary>
internal static class WireMistakes
{
    /// <summary>Mistakes that refute what the author expects, spread over the circuit; the same in every run.</summary>
    public static IEnumerable<CircuitEdit> ThatRefute(Circuit circuit, int atMost)
    {
        var all = All(circuit).ToList();

        // A step without a common factor meets each once, and the first few lie far from each other.
        var step = Enumerable.Range(all.Count * 5 / 8, all.Count).First(step => Factor(step, all.Count) == 1);
        return Enumerable
            .Range(0, all.Count)
            .Select(i => all[(int)((long)i * step % all.Count)])
            .Where(mistake => Checker.Judge(mistake.Apply(circuit)).Findings.Any(finding => finding.Id == Expect.Id))
            .Take(atMost);
    }

    private static IEnumerable<CircuitEdit> All(Circuit circuit)
    {
        var places = LugOnLine.All(circuit).Where(place => place.Ends.Length == 1).ToList();
        var removed = circuit
            .Wires.Where(wire => wire.Kind == WireKind.Wire)
            .Select(wire => new RemoveWire(wire.Index));
        var moved =
            from place in places
            let at = place.LugIn(circuit)
            where !circuit.Lugs[at].IsLead
            let lugs = circuit.PartOf(circuit.Lugs[at]).Lugs
            from index in new[] { lugs.IndexOf(at) - 1, lugs.IndexOf(at) + 1 }
            where index >= 0 && index < lugs.Length && !circuit.Lugs[lugs[index]].IsInner
            where !circuit.Wires[place.Ends[0].Wire].Touches(lugs[index])
            select new MoveEnd(place, lugs[index]);
        var exchanged =
            from first in places
            from second in places
            let lug = first.LugIn(circuit)
            let other = second.LugIn(circuit)
            where lug < other && circuit.Lugs[lug].Part == circuit.Lugs[other].Part && !first.SharesWireWith(second)
            select new ExchangeEnds(first, second);
        return removed.Concat<CircuitEdit>(moved).Concat(exchanged);
    }

    private static int Factor(int a, int b) => b == 0 ? a : Factor(b, a % b);
}
