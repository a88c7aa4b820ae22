using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Electrical.Grounds;

namespace WireText.Checks.Grounding;

/// <summary>Where a ground wire can go, and from where.</summary>
internal static class GroundPlaces
{
    /// <summary>A case or plate that is soldered to the sleeve; the sleeve itself when there is none.</summary>
    public static string Nearest(CheckContext context, int lug)
    {
        var circuit = context.Circuit;
        var grounded = context.GroundedMetal;
        if (grounded.IsEmpty)
        {
            return circuit.NameOf(circuit.Outputs[0].Sleeve);
        }

        // Declared next to each other mostly means mounted next to each other.
        var part = circuit.Lugs[lug].Part;
        var after = FirstFrom(grounded, part);
        if (after == 0)
        {
            return grounded[0].Name;
        }

        var before = FirstFrom(grounded, grounded[after - 1].Part);
        var isBehindNearer = after < grounded.Length && grounded[after].Part - part < part - grounded[before].Part;
        return grounded[isBehindNearer ? after : before].Name;
    }

    /// <summary>Where the first lug of a part, or of one declared behind it, stands in a list in the order of parts.</summary>
    private static int FirstFrom(ImmutableArray<Lug> lugs, int part)
    {
        var (low, high) = (0, lugs.Length);
        while (low < high)
        {
            var middle = (low + high) / 2;
            (low, high) = lugs[middle].Part < part ? (middle + 1, high) : (low, middle);
        }

        return low;
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
