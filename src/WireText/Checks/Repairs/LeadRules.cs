using WireText.Circuits;

namespace WireText.Checks.Repairs;

/// <summary>What a line may not say of leads: a lead ends once, and two leads meet in a splice alone.</summary>
internal static class LeadRules
{
    /// <summary>False for a circuit that no lines can say.</summary>
    /// <param name="lugs">The lugs that an edit changed.</param>
    public static bool Allow(Circuit circuit, ReadOnlySpan<int> lugs)
    {
        foreach (var lug in lugs)
        {
            if (
                lug >= 0
                && circuit.Lugs[lug].IsLead
                && (circuit.Wires.Count(wire => wire.Touches(lug)) > 1 || MeetsALead(circuit, lug))
            )
            {
                return false;
            }
        }

        return true;
    }

    private static bool MeetsALead(Circuit circuit, int lead) =>
        circuit.Wires.Any(wire =>
            wire.Kind == WireKind.Wire
            && wire.Touches(lead)
            && (wire.From == wire.To || circuit.Lugs[wire.From == lead ? wire.To : wire.From].IsLead)
        );
}
