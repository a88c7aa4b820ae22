namespace WireText.Tests.Checks.Batteries;

/// <summary>The plus of an electrolytic is its lead 1; what stands there is the sum of the batteries on the way.</summary>
public class ElectrolyticReversedTests
{
    private const string Start = """
        pickup neck single-coil
        preamp pre buffer
        battery cell 9V
        jack out stereo
        neck.hot ~ pre.in; neck.ground ~ pre.common; pre.common ~ out.sleeve; pre.out ~ out.tip

        """;

    private const string Battery = "cell.plus ~ pre.plus; cell.minus ~ out.ring;";

    [Theory]
    [InlineData("cap c 100u electrolytic from pre.plus to pre.common", null)]
    [InlineData(
        "cap c 100u electrolytic from pre.common to pre.plus",
        "'c' is the wrong way round: −9 V at its plus, 'c.1'"
    )]
    [InlineData("cap c 100n film from pre.common to pre.plus", null)]
    [InlineData("cap c 10u electrolytic from pre.in to pre.common", null)] // no battery across it
    public void ElectrolyticReversed_OfACapacitor_IsToldWhereItsPlusIsTheLower(string cap, string? message) =>
        Check(Start + Battery + cap, message);

    [Fact]
    public void ElectrolyticReversed_AcrossTwoBatteries_SaysTheirSum() =>
        Check(
            Start
                + "battery low 9V; splice mid cell.minus low.plus; cell.plus ~ pre.plus; low.minus ~ out.ring; "
                + "cap c 100u electrolytic from out.ring to pre.plus",
            "'c' is the wrong way round: −18 V at its plus, 'c.1'"
        );

    [Fact]
    public void ElectrolyticReversed_WithTheBatteryTurned_IsLeftToTheSupply()
    {
        const string text =
            Start + "cell.minus ~ pre.plus; cell.plus ~ out.ring; cap c 100u electrolytic from pre.plus to pre.common";

        Check(text, null);
        Assert.Single(Found.Of("supply-reversed", text));
    }

    private static void Check(string text, string? message) =>
        Assert.Equal(
            message is null ? [] : [message],
            Found.Of("electrolytic-reversed", text).Select(finding => finding.Message)
        );
}
