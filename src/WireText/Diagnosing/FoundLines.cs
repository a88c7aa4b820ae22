using WireText.Circuits;
using WireText.Quantities;

namespace WireText.Diagnosing;

/// <summary>Writes what was found, and where, as a <c>found</c> line has it.</summary>
public static class FoundLines
{
    /// <summary>What stands before the colon.</summary>
    public static string Where(Circuit circuit, FoundPlace place) =>
        place switch
        {
            FoundPast past => past.Worked ? "worked" : "fresh",
            FoundAtPlug plug => JackOf(circuit, plug)
                + StateOf(circuit, plug.State, dialsAt: null, StateText.RestWord)
                + (plug.Turning is { } dial ? $" turning {circuit.Dials[dial].Name}" : ""),
            FoundAtMetal metal => $"sleeve to {circuit.NameOf(metal.Metal)}",
            FoundBetween between =>
                $"{StateOf(circuit, between.State, MiddleTravel, "")} {circuit.NameOf(between.From)} to {circuit.NameOf(between.To)}".TrimStart(),
            FoundAtJoint joint => $"joint {circuit.NameOf(joint.Lug)} of {circuit.NameOf(OtherEnd(circuit, joint))}",
            FoundAlone alone => $"{circuit.Elements[alone.Element].Name} alone",
            FoundAtCell cell => $"cell {circuit.Parts[circuit.Elements[cell.Element].Part].Name}",
            _ => "lead",
        };

    /// <summary>A reading in as many figures: <c>7.05k</c>, <c>0</c>, <c>open</c>.</summary>
    public static string Reading(double ohms, int figures = 3) =>
        double.IsInfinity(ohms) || ohms > BenchOdds.OpenOhms ? "open"
        : ohms <= BenchOdds.ZeroOhms ? "0"
        : ValueText.Label(ohms, Unit.Ohm, figures);

    private const double MiddleTravel = 5;

    private static string JackOf(Circuit circuit, FoundAtPlug plug) =>
        circuit.Outputs.Length > 1 && plug.Jack is { } jack && jack != circuit.Outputs[0].Part
            ? $"{circuit.Parts[jack].Name}: "
            : "";

    /// <summary>What differs from rest.</summary>
    /// <param name="dialsAt">Where dials are without being named; null for where they rest.</param>
    private static string StateOf(Circuit circuit, State state, double? dialsAt, string none)
    {
        var controls = circuit
            .Controls.Where(control => state[control.Index] != control.Rest)
            .Select(control => StateText.Of(control, state[control.Index] ?? control.Rest));
        var dials = circuit
            .Dials.Where(dial => state.Travels[dial.Index] != (dialsAt ?? dial.Rest))
            .Select(dial => StateText.Of(dial, state.Travels[dial.Index]));
        var text = string.Join(' ', controls.Concat(dials));
        return text.Length == 0 ? none : text;
    }

    /// <summary>A lug besides the joint's own where the same run ends.</summary>
    private static int OtherEnd(Circuit circuit, FoundAtJoint joint)
    {
        var wire = circuit.Wires[joint.Wire];
        return wire.From == joint.Lug ? wire.To : wire.From;
    }
}
