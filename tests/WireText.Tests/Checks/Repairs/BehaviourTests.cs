using WireText.Checks.Repairs;
using WireText.Tests.Electrical;

namespace WireText.Tests.Checks.Repairs;

/// <summary>When two circuits are one answer: whatever is done with them, nobody could tell them apart at the jack.</summary>
public class BehaviourTests
{
    /// <summary>Two pickups of the same values, so that only their places can tell them apart.</summary>
    private const string Twins = """
        pickup neck   single-coil dcr=6k l=2.4H c=100p
        pickup bridge single-coil dcr=6k l=2.4H c=100p
        switch sel    lever-3way
        pot    vol    250k audio
        pot    tone   250k audio
        cap    dark   22n from tone.2 to tone.case
        metal  saddle
        jack   out    mono
        vol.2 ~ out.tip
        vol.1 ~ vol.case ~ out.sleeve
        tone.case ~ vol.case
        sel.A0 ~ vol.3
        tone.3 ~ vol.3

        """;

    private const string OnTheLever = "neck.hot ~ sel.A1; bridge.hot ~ sel.A3; neck.ground ~ bridge.ground ~ vol.case";

    [Theory]
    [InlineData(
        "neck.hot ~ vol.3; neck.ground ~ bridge.hot; bridge.ground ~ vol.case",
        "bridge.hot ~ vol.3; bridge.ground ~ neck.hot; neck.ground ~ vol.case"
    )] // series in the other order
    [InlineData(OnTheLever, OnTheLever + "; sel.B1 ~ sel.B2")] // contacts that lead nowhere
    [InlineData(OnTheLever, "bridge.hot ~ sel.A1; neck.hot ~ sel.A3; neck.ground ~ bridge.ground ~ vol.case", false)]
    [InlineData(OnTheLever, "neck.ground ~ sel.A1; bridge.hot ~ sel.A3; neck.hot ~ bridge.ground ~ vol.case", false)]
    [InlineData(OnTheLever, OnTheLever + "; tone.1 ~ tone.case", false)] // heard with the tone turned down alone
    [InlineData(OnTheLever, OnTheLever + "; saddle ~ vol.case", false)] // sounds alike, but the strings hum
    public void Circuits_ThatDifferInWires_AreOneAnswerOnlyWhenTheyDoTheSame(
        string first,
        string second,
        bool areEqual = true
    )
    {
        var (a, b) = (Bench.CompileText(Bench.Expand(Twins + first)), Bench.CompileText(Bench.Expand(Twins + second)));

        Assert.Equal(areEqual, Behaviour.IsEqual(a, b));
        Assert.Equal(areEqual, Behaviour.IsEqual(b, a));
    }
}
