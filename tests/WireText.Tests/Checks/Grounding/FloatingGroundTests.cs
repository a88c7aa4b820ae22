using WireText.Text;

namespace WireText.Tests.Checks.Grounding;

/// <summary>Every kind of metal that belongs to ground, each left without it.</summary>
public class FloatingGroundTests
{
    private const string Start = """
        pickup neck single-coil
        pot vol 250k audio
        jack out
        neck.hot ~ vol.3; neck.ground ~ vol.1; vol.1 ~ vol.case; vol.case ~ out.sleeve; vol.2 ~ out.tip

        """;

    [Theory]
    [InlineData(
        "pot tone 250k audio; vol.3 ~ tone.2; cap c 22n from tone.1 to vol.case",
        "'tone.case' is not grounded"
    )]
    [InlineData(
        "switch tog toggle-3way; vol.3 ~ tog.A0 ~ tog.B0; tog.A1 ~ tog.B1 ~ vol.2",
        "'tog.case' is not grounded"
    )]
    [InlineData("metal saddle", "'saddle' is not grounded")]
    [InlineData("metal saddle; metal plate; saddle ~ plate", "'saddle' and 'plate' are not grounded")]
    [InlineData("pickup b single-coil-cover; b.hot ~ vol.3; b.ground ~ vol.case", "'b.cover' is not grounded")]
    [InlineData(
        "pickup h humbucker-4; splice link h.n-finish h.s-finish; h.n-start ~ vol.3; h.s-start ~ vol.case",
        "'h.shield' is not grounded"
    )]
    [InlineData(
        "resistor r 1M from vol.3 to vol.2\ncable vol.3 to vol.2 white braid cut to cut",
        "the braid round 'vol.3' to 'vol.2' is not grounded"
    )]
    [InlineData(
        "resistor r 1M from vol.3 to vol.2\ncable vol.3 to vol.2 white braid vol.3 to cut",
        "the braid round 'vol.3' to 'vol.2' is not grounded"
    )]
    public void FloatingGround_OfEachKindOfMetal_NamesIt(string text, string message)
    {
        var found = Assert.Single(Found.Of("floating-ground", Start + text));

        Assert.Equal((Severity.Warning, message), (found.Severity, found.Message));
    }

    [Fact]
    public void FloatingGround_OfAPickupWhoseBraidIsItsReturn_IsAnErrorThatSaysItIsSilent()
    {
        var found = Assert.Single(
            Found.Of(
                "floating-ground",
                """
                pickup h humbucker
                pot vol 250k audio
                splice air h.ground
                jack out
                h.hot ~ vol.3; vol.1 ~ vol.case; vol.case ~ out.sleeve; vol.2 ~ out.tip
                """
            )
        );

        Assert.Equal(
            (Severity.Error, "'h.ground' is not grounded, and 'h' is silent"),
            (found.Severity, found.Message)
        );
    }

    [Theory]
    [InlineData("cable vol.2 to out.tip white braid cut to out.sleeve")]
    [InlineData("cable vol.2 to out.tip white braid vol.case to cut")]
    [InlineData("cable vol.2 to out.tip white braid vol.case to out.sleeve")]
    public void FloatingGround_OfABraidWithOneEndOnGround_IsNone(string cable) =>
        Assert.Empty(Found.Of("floating-ground", $"{Start}{cable}"));

    [Fact]
    public void LooseBraid_IsMendedByEndingItOnGround()
    {
        var found = Assert.Single(Found.Of("floating-ground", $"{Start}cable vol.2 to out.tip white braid cut to cut"));

        Assert.Equal("solder one end of it to ground: braid cut to vol.case", found.Help);
        Assert.Equal("braid cut to cut", found.Location.Text);
    }
}
