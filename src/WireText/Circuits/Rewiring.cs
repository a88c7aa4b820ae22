using System.Collections.Immutable;
using WireText.Text;

namespace WireText.Circuits;

/// <summary>One end of a stretch of wire.</summary>
/// <param name="Wire">Index into <see cref="Circuit.Wires"/>.</param>
public readonly record struct WireEnd(int Wire, bool IsFrom)
{
    public static IEnumerable<WireEnd> BothOf(Wire wire) =>
        [new(wire.Index, IsFrom: true), new(wire.Index, IsFrom: false)];

    /// <summary>The lug that the end is on; -1 for the end of a braid that is cut back.</summary>
    public int LugIn(Circuit circuit) => IsFrom ? circuit.Wires[Wire].From : circuit.Wires[Wire].To;

    /// <summary>Where the wire's line names that lug; null where it does not.</summary>
    public SourceLocation? PlaceIn(Circuit circuit) => IsFrom ? circuit.Wires[Wire].FromAt : circuit.Wires[Wire].ToAt;
}

/// <summary>Circuits with a wire changed: the same parts and states, other nets. Wires keep their indices.</summary>
public static class Rewiring
{
    /// <summary>Each end on the lug beside it.</summary>
    public static Circuit WithEnds(this Circuit circuit, params ReadOnlySpan<(WireEnd End, int Lug)> moves)
    {
        var wires = circuit.Wires.ToBuilder();
        foreach (var (end, lug) in moves)
        {
            // No line names the new lug at that end.
            wires[end.Wire] = end.IsFrom
                ? wires[end.Wire] with
                {
                    From = lug,
                    FromAt = null,
                }
                : wires[end.Wire] with
                {
                    To = lug,
                    ToAt = null,
                };
        }

        var joins = circuit.Joins.Select(join =>
            join.Wire < 0 ? join : join with { From = wires[join.Wire].From, To = wires[join.Wire].To }
        );
        return circuit.WithNetsOf(wires.ToImmutable(), [.. joins]);
    }

    /// <summary>The wire stays in the list, with no lug at either end.</summary>
    public static Circuit Without(this Circuit circuit, int wire) =>
        circuit.WithNetsOf(
            circuit.Wires.SetItem(wire, circuit.Wires[wire] with { From = -1, FromAt = null, To = -1, ToAt = null }),
            circuit.Joins.RemoveAll(join => join.Wire == wire)
        );

    /// <summary>One more wire, the last in the list. No line says it: it stands where the jack or the first part is named.</summary>
    public static Circuit With(this Circuit circuit, int from, int to)
    {
        var index = circuit.Wires.Length;
        var at = circuit.Parts[circuit.Outputs.IsEmpty ? 0 : circuit.Outputs[0].Part].NameAt;
        var wire = new Wire(
            index,
            $"{circuit.NameOf(from)}--{circuit.NameOf(to)}~new",
            WireKind.Wire,
            from,
            to,
            Colour: null,
            Run: circuit.Wires.Select(other => other.Run).DefaultIfEmpty(-1).Max() + 1,
            Cable: null,
            IsSleeved: false,
            LengthMetres: null,
            Gauge: null,
            at
        );
        var join = new Join(circuit.Joins.Length, JoinKind.Wire, from, to, index, at);
        return circuit.WithNetsOf(circuit.Wires.Add(wire), circuit.Joins.Add(join));
    }

    private static Circuit WithNetsOf(this Circuit circuit, ImmutableArray<Wire> wires, ImmutableArray<Join> joins) =>
        circuit with
        {
            Wires = wires,
            Joins = joins,
            Nets = NetBuilder.Build(circuit.Lugs.Length, joins),
        };
}
