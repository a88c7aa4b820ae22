using System.Collections.Immutable;

namespace WireText.Circuits;

/// <summary>A circuit seen from one of its jacks: the same parts, nets and states, with that jack first.</summary>
/// <remarks>
/// What is computed and judged looks from the first jack. Each further jack is looked from in turn: its amplifier alone is
/// plugged in, and at the others nothing loads the signal.
/// </remarks>
public static class JackView
{
    /// <summary>The jacks that something can be heard at: the first, and each other whose tip is wired; in their order.</summary>
    public static ImmutableArray<OutputJack> UsedJacks(this Circuit circuit) =>
        [.. circuit.Outputs.Where((jack, i) => i == 0 || IsWired(circuit, jack))];

    /// <summary>The same circuit with that jack first and the others in their order behind it.</summary>
    /// <param name="jack">One of its jacks.</param>
    public static Circuit SeenFrom(this Circuit circuit, OutputJack jack) =>
        circuit.Outputs[0] == jack
            ? circuit
            : circuit with
            {
                Outputs = [jack, .. circuit.Outputs.Where(other => other != jack)],
            };

    /// <summary>What is expected at the jack that the circuit is seen from.</summary>
    public static IEnumerable<Expectation> ExpectationsHere(this Circuit circuit) =>
        circuit.Expectations.Where(one => one.Jack is null || one.Jack == circuit.Outputs[0].Part);

    /// <summary>The name of the jack that the circuit is seen from; null where it has no other: one needs no name.</summary>
    public static string? JackToName(this Circuit circuit) =>
        circuit.UsedJacks().Length > 1 ? circuit.Parts[circuit.Outputs[0].Part].Name : null;

    /// <summary>True when the tip is on a net with another part, or with its own sleeve.</summary>
    private static bool IsWired(Circuit circuit, OutputJack jack) =>
        circuit.Nets.SameNet(jack.Tip, jack.Sleeve)
        || circuit.Nets.Members[circuit.Nets.OneNet[jack.Tip]].Any(lug => circuit.Lugs[lug].Part != jack.Part);
}
