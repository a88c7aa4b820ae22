using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Electrical.Networks;

namespace WireText.Checks.Sound;

/// <summary>How far the signal of a pickup gets that is heard nowhere.</summary>
/// <param name="Name">The pickup, or the only coil of it that is silent.</param>
/// <param name="Lead">The lead that comes neither to the tip nor, if it is a ground, to the sleeve; null when both do.</param>
/// <param name="Switches">The switches that the lead comes to, or else the pots; without such a lead, those on the pickup's own leads.</param>
internal sealed record LostSignal(Part Pickup, string Name, int? Lead, ImmutableArray<Part> Switches)
{
    /// <summary>The same for pickups whose signal ends in the same place.</summary>
    public string Key => Switches.IsEmpty ? Name : string.Join(' ', Switches.Select(part => part.Name));

    public static LostSignal Of(StudyContext context, ImmutableArray<Coil> silent)
    {
        var circuit = context.Circuit;
        var pickup = circuit.Parts[silent[0].Part];
        var isWhole = pickup.Elements.Count(index => circuit.Elements[index] is Coil) == silent.Length;
        var lead = LostLead(context, silent[0]);
        var nets = lead is null
            ? silent.SelectMany(coil => coil.Ends).Select(end => circuit.Nets.OneNet[end]).ToHashSet()
            : ReachOf(context, lead.Value, silent[0]);
        nets.Remove(context.Study.Network.Sleeve);
        var passed = circuit
            .Parts.Where(part => part.Lugs.Any(lug => nets.Contains(circuit.Nets.OneNet[lug])))
            .ToList();
        var switches = passed.FindAll(part => !part.Controls.IsEmpty);
        return new LostSignal(
            pickup,
            isWhole ? pickup.Name : silent[0].Name,
            lead,
            [.. switches.Count > 0 ? switches : passed.FindAll(part => !part.Dials.IsEmpty)]
        );
    }

    private static int? LostLead(StudyContext context, Coil coil)
    {
        var network = context.Study.Network;
        foreach (var end in coil.Ends)
        {
            var net = context.Circuit.Nets.OneNet[end];
            if (net != network.Sleeve && !ComesToTip(end) && !(context.Sides.IsGroundLike(end) && ComesToSleeve(net)))
            {
                return end;
            }
        }

        return null;

        bool ComesToTip(int end) =>
            ReachOf(context, end, coil) is var reached
            && context.Circuit.Outputs.Any(jack => reached.Contains(context.Circuit.Nets.OneNet[jack.Tip]));
        bool ComesToSleeve(int net) => new Reach(network).From(net, without: coil.Index).Contains(network.Sleeve);
    }

    /// <summary>The nets that a lead comes to over elements and possible contacts, but not over its own coil or the sleeve.</summary>
    private static HashSet<int> ReachOf(StudyContext context, int lead, Coil coil) =>
        new Reach(context.Study.Network).From(
            context.Circuit.Nets.OneNet[lead],
            stop: context.Study.Network.Sleeve,
            without: coil.Index
        );
}
