using WireText.Text;

namespace WireText.Tests.Checks.Switching;

/// <summary>What a switch does on its way. Shorting and non-shorting contacts: SW-13 and SW-14 of the reference tables.</summary>
public class PassageTests
{
    private const string Phase = """
        pickup neck single-coil wind=cw magnet=north
        pickup bridge single-coil wind=ccw magnet=south
        pot vol 250k audio
        jack out
        neck.hot ~ vol.3; neck.ground ~ vol.case; bridge.hot ~ ph.A0; bridge.ground ~ ph.B0
        ph.A1 ~ ph.B2; ph.A1 ~ vol.3; ph.A2 ~ ph.B1; ph.B1 ~ vol.case
        vol.1 ~ vol.case; vol.2 ~ out.tip; vol.case ~ out.sleeve

        """;

    /// <summary>Two pickups on the throws of a rotary straight to the jack; the definition says how it switches over.</summary>
    private const string Rotary = """
        define switch round
            lugs A0 0,0 A1 10,0 A2 20,0 A3 30,0
            position 1 A0+A1
            position 2 A0+A2
            position 3 A0+A3
            between {0}
            spare A1 A2 A3
        switch sel round
        pickup neck single-coil
        pickup bridge single-coil
        jack out
        wire neck.hot to sel.A1 white
        wire bridge.hot to sel.A2 yellow
        wire sel.A0 to out.tip red
        wire neck.ground to out.sleeve black
        wire bridge.ground to out.sleeve black
        {1}
        """;

    /// <summary>The two lie in parallel: what shorts the one shorts the other.</summary>
    [Theory]
    [InlineData("slide-dpdt", 1)] // makes before it breaks
    [InlineData("dpdt", 0)]
    public void ShortsWhileSwitching_OfAPhaseSwitch_DependsOnHowItSwitchesOver(string model, int count)
    {
        var found = Found.Of("shorts-while-switching", $"switch ph {model}\n{Phase}");

        Assert.Equal(
            Enumerable.Repeat(
                (Severity.Note, "'ph' shorts 'neck' and 'bridge' for a moment between '1' and '2'"),
                count
            ),
            found.Select(finding => (finding.Severity, finding.Message))
        );
    }

    [Fact]
    public void ShortsWhileSwitching_OfAMuteThatMakesFirst_IsNone() =>
        Assert.Empty(
            Found.Of(
                "shorts-while-switching",
                """
                switch kill slide-dpdt
                pickup neck single-coil
                jack out
                neck.hot ~ out.tip; neck.ground ~ out.sleeve; kill.A0 ~ out.tip; kill.A2 ~ out.sleeve
                """
            )
        );

    [Fact]
    public void ShortsWhileSwitching_OfASelectorBetweenTwoPickups_IsNone() =>
        Assert.Empty(Found.OfLines("shorts-while-switching", Of("make-before-break", "")));

    /// <summary>Round again only without stops: the third position joins the neck again.</summary>
    [Theory]
    [InlineData("break-before-make", "", "between '1' and '2'")]
    [InlineData("make-before-break", "", null)]
    [InlineData("break-before-make", "resistor end 1M from out.tip to out.sleeve", null)]
    [InlineData("break-before-make", "wire sel.A3 to sel.A1 white", "between '1' and '2' and between '2' and '3'")]
    [InlineData(
        "break-before-make endless",
        "wire sel.A3 to sel.A1 white",
        "between '1' and '2' and between '2' and '3'"
    )]
    [InlineData(
        "break-before-make endless",
        "pickup middle single-coil\nwire middle.hot to sel.A3 white\nwire middle.ground to out.sleeve black",
        "between '1' and '2' and between '2' and '3' and between '3' and '1'"
    )]
    public void Gap_OfASelectorAtTheJack_IsToldWhereNothingElseHoldsIt(string between, string more, string? where)
    {
        var found = Found.OfLines("gap", Of(between, more));

        Assert.Equal(
            where is null ? [] : [$"'sel' leaves the jack on nothing for a moment {where}"],
            found.Select(finding => finding.Message)
        );
    }

    [Fact]
    public void Gap_OfASwitchThatKeepsAThrowInBothPositions_IsNone() =>
        Assert.Empty(
            Found.Of(
                "gap",
                """
                switch sel dpdt-on-on-on-bridging
                pickup neck single-coil
                pickup bridge single-coil
                jack out
                neck.hot ~ sel.A1; bridge.hot ~ sel.A2; sel.A0 ~ out.tip; neck.ground ~ bridge.ground ~ out.sleeve
                """
            )
        );

    private static string Of(string between, string more) =>
        Rotary.Replace("{0}", between, StringComparison.Ordinal).Replace("{1}", more, StringComparison.Ordinal);
}
