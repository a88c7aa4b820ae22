using System.Collections.Immutable;
using WireText.Checks.Building;
using WireText.Circuits;

namespace WireText.Building;

/// <summary>Finds every joint of a circuit, in the order of its lugs.</summary>
internal static class JointFinder
{
    public static IEnumerable<Joint> Find(Circuit circuit)
    {
        foreach (var lug in circuit.Lugs)
        {
            ImmutableArray<Wire> wires = [.. circuit.Wires.Where(wire => wire.Touches(lug.Index))];
            if (!IsSoldered(lug, wires))
            {
                continue;
            }

            foreach (var joint in Parted(circuit, lug, wires))
            {
                yield return new Joint(lug.Index, [.. joint.Select(wire => wire.Index)]);
            }
        }
    }

    /// <summary>True for a wire that is soldered to a part which heat harms, or is its own lead.</summary>
    public static bool CarriesHeatToAPart(Circuit circuit, Wire wire) =>
        IsOfSensitivePart(circuit, wire.From) || IsOfSensitivePart(circuit, wire.To);

    /// <summary>A lead is its first wire itself; a second one is soldered to it.</summary>
    private static bool IsSoldered(Lug lug, ImmutableArray<Wire> wires) => wires.Length > (lug.IsLead ? 1 : 0);

    /// <summary>
    /// One joint; on a case, one for each run. There the ends that heat harms are one, made after the others: a second touch of
    /// the iron on the same metal would heat the first again.
    /// </summary>
    private static IEnumerable<IEnumerable<Wire>> Parted(Circuit circuit, Lug lug, ImmutableArray<Wire> wires) =>
        Conductors.TakesManyJoints(lug)
            ? wires.GroupBy(wire =>
                CarriesHeatToAPart(circuit, wire) ? (Run: -1, WireKind.PartLead) : (wire.Run, wire.Kind)
            )
            : [wires];

    private static bool IsOfSensitivePart(Circuit circuit, int lug) =>
        lug >= 0 && circuit.PartOf(circuit.Lugs[lug]).IsHeatSensitive;
}
