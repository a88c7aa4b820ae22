using CsCheck;
using WireText.Circuits;
using WireText.Electrical.Networks;

namespace WireText.Tests.Electrical;

/// <summary>Random networks, small enough to try every state of.</summary>
internal static class RandomCircuits
{
    private const int MaxNets = 7;

    private static readonly Gen<int> Net = Gen.Int[0, MaxNets - 1];

    private static readonly Gen<Func<NetCircuit, NetCircuit>> Part = Gen.OneOf(
        Gen.Select(Net, Net).Select<(int, int), Func<NetCircuit, NetCircuit>>(n => c => c.Coil(n.Item1, n.Item2)),
        Gen.Select(Net, Net).Select<(int, int), Func<NetCircuit, NetCircuit>>(n => c => c.Resistor(n.Item1, n.Item2)),
        Gen.Select(Net, Net).Select<(int, int), Func<NetCircuit, NetCircuit>>(n => c => c.Capacitor(n.Item1, n.Item2)),
        Gen.Select(Net, Net).Select<(int, int), Func<NetCircuit, NetCircuit>>(n => c => c.Inductor(n.Item1, n.Item2)),
        Gen.Select(Net, Net, Net, Gen.Bool)
            .Select<(int, int, int, bool), Func<NetCircuit, NetCircuit>>(n =>
                c => c.Pot(n.Item1, n.Item2, n.Item3, n.Item4 ? 10 : null)
            ),
        Gen.Select(Net, Net, Net)
            .Select<(int, int, int), Func<NetCircuit, NetCircuit>>(n => c => c.Amplifier(n.Item1, n.Item2, n.Item3))
    );

    private static readonly Gen<int[][]> Position = Net.Array[2, 3].Array[0, 2];

    private static readonly Gen<int[][][]> Switch = Position.Array[2, 3];

    /// <summary>Up to eight parts and four switches between seven nets.</summary>
    public static readonly Gen<NetCircuit> Any = Gen.Select(Part.Array[0, 8], Switch.Array[0, 4])
        .Select(
            (parts, switches) =>
            {
                var circuit = parts.Aggregate(new NetCircuit(MaxNets), (made, add) => add(made));
                return switches.Aggregate(circuit, (made, positions) => made.Switch(positions));
            }
        );

    /// <summary>Every state of a network: the product of the positions of all controls.</summary>
    public static IEnumerable<State> StatesOf(Network network)
    {
        IEnumerable<State> states = [State.Rest(network.Circuit)];
        foreach (var control in network.Circuit.Controls)
        {
            states = states.SelectMany(state =>
                Enumerable.Range(0, control.Positions.Length).Select(position => state.At(control.Index, position))
            );
        }

        return states;
    }

    /// <summary>The state with every control in its last position and the dials at the first of some travels.</summary>
    public static State LastOf(Network network, IEnumerable<double> travels) =>
        network
            .Circuit.Controls.Aggregate(
                State.Rest(network.Circuit),
                (state, control) => state.At(control.Index, control.Positions.Length - 1)
            )
            .At([.. travels.Take(network.Circuit.Dials.Length)]);
}
