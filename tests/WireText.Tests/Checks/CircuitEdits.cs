using WireText.Checks;
using WireText.Circuits;
using WireText.Text;

namespace WireText.Tests.Checks;

/// <summary>Circuits with wires added.</summary>
internal static class CircuitEdits
{
    /// <summary>Every bare metal lug that nothing is soldered to, wired to the sleeve.</summary>
    public static Circuit WithMetalGrounded(Circuit circuit) =>
        circuit
            .Lugs.Where(lug => lug.IsMetal && !circuit.Wires.Any(wire => wire.Touches(lug.Index)))
            .Aggregate(circuit, (made, lug) => made.With(lug.Index, made.Outputs[0].Sleeve));

    /// <summary>
    /// What is found with all metal grounded, but nothing about building: on the bench a chain of wires all ends on one lug.
    /// </summary>
    public static List<Finding> FindApartFromBuilding(Circuit circuit) =>
        [
            .. Checked
                .Findings(WithMetalGrounded(circuit))
                .Where(finding => FindingCatalogue.Find(finding.Id)?.Group != FindingGroup.Building),
        ];
}
