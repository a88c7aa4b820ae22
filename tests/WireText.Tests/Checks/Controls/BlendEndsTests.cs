namespace WireText.Tests.Checks.Controls;

/// <summary>
/// A blend is fed on a.3 and b.1: from the tapers of its definition, gang a has no resistance to lug 3 from the middle up, gang b
/// none to lug 1 from the middle down. Worked out by hand.
/// </summary>
public class BlendEndsTests
{
    private const string Harness = """
        pickup neck single-coil; pickup bridge single-coil
        pot mix blend 500k; pot vol 500k audio
        jack out
        mix.a.2 ~ mix.b.2 ~ vol.3; vol.2 ~ out.tip; vol.1 ~ vol.case ~ mix.case ~ out.sleeve
        neck.ground ~ mix.case; bridge.ground ~ mix.case

        """;

    [Theory]
    [InlineData("neck.hot ~ mix.a.3; bridge.hot ~ mix.b.1", null)]
    [InlineData("neck.hot ~ mix.b.1; bridge.hot ~ mix.a.3", null)]
    [InlineData("neck.hot ~ mix.a.3; bridge.hot ~ mix.b.3", "move what is on 'mix.b.3' to 'mix.b.1'")]
    [InlineData("neck.hot ~ mix.a.1; bridge.hot ~ mix.b.1", "move what is on 'mix.a.1' to 'mix.a.3'")]
    [InlineData("neck.hot ~ mix.a.1; bridge.hot ~ mix.b.3", "move what is on 'mix.a.1' to 'mix.a.3'")]
    public void Check_AnyTwoEnds_TellsTheWrongOne(string wires, string? help)
    {
        var found = Found.Of("blend-end", Harness + wires);

        Assert.Equal(help is null, found.Count == 0);
        Assert.True(found.TrueForAll(finding => finding.Help!.StartsWith(help!, StringComparison.Ordinal)));
    }

    /// <summary>The gangs of two plain volumes on one shaft have resistance on both sides of the middle: neither end is wrong.</summary>
    [Fact]
    public void Check_TwoPlainGangs_FindsNothing() =>
        Assert.Empty(
            Found.Of(
                "blend-end",
                """
                pickup neck single-coil; pickup bridge single-coil
                pot both concentric 500k
                jack out
                both.top.2 ~ both.bottom.2 ~ out.tip; both.case ~ out.sleeve; neck.ground ~ both.case; bridge.ground ~ both.case
                neck.hot ~ both.top.3; bridge.hot ~ both.bottom.3
                """
            )
        );
}
