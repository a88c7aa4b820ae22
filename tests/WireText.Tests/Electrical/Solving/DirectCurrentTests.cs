using CsCheck;
using WireText.Circuits;
using WireText.Electrical.Networks;
using WireText.Electrical.Solving;
using WireText.Electrical.Sound;
using WireText.Electrical.Studies;
using WireText.Testing;

namespace WireText.Tests.Electrical.Solving;

public class DirectCurrentTests
{
    private const string Preamp =
        "jack out stereo; pickup neck single-coil; preamp pre buffer; battery bat 9V; neck.hot ~ pre.in; neck.ground ~ pre.common; pre.common ~ out.sleeve; bat.plus ~ pre.plus; ";

    [Fact]
    public void Reading_OfRandomCircuits_NeverFallsWhenAResistanceRises() =>
        Samples.Each(
            Gen.Select(RandomCircuits.Any, Gen.Int[0, 7], Gen.Double[1.01, 5]),
            1000,
            (made, which, factor) =>
            {
                // Rayleigh's monotonicity law (Doyle and Snell 1984).
                var circuit = made.ToCircuit();
                if (which >= circuit.Elements.Length)
                {
                    return;
                }

                var raised = circuit with
                {
                    Elements = circuit.Elements.SetItem(which, Raise(circuit.Elements[which], factor)),
                };
                var (before, after) = (ReadingOf(circuit), ReadingOf(raised));

                // A choke of 1 Ω beside a track of 250 kΩ costs five of sixteen digits.
                const double Rounding = 1e-9;
                Assert.True(after.Ohms >= before.Ohms * (1 - Rounding));
                Assert.True(before.Ohms >= before.Least * (1 - Rounding));
                Assert.True(before.Ohms <= before.Most * (1 + Rounding));
                Assert.False(double.IsNaN(before.Ohms));
            }
        );

    [Fact]
    public void Reading_BehindACapacitor_IsNone() =>
        Assert.Equal(
            Reading.None,
            Bench.Of("jack out; pickup p single-coil; cap c 22n from p.hot to out.tip; p.ground ~ out.sleeve").Reading()
        );

    [Fact]
    public void Reading_BehindAnAmplifier_IsNotThatOfThePickup()
    {
        // Batteries out: what the meter sees is the 100 kΩ across the output; 5 % either way.
        var reading = Bench.Of(Preamp + "pre.out ~ out.tip; bat.minus ~ out.ring").Reading();

        Assert.Equal(100e3, reading.Ohms, 1e-6);
        Assert.Equal(95e3, reading.Least, 1e-6);
        Assert.Equal(105e3, reading.Most, 1e-6);
    }

    [Fact]
    public void VoltsAtJack_BehindTheOutputCapacitor_IsNone()
    {
        var bench = Bench.Of(Preamp + "pre.out ~ out.tip; bat.minus ~ out.ring");

        Assert.Equal(0, DirectVoltage.AtJack(bench.Network, bench.State)!.Value, 1e-9);
    }

    [Fact]
    public void VoltsAtJack_OfABatteryAcrossTheJack_IsWhatItsResistanceLeaves()
    {
        // 9 V behind 2 Ω into 1 MΩ.
        var bench = Bench.Of("jack out; battery bat 9V; bat.plus ~ out.tip; bat.minus ~ out.sleeve");

        Assert.Equal(9 * 1e6 / (1e6 + 2), DirectVoltage.AtJack(bench.Network, bench.State)!.Value, 1e-9);
    }

    [Theory]
    [InlineData("out.ring", "mono-plug", true, Outcome.Sound)]
    [InlineData("out.ring", "stereo-plug", false, Outcome.Dead)]
    [InlineData("out.ring", "no-plug", false, Outcome.Dead)]
    [InlineData("out.sleeve", "no-plug", true, Outcome.Sound)]
    public void Battery_SwitchedByThePlug_IsOnOnlyWithIt(string minus, string plug, bool isOn, Outcome outcome)
    {
        // Minus on the ring is the usual way; minus on the sleeve drains the battery in its case (common practice).
        var bench = Bench.Of(Preamp + $"pre.out ~ out.tip; bat.minus ~ {minus}").At($"out={plug}");
        var battery = bench.Circuit.Elements.OfType<Battery>().Single();

        Assert.Equal(isOn, BatteryLoop.IsClosed(bench.Network, bench.State, battery));
        Assert.Equal(outcome, bench.Sound().Outcome);
    }

    [Fact]
    public void SwitchInTheBatterysLead_MakesTwoRows()
    {
        var bench = Bench.Of(
            Preamp + "switch power spdt; pre.out ~ out.tip; bat.minus ~ power.A0; power.A1 ~ out.sleeve"
        );

        Assert.Equal(
            ["neck", "dead: only 100 kΩ stay on the jack"],
            Study.Of(bench.Circuit)!.Positions.Rows.Select(row => row.WhatIsHeard(bench.Circuit))
        );
    }

    /// <summary>One coil pair on the three switches that a series/parallel switch is made of; readings in ohms.</summary>
    [Theory]
    [InlineData("dpdt-on-on-on-a-first", "x series y", "x", "x parallel y")]
    [InlineData("dpdt-on-on-on-b-first", "x series y", "y", "x parallel y")]
    [InlineData("dpdt-on-on-on-bridging", "x series y", "silence: tip and sleeve are joined", "x parallel y")]
    [InlineData("dpdt-on-off-on", "x series y", "dead: only 500 kΩ stay on the jack", "x parallel y")]
    public void SeriesParallelSwitch_OfEachKind_DoesWhatItsContactsSay(string model, params string[] heard)
    {
        // SP-01 to SP-04 and SP-11 to SP-13: published switch diagrams, and 4 kΩ coils behind 500 kΩ.
        var bench = Bench.Of(
            $"pickup x single-coil dcr=4k; pickup y single-coil dcr=4k; switch sp {model}; pot vol 500k linear; jack out; vol.2 ~ out.tip;"
                + "vol.1 ~ y.ground ~ sp.A2 ~ out.sleeve; x.hot ~ vol.3; x.ground ~ sp.A0; y.hot ~ sp.B0; sp.A1 ~ sp.B1; sp.B2 ~ vol.3"
        );
        var rows = Study.Of(bench.Circuit)!.Positions.Rows;

        Assert.Equal(heard, rows.Select(row => row.WhatIsHeard(bench.Circuit)));
        Assert.Equal(7874, rows[0].Analysis.Reading!.Value.Ohms, 0.5);
        Assert.Equal(1992, rows[2].Analysis.Reading!.Value.Ohms, 0.5);
        if (heard[1].Length == 1)
        {
            Assert.Equal(3968, rows[1].Analysis.Reading!.Value.Ohms, 0.5);
        }
    }

    private static Reading ReadingOf(Circuit circuit)
    {
        var network = Network.Of(circuit)!;
        return Ohmmeter.Read(network, State.Rest(circuit).AtAll(4))!.Value;
    }

    private static Element Raise(Element element, double factor) =>
        element switch
        {
            Coil coil => coil with { Ohms = coil.Ohms * factor },
            Resistor resistor => resistor with { Ohms = resistor.Ohms * factor },
            Track track => track with { Ohms = track.Ohms * factor },
            Amplifier amplifier => amplifier with { InputOhms = amplifier.InputOhms * factor },
            _ => element,
        };
}
