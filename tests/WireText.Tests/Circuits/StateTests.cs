using WireText.Circuits;
using WireText.Testing;
using WireText.Tests.Electrical;

namespace WireText.Tests.Circuits;

public class StateTests
{
    /// <summary>A 3-way lever, a mute button and a volume, so that a control can be at any beside another that is not.</summary>
    private static readonly Circuit Circuit = Bench
        .Of(
            "pickup neck single-coil; pickup bridge single-coil; switch sel lever-3way; button mute momentary; "
                + "pot vol 250k audio; jack out; neck.hot ~ sel.A1; bridge.hot ~ sel.A3; sel.A0 ~ vol.3; vol.2 ~ out.tip; "
                + "neck.ground ~ vol.case; bridge.ground ~ vol.case; vol.1 ~ vol.case; vol.case ~ out.sleeve; "
                + "mute.1 ~ out.tip; mute.2 ~ out.sleeve"
        )
        .Circuit;

    private static readonly Control Selector = Circuit.FindControl("sel")!;
    private static readonly Control Mute = Circuit.FindControl("mute")!;

    [Fact]
    public void Open_OfACircuit_LeavesItsControlsAtAny()
    {
        var open = State.Open(Circuit);

        Every.Item(Circuit.Controls.Where(control => !control.IsPlug), control => Assert.Null(open[control.Index]));
    }

    [Fact]
    public void Holds_AStateOfASet_IsTrueOneWayOnly()
    {
        var set = State.Rest(Circuit).At(Selector.Index, null);
        var one = State.Rest(Circuit).At(Selector.Index, 1);

        Assert.True(set.Holds(one));
        Assert.False(one.Holds(set));
        Assert.True(one.Meets(set));
    }

    [Fact]
    public void Common_OfSetsThatAskDifferentControls_AsksBoth()
    {
        var first = State.Open(Circuit).At(Selector.Index, 2);
        var second = State.Open(Circuit).At(Mute.Index, 1);

        var both = first.Common(second);

        Assert.Equal(2, both![Selector.Index]);
        Assert.Equal(1, both[Mute.Index]);
        Assert.Null(first.Common(State.Open(Circuit).At(Selector.Index, 0)));
    }

    [Fact]
    public void Equals_ToTheSameSaidInOtherWords_IsTrue()
    {
        var said = State.Rest(Circuit).With(Selector, 1);
        var meant = State.Rest(Circuit).At(Selector.Index, 1);

        Assert.Equal(said, meant);
        Assert.Equal(said.GetHashCode(), meant.GetHashCode());
        Assert.NotEqual(said, said.With(Circuit.FindDial("vol")!, 3));
    }

    [Fact]
    public void Compare_WithAStateThatHasAPosition_PutsAnyFirst() =>
        Assert.True(State.Compare(State.Open(Circuit), State.Rest(Circuit)) < 0);

    [Theory]
    [InlineData("sel=2", "2")]
    [InlineData("SEL=1,mute=down", "1")]
    public void Read_ASetting_StandsThere(string text, string position)
    {
        var state = StateReader.Read(Circuit, text).Value!;

        Assert.Equal(position, StateText.PositionOf(Selector, state));
        Assert.True(state.Names("sel"));
    }
}
