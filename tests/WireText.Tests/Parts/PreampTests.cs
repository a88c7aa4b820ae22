using System.Numerics;
using WireText.Circuits;
using WireText.Electrical.Networks;
using WireText.Electrical.Solving;
using WireText.Electrical.Sound;
using WireText.Testing;
using WireText.Tests.Output;
using WireText.Text;

namespace WireText.Tests.Parts;

/// <summary>The preamps with tone controls, in <c>docs/preamps</c>.</summary>
public class PreampTests
{
    private static readonly string Folder = Repository.PathOf("docs", "preamps");

    public static TheoryData<string> Wirings => ["two-band.wiring", "three-band.wiring"];

    [Theory]
    [MemberData(nameof(Wirings))]
    public void Wiring_WithAPreamp_HasNothingToFind(string name) =>
        Assert.Empty(Compiled(name).Findings.Select(finding => finding.Message));

    /// <summary>Each knob at 0, at 5 and at 10: every gain to 0.01 dB at 61 frequencies.</summary>
    [SkippableTheory]
    [MemberData(nameof(Wirings))]
    public void Gains_WithEachKnobAtItsEnds_AreThoseOfNgspice(string name)
    {
        Ngspice.SkipWhereAbsent();
        var network = NetworkOf(name);
        var rest = State.Rest(network.Circuit);
        List<State> states =
        [
            rest,
            .. network.Circuit.Dials.SelectMany(dial =>
                new[] { rest.At(dial, 0), rest.At(dial, 10), rest.At(dial, 7) }
            ),
        ];
        var decks = states.ConvertAll(state => SpiceComparison.DeckOf(network, state));
        var referee = Ngspice.Run(decks);

        Every.Item(
            states,
            (state, i) =>
            {
                var result = SpiceComparison.Compare(network, state, decks[i], referee[i]);
                Assert.True(result.Worst <= SpiceComparison.Tolerance, result.Where);
                Assert.Equal(2 * 61, result.Gains);
            }
        );
    }

    /// <summary>With all knobs at 5 what is left is the pickup on 1 MΩ, and the output's own divider: both in closed form.</summary>
    [Theory]
    [MemberData(nameof(Wirings))]
    public void Response_WithAllKnobsAtFive_IsFlat(string name) =>
        Every.Item(
            new double[] { 20, 50, 100, 200, 500, 1e3, 2e3, 5e3, 10e3, 20e3 },
            hertz =>
            {
                var s = new Complex(0, 2 * Math.PI * hertz);
                var pickup = 1 / (1 + ((6.2e3 + (2.3 * s)) * (1e-6 + (110e-12 * s))));
                var load = 1 / ((1 / 100e3) + 1e-6 + (470e-12 * s));
                var output = load / (load + 470 + (1 / (4.7e-6 * s)));
                Assert.Equal(
                    20 * Math.Log10((pickup * output).Magnitude),
                    20 * Math.Log10(At(name, _ => 5, hertz)),
                    0.01
                );
            }
        );

    /// <summary>
    /// At 0.1 Hz every capacitor of the controls is open, and the bass control is three resistors: at 10 it gives
    /// (P + R2)/(R1 + P + R2) and at 0 R2/(R1 + P + R2), P = 100 kΩ, R1 = 18 kΩ, R2 = 2 kΩ, of which ten times are heard.
    /// </summary>
    [Theory]
    [InlineData("two-band.wiring", 10, 102 / 12.0)]
    [InlineData("two-band.wiring", 0, 2 / 12.0)]
    [InlineData("three-band.wiring", 10, 102 / 12.0)]
    [InlineData("three-band.wiring", 0, 2 / 12.0)]
    public void Bass_AtItsEnds_IsTheDividerOfItsResistors(string name, double travel, double ratio) =>
        Assert.Equal(
            20 * Math.Log10(ratio),
            20 * Math.Log10(At(name, dial => dial == "pre.bass" ? travel : 5, 0.1) / At(name, _ => 5, 0.1)),
            0.01
        );

    /// <summary>Far above its corners the treble control is its capacitors alone: at 10 all of the signal, ten times a tenth.</summary>
    [Theory]
    [MemberData(nameof(Wirings))]
    public void Treble_At10_IsTenTimesFarAboveItsCorners(string name) =>
        Assert.Equal(
            20,
            20 * Math.Log10(At(name, dial => dial == "pre.treble" ? 10 : 5, 1e6) / At(name, _ => 5, 1e6)),
            0.01
        );

    /// <summary>Its own capacitors keep the middle control from the lowest notes.</summary>
    [Fact]
    public void Middle_At10_LiftsTheMiddleAndNotTheLowest()
    {
        double Lift(double hertz) =>
            20
            * Math.Log10(
                At("three-band.wiring", dial => dial == "pre.middle" ? 10 : 5, hertz)
                    / At("three-band.wiring", _ => 5, hertz)
            );

        Assert.InRange(Lift(400), 6, 20);
        Assert.InRange(Lift(1), -0.1, 0.1);
    }

    private static double At(string name, Func<string, double> travel, double hertz)
    {
        var network = NetworkOf(name);
        var state = network.Circuit.Dials.Aggregate(
            State.Rest(network.Circuit),
            (made, dial) => made.At(dial, travel(dial.Name))
        );
        return StringResponse.Of(network.Circuit, LiveNetwork.Of(network, state))!.At(hertz)!.Value[0].Magnitude;
    }

    private static Network NetworkOf(string name) => Network.Of(Compiled(name).Circuit!)!;

    private static Compilation Compiled(string name)
    {
        var path = Path.Combine(Folder, name);
        return Compilation.Of(new SourceText(path, File.ReadAllText(path)), SourcesBeside.File(path));
    }
}
