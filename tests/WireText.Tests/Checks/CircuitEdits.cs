using WireText.Circuits;

namespace WireText.Tests.Checks;

/// <summary>Circuits with wires added.</summary>
internal static class CircuitEdits
{
    /// <summary>Every bare metal lug that nothing is soldered to, wired to the sleeve.</summary>
    public static Circuit WithMetalGrounded(Circuit circuit) =>
        circuit
            .Lugs.Where(lug => lug.IsMetal && !circuit.Wires.Any(wire => wire.Touches(lug.Index)))
            .Aggregate(circuit, (made, lug) => made.With(lug.Index, made.Outputs[0].Sleeve));
}
