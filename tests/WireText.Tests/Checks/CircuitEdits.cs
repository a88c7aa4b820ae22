using System.Collections.Immutable;
using WireText.Circuits;

namespace WireText.Tests.Checks;

/// <summary>Circuits with one wire changed, their nets worked out anew.</summary>
internal static class CircuitEdits
{
    public static Circuit Without(Circuit circuit, Wire wire) => Rewired(circuit, wire with { From = -1, To = -1 });

    /// <summary>The wire with one end on another lug.</summary>
    public static Circuit Moved(Circuit circuit, Wire wire, int from, int to) =>
        Rewired(circuit, wire.From == from ? wire with { From = to } : wire with { To = to });

    /// <summary>A new wire between two lugs, written where another stands.</summary>
    public static Circuit With(Circuit circuit, int from, int to)
    {
        var wire = circuit.Wires[0] with { Index = circuit.Wires.Length, Id = "new", From = from, To = to };
        var joins = circuit.Joins.Add(
            new Join(circuit.Joins.Length, JoinKind.Wire, from, to, wire.Index, wire.DeclaredAt)
        );
        return circuit with
        {
            Wires = circuit.Wires.Add(wire),
            Joins = joins,
            Nets = NetsOf(circuit.Lugs.Length, joins),
        };
    }

    /// <summary>Every bare metal lug that nothing is soldered to, wired to the sleeve.</summary>
    public static Circuit WithMetalGrounded(Circuit circuit) =>
        circuit
            .Lugs.Where(lug => lug.IsMetal && !circuit.Wires.Any(wire => wire.Touches(lug.Index)))
            .Aggregate(circuit, (made, lug) => With(made, lug.Index, made.Outputs[0].Sleeve));

    private static Circuit Rewired(Circuit circuit, Wire wire)
    {
        var joins = circuit
            .Joins.Where(join => join.Wire != wire.Index || wire.From >= 0)
            .Select(join => join.Wire == wire.Index ? join with { From = wire.From, To = wire.To } : join)
            .ToImmutableArray();
        return circuit with
        {
            Wires = circuit.Wires.SetItem(wire.Index, wire),
            Joins = joins,
            Nets = NetsOf(circuit.Lugs.Length, joins),
        };
    }

    private static NetMap NetsOf(int lugs, ImmutableArray<Join> joins)
    {
        var sets = new DisjointSets(lugs);
        Unite(touching: false);
        var soldered = sets.Number();
        Unite(touching: true);
        var nets = sets.Number();
        var members = Enumerable.Range(0, lugs).GroupBy(lug => nets[lug]).OrderBy(net => net.Key);
        return new NetMap(nets, soldered, [.. members.Select(net => net.ToImmutableArray())]);

        void Unite(bool touching)
        {
            foreach (var join in joins.Where(join => join.Kind == JoinKind.Touch == touching))
            {
                sets.Unite(join.From, join.To);
            }
        }
    }
}
