using WireText.Circuits;
using WireText.Electrical.Networks;

namespace WireText.Electrical.Solving;

/// <summary>The direct voltage that batteries and amplifiers leave between tip and sleeve.</summary>
public static class JackVoltage
{
    /// <summary>In volts, tip against sleeve, with the input of the amplifier as load; null when the network is too large to solve.</summary>
    /// <param name="opened">Branches taken out in thought, as indices into <see cref="Network.Branches"/>.</param>
    public static double? Of(Network network, State state, params IReadOnlyCollection<int> opened)
    {
        if (!network.Circuit.Elements.Any(element => element is Battery))
        {
            return 0;
        }

        var live = LiveNetwork.WithSupplies(network, state, opened);
        if (live.IsShort || live.IsOpen)
        {
            return 0;
        }

        var nodeOf = network.InContact(state);
        var edges = live
            .Branches.Select(branch => (branch.From, branch.To, branch.Inside.Ohms))
            .Append((LiveNetwork.Tip, LiveNetwork.Sleeve, network.Circuit.Surroundings.InputOhms))
            .ToList();
        if (DcSolver.Solve(live.NodeCount, edges) is not { } transfer)
        {
            return null;
        }

        var volts = 0.0;
        foreach (var branch in live.Branches)
        {
            // Both have their plus at From.
            volts +=
                EmfOf(network, nodeOf, branch.Source)
                / branch.Inside.Ohms
                * (transfer[branch.From] - transfer[branch.To]);
        }

        return volts;
    }

    private static double EmfOf(Network network, int[] nodeOf, Branch branch) =>
        network.Circuit.Elements[branch.Element] switch
        {
            Battery battery => battery.Volts,
            Amplifier amplifier when branch.Kind == BranchKind.AmplifierOutput => amplifier.IdleFraction
                * (Supply.VoltsOf(network, nodeOf, amplifier) ?? 0),
            _ => 0,
        };
}
