using WireText.Electrical.Grounds;

namespace WireText.Checks.Grounding;

/// <summary>Where a ground wire can go, and from where.</summary>
internal static class GroundPlaces
{
    /// <summary>A case or plate that is soldered to the sleeve; the sleeve itself when there is none.</summary>
    public static string Nearest(CheckContext context, int lug)
    {
        var circuit = context.Circuit;
        var sleeve = circuit.Outputs[0].Sleeve;
        var grounded = circuit.Lugs.Where(other =>
            other.IsMetal && !other.IsLead && !other.IsInner && circuit.Nets.SameSolder(other.Index, sleeve)
        );

        // Declared next to each other mostly means mounted next to each other.
        var nearest = grounded.MinBy(other => Math.Abs(other.Part - circuit.Lugs[lug].Part));
        return nearest?.Name ?? circuit.NameOf(sleeve);
    }

    /// <summary>The lug of a net that a new wire starts at: one that is no lead, unless the lead is still free.</summary>
    public static string Start(CheckContext context, MetalNet metal)
    {
        var circuit = context.Circuit;
        var lug = metal
            .Lugs.Concat(circuit.Nets.Members[metal.Net])
            .FirstOrDefault(lug => !circuit.Lugs[lug].IsLead || !context.IsJointed(lug), metal.Lugs[0]);
        return circuit.NameOf(lug);
    }

    /// <summary>A line that grounds a net of metal.</summary>
    public static string Line(CheckContext context, MetalNet metal) =>
        WireLines.Line(Start(context, metal), Nearest(context, metal.Lugs[0]), WireLines.GroundColour);
}
