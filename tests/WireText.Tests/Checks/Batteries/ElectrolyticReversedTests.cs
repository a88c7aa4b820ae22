using System.Globalization;
using WireText.Tests.Electrical;

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

    /// <summary>A board without a capacitor at its output: it rests at half of its supply.</summary>
    private const string Board = """
        define preamp bare
            lugs in -10,12  out 10,12  plus -10,-12  common 10,-12
            amp  in out common gain=2 in=1M out=1k supply=plus idle=50%

        """;

    private const string OnBoard = """
        pickup neck single-coil
        preamp pre bare
        battery cell 9V
        pot vol 100k audio
        jack out stereo
        neck.hot ~ pre.in; neck.ground ~ pre.common; pre.common ~ out.sleeve
        cell.plus ~ pre.plus; cell.minus ~ out.ring

        """;

    private const string Volume = "vol.2 ~ out.tip; vol.1 ~ out.sleeve";

    [Theory]
    [InlineData("cap c 10u electrolytic from pre.out to vol.3; " + Volume, null)]
    [InlineData(
        "cap c 10u electrolytic from vol.3 to pre.out; " + Volume,
        "'c' is the wrong way round: −4.5 V at its plus, 'c.1'"
    )] // 4.5 V, and no current flows through 1 kΩ
    [InlineData(
        "cap c 10u electrolytic from out.tip to pre.out",
        "'c' is the wrong way round: −4.5 V at its plus, 'c.1'"
    )] // the next amplifier holds the tip at 0 V
    [InlineData(
        "cap c 10u electrolytic from vol.3 to r.2; resistor r 1k from pre.out to r.2; resistor d 3k from r.2 to out.sleeve; "
            + Volume,
        "'c' is the wrong way round: −2.7 V at its plus, 'c.1'"
    )] // 4.5 V × 3/(1 + 1 + 3)
    public void ElectrolyticReversed_AtTheOutputOfABoard_GoesByItsVoltageAtRest(string rest, string? message) =>
        Assert.Equal(
            message is null ? [] : [message],
            Found
                .OfLines("electrolytic-reversed", Board + Bench.Expand(OnBoard + rest))
                .Select(finding => finding.Message)
        );

    [Theory]
    [InlineData("cap c 100u electrolytic from r.2 to pre.common", null)]
    [InlineData(
        "cap c 100u electrolytic from pre.common to r.2",
        "'c' is the wrong way round: −9 V at its plus, 'c.1'"
    )]
    [InlineData(
        "resistor d 98R from r.2 to pre.common; cap c 100u electrolytic from pre.common to r.2",
        "'c' is the wrong way round: −4.41 V at its plus, 'c.1'"
    )] // 9 V × 98/(100 + 98 + 2)
    [InlineData("resistor d 5R from r.2 to pre.common; cap c 100u electrolytic from pre.common to r.2", null)] // 0.42 V: it bears that
    public void ElectrolyticReversed_BehindAResistor_GoesByWhatReachesIt(string rest, string? message) =>
        Check(Start + Battery + "resistor r 100R from pre.plus to r.2; " + rest, message);

    /// <summary>Each electrolytic takes its share of the bound, so with one more than it is the last is not looked at.</summary>
    [Theory]
    [InlineData(0, 1)]
    [InlineData(1, 0)]
    public void ElectrolyticReversed_PastTheBound_LooksAtNoMore(int beyond, int found)
    {
        const int Bound = 4_096;
        var right = Enumerable
            .Range(1, Bound - 1 + beyond)
            .Select(i =>
                string.Create(CultureInfo.InvariantCulture, $"cap c{i} 1u electrolytic from pre.plus to pre.common; ")
            );
        var text = Start + Battery + string.Concat(right) + "cap last 1u electrolytic from pre.common to pre.plus";

        Assert.Equal(found, Found.Of("electrolytic-reversed", text).Count);
    }

    private static void Check(string text, string? message) =>
        Assert.Equal(
            message is null ? [] : [message],
            Found.Of("electrolytic-reversed", text).Select(finding => finding.Message)
        );
}
