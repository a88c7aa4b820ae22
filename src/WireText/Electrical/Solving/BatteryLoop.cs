using WireText.Circuits;
using WireText.Electrical.Networks;

namespace WireText.Electrical.Solving;

/// <summary>Whether a battery is drawn from.</summary>
public static class BatteryLoop
{
    /// <summary>
    /// True when a loop through the battery holds anything that takes a direct current: a resistance, a coil, an amplifier's
    /// supply; or when its own poles are joined. False for an element that is no battery.
    /// </summary>
    /// <param name="state">A control at any stays open.</param>
    public static bool IsClosed(Network network, State state, Battery battery)
    {
        var dials = network.DialsOf(state);
        var nodeOf = network.AtTheDials(state);
        var nets = network.Circuit.Nets.OneNet;
        var (plus, minus) = (nodeOf[nets[battery.Plus]], nodeOf[nets[battery.Minus]]);
        if (plus == minus)
        {
            return true;
        }

        var takers = network
            .Branches.Where(branch =>
                branch.Kind is not (BranchKind.Capacitor or BranchKind.AmplifierOutput or BranchKind.Battery)
                && dials.StateOf(branch) == SectionState.Kept
            )
            .Select(branch => (A: nodeOf[branch.From], B: nodeOf[branch.To]))
            .Concat(
                network
                    .Circuit.Elements.OfType<Amplifier>()
                    .Where(amplifier => amplifier.Supply is not null)
                    .Select(amplifier => (nodeOf[nets[amplifier.Supply!.Value]], nodeOf[nets[amplifier.Common]]))
            )
            .ToList();
        var batteries = network
            .Branches.Where(branch => branch.Kind == BranchKind.Battery && branch.Element != battery.Index)
            .Select(branch => (nodeOf[branch.From], nodeOf[branch.To]));
        (int A, int B)[] edges = [(plus, minus), .. takers, .. batteries];
        var blockOf = BiconnectedBlocks.Label(network.NetCount, edges);
        return Enumerable.Range(1, takers.Count).Any(edge => blockOf[edge] == blockOf[0]);
    }
}
