using WireText.Checks.Repairs;
using WireText.Circuits;

namespace WireText.Tests.Checks.Mutants.Harnesses;

/// <summary>A slip in words that slips of the same kind share: which lugs of which sort of part, not of which part.</summary>
internal static class SlipText
{
    public static string Of(Circuit circuit, CircuitEdit slip) =>
        slip switch
        {
            RemoveWire removed => Removed(circuit, circuit.Wires[removed.Wire]),
            MoveEnd moved => $"an end moved, {Between(circuit, moved.What.LugIn(circuit), moved.Lug)}",
            ExchangeEnds exchanged =>
                $"ends exchanged, {Between(circuit, exchanged.First.LugIn(circuit), exchanged.Second.LugIn(circuit))}",
            _ => throw new ArgumentOutOfRangeException(nameof(slip), slip, "this is no slip"),
        };

    private static string Removed(Circuit circuit, Wire wire)
    {
        var ends = new[] { Named(circuit, wire.From), Named(circuit, wire.To) }.Order(StringComparer.Ordinal);
        return $"left out, {string.Join(" to ", ends)}";
    }

    private static string Between(Circuit circuit, int one, int other)
    {
        var (sort, names) = (SortOf(circuit, one), new[] { LugOf(circuit, one), LugOf(circuit, other) });
        if (SortOf(circuit, other) != sort)
        {
            return $"pot and coil switch on it: {string.Join(" and ", new[] { Named(circuit, one), Named(circuit, other) }.Order(StringComparer.Ordinal))}";
        }

        if (sort is not ("selector" or "coil switch" or "capacitor switch"))
        {
            return $"{sort} {string.Join(" and ", names.Order(StringComparer.Ordinal))}";
        }

        var (first, second) = (names[0], names[1]);
        return $"{sort}: "
            + (
                first[0] != second[0] ? "lugs of two poles"
                : first.EndsWith('0') || second.EndsWith('0') ? "common and throw of a pole"
                : "throws of a pole"
            );
    }

    private static string Named(Circuit circuit, int lug) =>
        SortOf(circuit, lug) is "selector" or "coil switch" or "capacitor switch"
            ? $"{SortOf(circuit, lug)} {(LugOf(circuit, lug).EndsWith('0') ? "common" : "throw")}"
            : $"{SortOf(circuit, lug)} {LugOf(circuit, lug)}".TrimEnd();

    private static string SortOf(Circuit circuit, int lug)
    {
        var part = circuit.PartOf(circuit.Lugs[lug]);
        return part.Kind switch
        {
            "pot" when LugOf(circuit, lug)[0] is 'A' or 'B' => "coil switch",
            "pot" when part.Name.StartsWith("vol", StringComparison.Ordinal) => "volume",
            "pot" when part.Name.StartsWith("tone", StringComparison.Ordinal) => "tone",
            "pot" => "blend",
            "switch" when part.Name == "sel" => "selector",
            "switch" when part.Name == "voice" => "capacitor switch",
            "switch" => "coil switch",
            "button" when part.Name == "mute" => "mute",
            "button" => "tone lift",
            var kind => kind,
        };
    }

    /// <summary>The lug's own name; empty for a part that is its own lug.</summary>
    private static string LugOf(Circuit circuit, int lug)
    {
        var (name, part) = (circuit.NameOf(lug), circuit.PartOf(circuit.Lugs[lug]).Name);
        return name.Length > part.Length ? name[(part.Length + 1)..] : "";
    }
}
