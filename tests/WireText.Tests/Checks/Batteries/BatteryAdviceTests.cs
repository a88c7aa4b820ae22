namespace WireText.Tests.Checks.Batteries;

/// <summary>What is said of batteries and of direct current: the parts that are at fault, and wires that are not there yet.</summary>
public class BatteryAdviceTests
{
    private const string Board = """
        pickup neck single-coil
        preamp pre buffer
        battery cell 9V
        jack out stereo
        neck.hot ~ pre.in; neck.ground ~ pre.common; pre.common ~ out.sleeve; cell.plus ~ pre.plus

        """;

    /// <summary>The minus lies on the ring as it should; a wire joins the ring to the sleeve without any plug.</summary>
    [Theory]
    [InlineData(
        "cell.minus ~ out.ring; pre.out ~ out.tip; wire out.ring to out.sleeve bare",
        "let the plug switch it, take out: wire out.ring to out.sleeve bare"
    )]
    [InlineData(
        "cell.minus ~ out.sleeve; pre.out ~ out.tip",
        "let the plug switch it: wire cell.minus to out.ring black, and to nothing else"
    )]
    public void BatteryDrain_OfABatteryOnTheRing_TellsNoWireThatIsThere(string text, string help) =>
        Assert.Equal(help, Assert.Single(Found.Of("battery-drain", Board + text)).Help);

    /// <summary>The resistor leads to the tip; pickups, pots and loads across it take of the voltage and are no way.</summary>
    [Theory]
    [InlineData("pre.out ~ out.tip; resistor led 10k from pre.plus to out.tip", "'cell' and 'led'")]
    [InlineData(
        "pre.out ~ out.tip; resistor led 10k from pre.plus to out.tip; resistor load 100k from out.tip to out.sleeve; "
            + "pickup bridge single-coil; bridge.hot ~ out.tip; bridge.ground ~ out.sleeve",
        "'cell' and 'led'"
    )]
    [InlineData(
        "pot vol 25k linear; pre.out ~ vol.3; vol.2 ~ out.tip; vol.1 ~ vol.case ~ out.sleeve; resistor led 10k from pre.plus to vol.3",
        "'cell' and 'led'"
    )]
    public void DirectCurrent_AtTheTip_ComesByWhatLeadsThere(string text, string way) =>
        Assert.EndsWith(
            $", by way of {way}",
            Assert.Single(Found.Of("dc-at-jack", $"{Board}cell.minus ~ out.ring; {text}")).Message,
            StringComparison.Ordinal
        );

    /// <summary>A mono plug joins the ring to the sleeve: without one the plate has no ground.</summary>
    [Fact]
    public void Ground_ThroughTheContactOfAJack_NamesTheJack() =>
        Assert.Equal(
            "'plate' is grounded through the contacts of 'out' alone",
            Assert
                .Single(
                    Found.Of(
                        "ground-through-contact",
                        "pickup neck single-coil; metal plate; jack out stereo; neck.hot ~ out.tip; neck.ground ~ out.sleeve; plate ~ out.ring"
                    )
                )
                .Message
        );
}
