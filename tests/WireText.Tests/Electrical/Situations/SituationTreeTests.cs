using System.Collections.Immutable;
using CsCheck;
using WireText.Electrical.Networks;
using WireText.Electrical.Situations;
using WireText.Testing;

namespace WireText.Tests.Electrical.Situations;

public class SituationTreeTests
{
    private static readonly Gen<double> Travel = Gen.OneOf(
        Gen.Const(0.0),
        Gen.Const(3.0),
        Gen.Const(5.0),
        Gen.Const(10.0)
    );

    [Fact]
    public void Situations_OfRandomCircuits_HoldEveryStateOnceWithItsLivePart() =>
        Samples.Each(
            RandomCircuits.Any,
            500,
            made =>
            {
                var network = made.ToNetwork();
                var tree = SituationTree.Of(network);
                Assert.True(tree.IsComplete);

                foreach (var state in RandomCircuits.StatesOf(network))
                {
                    var situation = Assert.Single(tree.Situations, situation => situation.State.Holds(state));
                    var nodeOf = network.InContact(state);
                    Assert.Equal(nodeOf[network.Tip] == nodeOf[network.Sleeve], situation.IsShort);
                    Assert.Equal(LivePart.OfWholeTracks(network, state), situation.Live);
                }
            }
        );

    [Fact]
    public void Situations_AtAnyDialSetting_HaveTheLivePartOfTheirStates() =>
        Samples.Each(
            Gen.Select(RandomCircuits.Any, Travel.Array[8]),
            500,
            (made, travels) =>
            {
                var network = made.ToNetwork();
                ImmutableArray<double> turned = [.. travels.Take(network.Circuit.Dials.Length)];
                var tree = SituationTree.Of(network);

                foreach (var state in RandomCircuits.StatesOf(network))
                {
                    var situation = tree.Situations.First(situation => situation.State.Holds(state));
                    Assert.Equal(
                        StructuralOutcomes.Of(network, state.At(turned)),
                        StructuralOutcomes.Of(network, situation.State.At(turned))
                    );
                    Assert.Equal(
                        LivePart.Of(network, state.At(turned)),
                        LivePart.Of(network, situation.State.At(turned))
                    );
                }
            }
        );

    [Fact]
    public void TenCoilCutsBehindARotary_12288States_Make22Situations()
    {
        // Each of ten pickups lies between a throw and the sleeve; two of the twelve throws are empty: 10 * 2 + 2.
        var circuit = new NetCircuit(24);
        for (var i = 0; i < 10; i++)
        {
            Pickup(circuit, hot: 4 + (2 * i), middle: 5 + (2 * i));
        }

        int[] throws = [.. Enumerable.Range(0, 10).Select(i => 4 + (2 * i)), 2, 3];
        circuit.Switch([.. throws.Select(net => new[] { new[] { NetCircuit.Tip, net } })]);

        Assert.Equal(22, SituationTree.Of(circuit.ToNetwork()).Situations.Length);
    }

    [Fact]
    public void TenCoilCutsInParallel_AllHeardTogether_Make1024Situations()
    {
        Assert.Equal(1024, SituationTree.Of(ParallelCuts(10)).Situations.Length);
    }

    [Fact]
    public void SeventeenCoilCutsInParallel_BeyondTheLimit_AreNamed()
    {
        var tree = SituationTree.Of(ParallelCuts(17));

        Assert.False(tree.IsComplete);
        Assert.Empty(tree.Situations);
        Assert.Equal(17, tree.Crowding.Length);
    }

    [Fact]
    public void AMuteAcrossTheJack_IsAskedFirst_AndHidesTheRest()
    {
        // Pressed, it makes every other control inert: one situation for it, and the cut's two while it is up.
        var circuit = new NetCircuit(4);
        Pickup(circuit, hot: NetCircuit.Tip, middle: 3);
        circuit.Switch(
            [],
            [
                [NetCircuit.Tip, NetCircuit.Sleeve],
            ]
        );

        var situations = SituationTree.Of(circuit.ToNetwork()).Situations;

        Assert.Equal(
            [(null, 1), (0, 0), (1, 0)],
            situations.Select(situation => (situation.State[0], situation.State[1]))
        );
        Assert.Equal([true, false, false], situations.Select(situation => situation.IsShort));
    }

    private static Network ParallelCuts(int count)
    {
        var circuit = new NetCircuit(2 + count);
        for (var i = 0; i < count; i++)
        {
            Pickup(circuit, hot: NetCircuit.Tip, middle: 2 + i);
        }

        return circuit.ToNetwork();
    }

    /// <summary>Two coils in series with a cut that joins their link to the sleeve.</summary>
    private static void Pickup(NetCircuit circuit, int hot, int middle) =>
        circuit
            .Coil(middle, hot)
            .Coil(NetCircuit.Sleeve, middle)
            .Switch(
                [],
                [
                    [middle, NetCircuit.Sleeve],
                ]
            );
}
