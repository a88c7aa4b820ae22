using WireText.Checks.Repairs;
using WireText.Circuits;
using WireText.Tests.Checks.Repairs;

namespace WireText.Tests.Checks.Mutants;

/// <summary>
/// Every slip of a soldering iron: a wire left out, a wire's end on a neighbouring lug, two wire ends of one part exchanged.
/// </summary>
internal static class WireMutants
{
    /// <summary>All of a circuit, in the order of its wires. A run over several lugs counts as single wires.</summary>
    public static IEnumerable<CircuitEdit> Of(Circuit circuit)
    {
        var places = LugOnLine.All(circuit).Where(place => place.Ends.Length == 1).ToList();
        return Removed(circuit).Concat(Moved(circuit, places)).Concat(Exchanged(circuit, places));
    }

    /// <summary>True for a slip that lines can say: no part's or cable's wire is left out, none goes to itself.</summary>
    public static bool CanBeWritten(Circuit circuit, CircuitEdit slip) =>
        slip switch
        {
            RemoveWire removed => circuit.Wires[removed.Wire].Kind == WireKind.Wire,
            MoveEnd moved => !circuit.Wires[moved.What.Ends[0].Wire].Touches(moved.Lug),
            _ => true,
        };

    /// <summary>The text of a circuit with a slip in its lines, as an author could have written it.</summary>
    public static string Written(Circuit circuit, CircuitEdit slip, string text) =>
        new PrintedRepair([.. LineEdit.Of(circuit, slip).Select(line => (line.Old, line.New.ToList()))]).ApplyTo(text);

    /// <summary>A mutant in words that are short and unlike those of all others.</summary>
    public static string NameOf(Circuit circuit, CircuitEdit mutant) =>
        mutant switch
        {
            RemoveWire removed => $"{Name(circuit, removed.Wire)} removed",
            MoveEnd moved =>
                $"{Name(circuit, moved.What.Ends[0].Wire)} moved from {circuit.NameOf(moved.What.LugIn(circuit))} to {circuit.NameOf(moved.Lug)}",
            ExchangeEnds exchanged =>
                $"{Name(circuit, exchanged.First)} and {Name(circuit, exchanged.Second)} exchanged",
            _ => throw new ArgumentOutOfRangeException(nameof(mutant), mutant, "this is no slip"),
        };

    private static IEnumerable<CircuitEdit> Removed(Circuit circuit) =>
        circuit.Wires.Where(wire => wire is { From: >= 0, To: >= 0 }).Select(wire => new RemoveWire(wire.Index));

    private static IEnumerable<CircuitEdit> Moved(Circuit circuit, List<LugOnLine> places) =>
        from place in places
        let at = place.LugIn(circuit)
        where !circuit.Lugs[at].IsLead
        from lug in LugNeighbours.Of(circuit, at)
        select new MoveEnd(place, lug);

    private static IEnumerable<CircuitEdit> Exchanged(Circuit circuit, List<LugOnLine> places) =>
        from first in places
        from second in places
        let lug = first.LugIn(circuit)
        let other = second.LugIn(circuit)
        where lug < other && circuit.Lugs[lug].Part == circuit.Lugs[other].Part && !first.SharesWireWith(second)
        select new ExchangeEnds(first, second);

    private static string Name(Circuit circuit, int wire) =>
        $"wire {circuit.NameOf(circuit.Wires[wire].From)} to {circuit.NameOf(circuit.Wires[wire].To)}";

    private static string Name(Circuit circuit, LugOnLine place) =>
        $"{circuit.NameOf(place.LugIn(circuit))} (of {Name(circuit, place.Ends[0].Wire)})";
}
