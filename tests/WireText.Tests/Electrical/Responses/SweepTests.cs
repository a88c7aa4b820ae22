using WireText.Circuits;
using WireText.Electrical.Responses;
using WireText.Testing;

namespace WireText.Tests.Electrical.Responses;

public class SweepTests
{
    private static readonly Circuit TwoPickups = Bench.CompileText(
        File.ReadAllText(Repository.PathOf("examples", "2-two-pickups-mute.wiring"))
    );

    [Theory]
    [InlineData("tone=0..10:5", "tone=0|tone=2.5|tone=5|tone=7.5|tone=10")]
    [InlineData("tone", "tone=0|tone=2.5|tone=5|tone=7.5|tone=10")]
    [InlineData("tone=0..10", "tone=0|tone=2.5|tone=5|tone=7.5|tone=10")]
    [InlineData("Vol=10..8:3", "vol=10|vol=9|vol=8")]
    [InlineData("tone=0..10:2", "tone=0|tone=10")]
    [InlineData("sel", "sel=bridge|sel=both|sel=neck")]
    public void Sweep_AsSaid_StepsEvenly(string text, string states)
    {
        var sweep = Sweep.Read(TwoPickups, text).Value!;

        Assert.Equal(states.Split('|'), sweep.Over(State.Rest(TwoPickups)).Select(StateText.AsSaid));
    }

    [Fact]
    public void Sweep_OverAStateThatNamesTheDial_TakesItsPlace()
    {
        var state = StateReader.Read(TwoPickups, "tone=3,sel=neck").Value!;

        var swept = Sweep.Read(TwoPickups, "tone=1..2:2").Value!.Over(state);

        Assert.Equal(["sel=neck tone=1", "sel=neck tone=2"], swept.Select(StateText.AsSaid));
    }

    [Theory]
    [InlineData("tnoe", "no control is called 'tnoe'; did you mean 'tone'?")]
    [InlineData("sel=bridge..neck", "a sweep of 'sel' is over all its positions; write 'sel' alone")]
    [InlineData("tone=0-10", "'0-10' is no sweep of a dial; write tone=0..10:5 for five travels from 0 to 10")]
    [InlineData("tone=0..11", "'0..11' is no sweep of a dial; write tone=0..10:5 for five travels from 0 to 10")]
    [InlineData("tone=0..10:x", "'0..10:x' is no sweep of a dial; write tone=0..10:5 for five travels from 0 to 10")]
    [InlineData("tone=0..10:1", "a sweep has 2 to 24 settings, not 1")]
    [InlineData("tone=0..10:999999999", "a sweep has 2 to 24 settings, not 999999999")]
    public void Sweep_Wrong_SaysHowToWriteIt(string text, string problem) =>
        Assert.Equal(problem, Sweep.Read(TwoPickups, text).Problem);
}
