using WireText.Circuits;
using WireText.Electrical.Networks;
using WireText.Electrical.Sound;
using WireText.Electrical.Studies;
using WireText.Electrical.Traces;
using WireText.Testing;
using WireText.Text;

namespace WireText.Tests.Electrical.Traces;

public class TraceTests
{
    public static TheoryData<string> Examples => Rows.Of(Repository.ExampleNames);

    [Fact]
    public void State_OfASelector_HoldsTheChosenPickupAndItsContact()
    {
        var circuit = RightVerdicts.Of(5).Circuit;

        var trace = Read(circuit, "sel=1");

        Assert.Equal(
            [
                "neck.ground vol.case",
                "neck.hot sel.A1",
                "sel.A0 vol.3",
                "vol.1 vol.case",
                "vol.2 out.tip",
                "vol.case out.sleeve",
            ],
            WiresOf(circuit, trace).Order(StringComparer.Ordinal)
        );
        Assert.Equal(
            ["sel.A0", "sel.A1"],
            Assert.Single(trace.Contacts).Select(circuit.NameOf).Order(StringComparer.Ordinal)
        );
        Assert.True(trace.Holds(circuit.FindPart("neck")!));
        Assert.False(trace.Holds(circuit.FindPart("bridge")!));
    }

    [Fact]
    public void State_OfAMute_HoldsTheShortAlone()
    {
        var circuit = RightVerdicts.Of(1).Circuit;

        var trace = Read(circuit, "mute=down");

        Assert.Equal(["mute.1 out.tip", "mute.2 out.sleeve"], WiresOf(circuit, trace));
    }

    [Fact]
    public void Lug_IsFollowedOverItsNet_AndOverNoContact()
    {
        var circuit = RightVerdicts.Of(5).Circuit;

        var trace = Read(circuit, "VOL.3");

        Assert.Equal("vol.3", trace.InWords);
        Assert.Equal(["sel.A0 vol.3"], WiresOf(circuit, trace));
        Assert.Empty(trace.Contacts);
    }

    [Theory]
    [InlineData("vol.9", "'vol.9' is no lug; did you mean 'vol.1'?")]
    [InlineData("sel=9", "9")]
    public void WhatIsNotThere_IsSaid(string text, string problem) =>
        Assert.Contains(
            problem,
            TraceReader.Read(RightVerdicts.Of(5).Circuit, Study.Of(RightVerdicts.Of(5).Circuit), text).Problem,
            StringComparison.Ordinal
        );

    /// <summary>What is left out carries nothing: without all of it at once the jack gives the same.</summary>
    [Theory]
    [MemberData(nameof(Examples))]
    public void Wires_NotFollowed_CanBeTakenOutWithoutChangingTheSound(string example)
    {
        var text = File.ReadAllText(Repository.PathOf("examples", example));
        var circuit = Compilation.Of(new SourceText(example, text), NoSources.Instance).Circuit!;
        var network = Network.Of(circuit)!;
        foreach (var state in StatesOf(circuit))
        {
            var trace = Trace.OfState(network.Circuit, network, state);
            var bare = circuit
                .Wires.Where(wire =>
                    !trace.Wires[wire.Index] && wire is { From: >= 0, To: >= 0 } && !FeedsABattery(circuit, wire)
                )
                .Aggregate(circuit, (made, wire) => made.Without(wire.Index));

            var (before, after) = (SoundOf(circuit, state), SoundOf(bare, state));

            Assert.Equal(before.Outcome, after.Outcome);
            Assert.Equal(before.LevelDecibels, after.LevelDecibels, 1e-9);
            Assert.Equal(before.SourceOhms ?? 0, after.SourceOhms ?? 0, 1e-6);
        }
    }

    private static JackSound SoundOf(Circuit circuit, State state)
    {
        var network = Network.Of(circuit)!;
        return JackSound.Of(network, state);
    }

    /// <summary>At rest, and with each control in each other position.</summary>
    private static IEnumerable<State> StatesOf(Circuit circuit) =>
        circuit
            .Controls.Where(control => !control.IsPlug)
            .SelectMany(control =>
                Enumerable
                    .Range(0, control.Positions.Length)
                    .Select(position => State.Rest(circuit).With(control, position))
            )
            .Prepend(State.Rest(circuit));

    /// <summary>A supply carries no signal, and yet nothing sounds without it.</summary>
    private static bool FeedsABattery(Circuit circuit, Wire wire) =>
        new[] { wire.From, wire.To }.Any(lug => circuit.PartOf(circuit.Lugs[lug]).Kind == "battery");

    private static Trace Read(Circuit circuit, string text) =>
        TraceReader.Read(circuit, Study.Of(circuit), text).Value!;

    private static IEnumerable<string> WiresOf(Circuit circuit, Trace trace) =>
        circuit
            .Wires.Where(wire => trace.Wires[wire.Index])
            .Select(wire => $"{circuit.NameOf(wire.From)} {circuit.NameOf(wire.To)}");
}
