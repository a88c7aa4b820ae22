using CsCheck;
using WireText.Circuits;
using WireText.Electrical.Networks;
using WireText.Electrical.Situations;
using WireText.Testing;

namespace WireText.Tests.Electrical.Networks;

public class LivePartTests
{
    private static readonly Gen<double> Travel = Gen.OneOf(
        Gen.Const(0.0),
        Gen.Const(3.0),
        Gen.Const(5.0),
        Gen.Const(10.0)
    );

    [Fact]
    public void LivePart_OfRandomCircuits_IsWhatSimplePathsFind() =>
        Samples.Each(
            Gen.Select(RandomCircuits.Any, Travel.Array[8]),
            1000,
            (made, travels) =>
            {
                var network = made.ToNetwork();
                var state = RandomCircuits.LastOf(network, travels);

                Assert.Equal(SimplePaths.LiveBranches(network, state), LivePart.Of(network, state));
            }
        );

    [Fact]
    public void LivePart_OfAChainOfTenThousandParts_IsAllOfIt()
    {
        const int Parts = 10_000;
        var circuit = new NetCircuit(Parts + 1);
        circuit.Resistor(NetCircuit.Tip, 2);
        for (var net = 2; net < Parts; net++)
        {
            circuit.Resistor(net, net + 1);
        }

        var network = circuit.Resistor(Parts, NetCircuit.Sleeve).ToNetwork();

        Assert.Equal(Parts, LivePart.Of(network, State.Rest(network.Circuit)).Count);
    }

    [Fact]
    public void LivePart_OfACoilHangingOnOneEnd_LeavesItOut()
    {
        var network = new NetCircuit(3).Coil(NetCircuit.Sleeve, NetCircuit.Tip).Coil(2, NetCircuit.Tip).ToNetwork();

        Assert.Equal([0], LivePart.Of(network, State.Rest(network.Circuit)));
    }

    [Fact]
    public void LivePart_BehindAnAmplifier_HoldsWhatItsInputSees()
    {
        var network = new NetCircuit(3)
            .Amplifier(2, NetCircuit.Tip, NetCircuit.Sleeve)
            .Coil(NetCircuit.Sleeve, 2)
            .ToNetwork();

        Assert.Equal([0, 1, 2], LivePart.Of(network, State.Rest(network.Circuit)));
    }

    [Theory]
    [InlineData(0, new[] { 1 }, StructuralOutcome.Short)]
    [InlineData(5, new[] { 0, 1, 2 }, StructuralOutcome.Sounding)]
    [InlineData(10, new[] { 0, 2 }, StructuralOutcome.Sounding)]
    public void Volume_TurnedFromEndToEnd_JoinsAndShortsAsItShould(double travel, int[] live, StructuralOutcome outcome)
    {
        // A volume with lug 1 on the sleeve, the wiper on the tip and a coil on lug 3: at 0 it joins tip and sleeve, at 10
        // its upper section is no resistance.
        var network = new NetCircuit(3)
            .Pot(NetCircuit.Sleeve, NetCircuit.Tip, 2)
            .Coil(NetCircuit.Sleeve, 2)
            .ToNetwork();
        var state = State.Rest(network.Circuit).AtAll(travel);

        Assert.Equal(outcome, StructuralOutcomes.Of(network, state));
        if (outcome != StructuralOutcome.Short)
        {
            Assert.Equal(live, LivePart.Of(network, state));
        }
        else
        {
            Assert.Empty(LivePart.Of(network, state));
        }
    }

    [Fact]
    public void NoLoadPot_AtTheEndOfItsTravel_LeavesItsTrack()
    {
        var network = new NetCircuit(3)
            .Pot(NetCircuit.Sleeve, NetCircuit.Tip, 2, freeAt: 10)
            .Coil(NetCircuit.Sleeve, 2)
            .ToNetwork();

        Assert.Equal([2], LivePart.Of(network, State.Rest(network.Circuit).AtAll(10)));
        Assert.Equal([0, 1, 2], LivePart.Of(network, State.Rest(network.Circuit).AtAll(9)));
    }
}
