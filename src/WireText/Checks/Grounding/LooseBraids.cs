using WireText.Circuits;
using WireText.Electrical.Networks;
using WireText.Electrical.Situations;

namespace WireText.Checks.Grounding;

/// <summary>Braids of cables that come to no ground.</summary>
internal static class LooseBraids
{
    /// <summary>Those cut at both ends, and those on a net that holds no bare metal and never comes to the sleeve.</summary>
    public static IEnumerable<Cable> Of(CheckContext context, Network network) =>
        context.Circuit.Cables.Where(cable =>
            cable.Braid is { } braid && !IsGrounded(context, network, context.Circuit.Wires[braid])
        );

    /// <summary>True as well where the metal on its net is asked itself.</summary>
    private static bool IsGrounded(CheckContext context, Network network, Wire braid)
    {
        var lug = Math.Max(braid.From, braid.To);
        return lug >= 0
            && context.Circuit.Nets is var nets
            && (
                nets.Members[nets.OneNet[lug]].Any(other => context.Circuit.Lugs[other].IsMetal)
                || ContactReport.Between(network, nets.OneNet[lug], network.Sleeve).Relation != ContactRelation.Never
            );
    }
}
