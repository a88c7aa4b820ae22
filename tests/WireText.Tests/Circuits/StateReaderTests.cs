using WireText.Circuits;
using WireText.Testing;
using WireText.Tests.Electrical;

namespace WireText.Tests.Circuits;

public class StateReaderTests
{
    private static readonly Circuit TwoPickups = Bench.CompileText(
        File.ReadAllText(Repository.PathOf("examples", "2-two-pickups-mute.wiring"))
    );

    [Theory]
    [InlineData("rest", "rest")]
    [InlineData("sel=neck", "sel=neck")]
    [InlineData("SEL=Neck", "sel=neck")]
    [InlineData("vol=7,sel=neck", "vol=7 sel=neck")]
    [InlineData("vol=2.5 mute=down", "vol=2.5 mute=down")]
    [InlineData("sel=bridge,Vol=10.0", "sel=bridge vol=10")]
    public void State_InItsWords_IsReadAsSaid(string text, string words)
    {
        var read = StateReader.Read(TwoPickups, text);

        Assert.Null(read.Problem);
        Assert.Equal(words, StateText.AsSaid(read.Value!));
    }

    [Fact]
    public void State_NothingButOneNamed_LeavesTheOthersAtRest()
    {
        var state = StateReader.Read(TwoPickups, "tone=0").Value!;

        Every.Item(TwoPickups.Controls, control => Assert.Equal(control.Rest, state[control.Index]));
        Assert.Equal<double>([10, 0], state.Travels);
    }

    [Theory]
    [InlineData("sell=neck", "no control is called 'sell'; did you mean 'sel'?")]
    [InlineData("blend=5", "no control is called 'blend'; there is sel, mute, vol, tone")]
    [InlineData("sel=nek", "'sel' has no position 'nek'; did you mean 'neck'?")]
    [InlineData("sel=2", "'sel' has no position '2'; there is bridge, both, neck")]
    [InlineData("sel=any", "'sel' has no position 'any'; there is bridge, both, neck")]
    [InlineData("sel", "'sel' needs a position; write sel=bridge")]
    [InlineData("sel=", "'sel' needs a position; write sel=bridge")]
    [InlineData("vol", "'vol' turns from 0 to 10; write vol=5")]
    [InlineData("vol=11", "'vol' turns from 0 to 10; '11' is not on it")]
    [InlineData("vol=-1", "'vol' turns from 0 to 10; '-1' is not on it")]
    [InlineData("vol=NaN", "'vol' turns from 0 to 10; 'NaN' is not on it")]
    [InlineData("vol=1e1", "'vol' turns from 0 to 10; '1e1' is not on it")]
    [InlineData("vol=half", "'vol' turns from 0 to 10; 'half' is not on it")]
    [InlineData("vol=5,VOL=6", "'VOL' is set twice")]
    [InlineData("", "no state is given; write CONTROL=POSITION, or rest")]
    [InlineData(" , ", "no state is given; write CONTROL=POSITION, or rest")]
    [InlineData("=5", "no control is called ''; there is sel, mute, vol, tone")]
    public void State_Wrong_SaysWhatAndWhatIsMeant(string text, string problem)
    {
        var read = StateReader.Read(TwoPickups, text);

        Assert.Null(read.Value);
        Assert.Equal(problem, read.Problem);
    }
}
