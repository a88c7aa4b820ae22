using WireText.Circuits;
using WireText.Electrical.Studies;

namespace WireText.Tests.Electrical.Studies;

public class StudyTests
{
    private const string Lever =
        "pickup neck single-coil; pickup bridge single-coil; switch sel lever-3way; pot vol 250k audio; jack out; "
        + "neck.hot ~ sel.A1; bridge.hot ~ sel.A3; sel.A0 ~ vol.3; vol.2 ~ out.tip; "
        + "neck.ground ~ vol.case; bridge.ground ~ vol.case; vol.1 ~ vol.case; vol.case ~ out.sleeve";

    [Fact]
    public void Of_ACircuitWithoutAJack_IsNothing() =>
        Assert.Null(Study.Of(Bench.Of("jack out").Circuit with { Outputs = [] }));

    [Fact]
    public void Values_AskedTwice_AreTheSameObject()
    {
        var study = Study.Of(Bench.Of(Lever).Circuit)!;

        Assert.Same(study.Situations, study.Situations);
        Assert.Same(study.Positions, study.Until(CancellationToken.None).Positions);
    }

    [Fact]
    public void Values_AfterACancelledAsk_AreWorkedOutAnew()
    {
        var study = Study.Of(Bench.Of(Lever).Circuit)!;
        using var cancelled = new CancellationTokenSource();
        cancelled.Cancel();
        var hurried = study.Until(cancelled.Token);

        Assert.Throws<OperationCanceledException>(() => hurried.Situations);
        Assert.Throws<OperationCanceledException>(() => hurried.Heard);
        Assert.Throws<OperationCanceledException>(() => hurried.Roles);
        Assert.Throws<OperationCanceledException>(() => hurried.Positions);
        Assert.NotEmpty(study.Positions.Rows);
    }

    [Fact]
    public void Rewired_WithAWireMoved_SaysWhatAStudyOfItsOwnSays()
    {
        var circuit = Bench.Of(Lever).Circuit;
        var study = Study.Of(circuit)!;
        _ = study.Positions;
        var wire = circuit.Wires.First(wire => circuit.NameOf(wire.From) == "bridge.hot");
        var moved = circuit.WithEnds((new WireEnd(wire.Index, IsFrom: false), circuit.FindLug("sel.A2")!.Index));

        Assert.Equal(Rows(Study.Of(moved)!), Rows(study.Rewired(moved)));
    }

    [Fact]
    public void Twins_ThatDifferInColourAndPlace_AreTwins()
    {
        var one = Bench.CompileText(
            "jack out mono\npot vol 250k audio\nwire vol.2 to out.tip white\nplace vol at 10,10\n"
        );
        var other = Bench.CompileText("note \"x\"\njack out mono\npot vol 250k audio\nwire vol.2 to out.tip red\n");

        Assert.True(ElectricalTwins.Are(one, other));
    }

    [Theory]
    [InlineData("jack out mono\npot vol 500k audio\nwire vol.2 to out.tip white\n")]
    [InlineData("jack out mono\npot vol 250k linear\nwire vol.2 to out.tip white\n")]
    [InlineData("jack out mono\npot vol 250k audio\nwire vol.3 to out.tip white\n")]
    [InlineData("jack out mono\npot tone 250k audio\nwire tone.2 to out.tip white\n")]
    [InlineData("jack out mono\npot vol 250k audio\nwire vol.2 to out.tip white\nrest vol=5\n")]
    [InlineData("jack out mono\npot vol 250k audio\nwire vol.2 to out.tip white\nload cable=700p\n")]
    public void Twins_ThatDifferElectrically_AreNone(string text) =>
        Assert.False(
            ElectricalTwins.Are(
                Bench.CompileText("jack out mono\npot vol 250k audio\nwire vol.2 to out.tip white\n"),
                Bench.CompileText(text)
            )
        );

    private static IEnumerable<string> Rows(Study study) =>
        study.Positions.Rows.Select(row =>
            $"{StateText.OfStated(study.Circuit, row.State)}: {row.WhatIsHeard(study.Circuit)} {row.LevelDecibels}"
        );
}
