using WireText.Circuits;
using WireText.Electrical.Networks;

namespace WireText.Electrical.Solving;

/// <summary>The direct voltage that batteries and amplifiers leave, with the input of the amplifier on the jack.</summary>
public static class DirectVoltage
{
    /// <summary>In volts, tip against sleeve; null when the network is too large to solve.</summary>
    /// <param name="opened">Branches taken out in thought, as indices into <see cref="Network.Branches"/>.</param>
    public static double? AtJack(Network network, State state, params IReadOnlyCollection<int> opened) =>
        Between(network, state, (network.Tip, network.Sleeve), opened);

    /// <summary>In volts, one net against another, 0 where no direct current joins them; null when the network is too large to solve.</summary>
    /// <param name="opened">Branches taken out in thought, as indices into <see cref="Network.Branches"/>.</param>
    public static double? Between(
        Network network,
        State state,
        (int Net, int Against) probe,
        params IReadOnlyCollection<int> opened
    )
    {
        if (!network.Circuit.Elements.Any(element => element is Battery))
        {
            return 0;
        }

        var live = LiveNetwork.WithSupplies(network, state, probe, opened);
        if (live.IsShort || live.IsOpen)
        {
            return 0;
        }

        var nodeOf = network.InContact(state);
        var edges = live.Branches.Select(branch => (branch.From, branch.To, branch.Inside.Ohms)).ToList();
        if (live.Load is var (from, to))
        {
            edges.Add((from, to, network.Circuit.Surroundings.InputOhms));
        }

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
