using WireText.Circuits;
using WireText.Electrical.Networks;

namespace WireText.Checks;

/// <summary>The coils that lead to the ring of a jack as others lead to its tip: a plug with a ring would bring them out.</summary>
internal static class RingSignal
{
    /// <summary>Coils that hear strings and have a way to the ring, as elements; none where a battery is switched by it.</summary>
    public static HashSet<int> CoilsOn(StudyContext context)
    {
        var (circuit, network) = (context.Circuit, context.Study.Network);
        var nets = circuit.Nets.OneNet;
        if (
            circuit.Outputs[0].Ring is not { } ring
            || nets[ring] == network.Tip
            || nets[ring] == network.Sleeve
            || circuit.Elements.OfType<Battery>().Any(battery => battery.Ends.Any(end => nets[end] == nets[ring]))
        )
        {
            return [];
        }

        var reached = new Reach(network).From(nets[ring], network.Sleeve);
        return
        [
            .. circuit
                .Elements.OfType<Coil>()
                .Where(coil => coil.HearsStrings && coil.Ends.Any(end => reached.Contains(nets[end])))
                .Select(coil => coil.Index),
        ];
    }
}
