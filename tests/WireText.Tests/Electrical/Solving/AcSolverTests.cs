using System.Numerics;
using System.Runtime.CompilerServices;
using CsCheck;
using WireText.Circuits;
using WireText.Electrical.Networks;
using WireText.Electrical.Solving;
using WireText.Testing;

namespace WireText.Tests.Electrical.Solving;

/// <summary>What must hold of every network, whatever its values.</summary>
public class AcSolverTests
{
    private static readonly double[] Frequencies = [50, 82.41, 330, 1e3, 3.3e3, 5e3, 20e3];

    private static readonly Gen<double> Travel = Gen.OneOf(
        Gen.Const(0.0),
        Gen.Double[0.1, 9.9],
        Gen.Const(5.0),
        Gen.Const(10.0)
    );

    [Fact]
    public void Solve_OfRandomCircuits_IsFiniteAndAgreesWithFullElimination() =>
        Sample(
            (network, state) =>
            {
                var live = LiveNetwork.Of(network, state);
                if (AcSolver.Prepare(live, Surroundings.Usual) is not { } solver)
                {
                    Assert.True(live.IsShort || live.IsOpen || live.HasFeedback);
                    return;
                }

                var answer = solver.Solve(Frequencies)!;
                for (var f = 0; f < Frequencies.Length; f++)
                {
                    var (impedance, gains) = ByFullElimination(live, Frequencies[f]);
                    AssertClose(impedance, answer.ImpedanceAt(f));
                    for (var coil = 0; coil < answer.Coils.Length; coil++)
                    {
                        AssertClose(gains[coil], answer.GainAt(coil, f));
                    }
                }
            },
            RandomCircuits.Any
        );

    [Fact]
    public void SourceImpedance_OfPassiveCircuits_HasNoNegativeResistance() =>
        Sample(
            (network, state) =>
            {
                if (Solve(network, state, null) is { } answer)
                {
                    for (var f = 0; f < Frequencies.Length; f++)
                    {
                        Assert.True(answer.ImpedanceAt(f).Real >= 0);
                    }
                }
            },
            Passive
        );

    [Fact]
    public void PowerInTheLoad_OfPassiveCircuits_IsNeverMoreThanTheCoilGives() =>
        Sample(
            (network, state) =>
            {
                // 1 V in one coil alone gives at most |E|²/(4·R) of its winding, whatever else is joined (Thévenin; the
                // maximum power theorem): |g|²/R_load ≤ 1/(4·R).
                if (Solve(network, state, Surroundings.Usual) is not { } answer)
                {
                    return;
                }

                for (var coil = 0; coil < answer.Coils.Length; coil++)
                {
                    var ohms = ((Coil)network.Circuit.Elements[answer.Coils[coil]]).Ohms;
                    for (var f = 0; f < Frequencies.Length; f++)
                    {
                        var power = Math.Pow(answer.GainAt(coil, f).Magnitude, 2) / Surroundings.Usual.InputOhms;
                        Assert.True(power <= 1 / (4 * ohms) * (1 + 1e-9));
                    }
                }
            },
            Passive
        );

    [Fact]
    public void Gain_FromCoilToJack_IsThatOfTheJackToTheCoil() =>
        Sample(
            (network, state) =>
            {
                // Reciprocity: the current through a coil for 1 V at the jack is that at a shorted jack for 1 V in the coil.
                // The first is y·(va − vb)/Z of our own solve; the second is solved by full elimination with the jack shorted.
                var live = LiveNetwork.Of(network, state);
                if (AcSolver.Prepare(live, null)?.Solve(Frequencies) is not { } answer)
                {
                    return;
                }

                for (var f = 0; f < Frequencies.Length; f++)
                {
                    for (var coil = 0; coil < answer.Coils.Length; coil++)
                    {
                        var there = answer.GainAt(coil, f) / answer.ImpedanceAt(f);
                        AssertClose(ShortCircuitCurrent(live, live.Coils[coil], Frequencies[f]), there, 1e-7);
                    }
                }
            },
            Passive
        );

    [Fact]
    public void Amplifier_BetweenPickupAndJack_MultipliesByItsGainOverItsDividers()
    {
        // A pickup of 6 kΩ, 2.2 H and 100 pF into 1 MΩ, then gain 1 behind 470 Ω into 1 MΩ ∥ 470 pF: by hand at 1 kHz.
        var network = new NetCircuit(3)
            .Amplifier(2, NetCircuit.Tip, NetCircuit.Sleeve)
            .Coil(NetCircuit.Sleeve, 2)
            .ToNetwork();
        var live = LiveNetwork.Of(network, State.Rest(network.Circuit));
        var answer = AcSolver.Prepare(live, Surroundings.Usual)!.Solve(1e3)!;

        var omega = new Complex(0, 2 * Math.PI * 1e3);
        var pickup = Divider(6000 + (omega * 2.2), 1e6, 1e-10, omega);
        var output = Divider(470, 1e6, 470e-12, omega);
        AssertClose(pickup * output, answer.GainAt(0, 0));
    }

    [Fact]
    public void TwoAmplifiersInARow_MultiplyTheirGains()
    {
        var network = new NetCircuit(4)
            .Amplifier(3, 2, NetCircuit.Sleeve)
            .Amplifier(2, NetCircuit.Tip, NetCircuit.Sleeve)
            .Coil(NetCircuit.Sleeve, 3)
            .ToNetwork();
        var answer = AcSolver
            .Prepare(LiveNetwork.Of(network, State.Rest(network.Circuit)), Surroundings.Usual)!
            .Solve(1e3)!;

        var omega = new Complex(0, 2 * Math.PI * 1e3);
        var pickup = Divider(6000 + (omega * 2.2), 1e6, 1e-10, omega);
        AssertClose(pickup * Divider(470, 1e6, 0, omega) * Divider(470, 1e6, 470e-12, omega), answer.GainAt(0, 0));
    }

    [Fact]
    public void Amplifier_WhoseOutputReachesItsInput_IsNotComputed()
    {
        var network = new NetCircuit(3)
            .Amplifier(2, NetCircuit.Tip, NetCircuit.Sleeve)
            .Coil(NetCircuit.Sleeve, 2)
            .Resistor(2, NetCircuit.Tip)
            .ToNetwork();
        var live = LiveNetwork.Of(network, State.Rest(network.Circuit));

        Assert.True(live.HasFeedback);
        Assert.Null(AcSolver.Prepare(live, Surroundings.Usual));
        Assert.Equal(
            WireText.Electrical.Sound.Outcome.NotComputed,
            WireText.Electrical.Sound.JackSound.Of(network, State.Rest(network.Circuit)).Outcome
        );
    }

    [Fact]
    public void Ladder_OfEqualSections_HasTheImpedanceOfItsContinuedFraction()
    {
        // 40 sections of 1 kΩ in series and 10 nF across, 1 kΩ at the end: Z = R + 1/(jωC + 1/Z'), from the end on.
        const int Sections = 40;
        var text = "jack out";
        for (var i = 0; i < Sections; i++)
        {
            var from = i == 0 ? "out.tip" : $"m{i}";
            text +=
                $"; metal m{i + 1}; resistor r{i} 1k from {from} to m{i + 1}; cap c{i} 10n from m{i + 1} to out.sleeve";
        }

        var bench = Bench.Of(text + $"; resistor last 1k from m{Sections} to out.sleeve");
        var answer = AcSolver.Prepare(bench.Live(), null)!.Solve(1e3)!;

        var omega = new Complex(0, 2 * Math.PI * 1e3);
        var expected = new Complex(1e3, 0);
        for (var i = 0; i < Sections; i++)
        {
            expected = 1e3 + (1 / ((omega * 10e-9) + (1 / expected)));
        }

        AssertClose(expected, answer.ImpedanceAt(0));
    }

    [Fact]
    public void EqualCoilsInSeriesAndParallel_AreOneCoilScaled()
    {
        // n in series: n·R, n·L, C/n; in parallel R/n, L/n, n·C (Paiva, Pakarinen and Välimäki 2012, eq. 54).
        var series = Bench.Of(
            "pickup a single-coil dcr=4k l=3H c=200p; pickup b single-coil dcr=4k l=3H c=200p; jack out; a.hot ~ out.tip; a.ground ~ b.hot; b.ground ~ out.sleeve"
        );
        var parallel = Bench.Of(
            "pickup a single-coil dcr=4k l=3H c=200p; pickup b single-coil dcr=4k l=3H c=200p; jack out; a.hot ~ b.hot ~ out.tip; a.ground ~ b.ground ~ out.sleeve"
        );
        var twice = Bench.Of(
            "pickup a single-coil dcr=8k l=6H c=100p; jack out; a.hot ~ out.tip; a.ground ~ out.sleeve"
        );
        var half = Bench.Of(
            "pickup a single-coil dcr=2k l=1.5H c=400p; jack out; a.hot ~ out.tip; a.ground ~ out.sleeve"
        );

        var both = series.Decibels(Frequencies).Zip(twice.Decibels(Frequencies), (a, b) => a - b);
        Every.Item(both, difference => Assert.Equal(20 * Math.Log10(2), difference, 1e-9));
        Every.Item(
            parallel.Decibels(Frequencies).Zip(half.Decibels(Frequencies), (a, b) => a - b),
            difference => Assert.Equal(0, difference, 1e-9)
        );
    }

    /// <summary>Random circuits without amplifiers.</summary>
    private static readonly Gen<NetCircuit> Passive = RandomCircuits.Any.Where(made =>
        !made.ToString().Contains("Amplifier", StringComparison.Ordinal)
    );

    private static void Sample(
        Action<Network, State> check,
        Gen<NetCircuit> circuits,
        [CallerMemberName] string test = ""
    ) =>
        Samples.Each(
            Gen.Select(circuits, Travel.Array[8]),
            1000,
            (made, travels) =>
            {
                var network = made.ToNetwork();
                check(network, RandomCircuits.LastOf(network, travels));
            },
            test: test
        );

    private static AcAnswer? Solve(Network network, State state, Surroundings? load) =>
        AcSolver.Prepare(LiveNetwork.Of(network, state), load)?.Solve(Frequencies);

    private static Complex Divider(Complex series, double ohms, double farads, Complex omega) =>
        1 / (1 + (series * ((1 / ohms) + (omega * farads))));

    private static void AssertClose(Complex expected, Complex actual, double relative = 1e-9) =>
        Assert.True(
            (actual - expected).Magnitude <= (relative * expected.Magnitude) + 1e-12,
            $"{actual}, expected {expected}"
        );

    /// <summary>The same by elimination on the whole matrix, forward: one source at a time, amplifiers as a row of their own.</summary>
    private static (Complex Impedance, List<Complex> Gains) ByFullElimination(LiveNetwork live, double hertz)
    {
        var gains = live.Coils.Select(coil =>
            TextbookNodal.Solve(live, Surroundings.Usual, hertz, coil)[LiveNetwork.Tip]
        );
        return (TextbookNodal.Solve(live, Surroundings.Usual, hertz, null)[LiveNetwork.Tip], [.. gains]);
    }

    private static Complex ShortCircuitCurrent(LiveNetwork live, int coil, double hertz)
    {
        // Through 1e-6 Ω at the jack: relative to the kilohms of a coil that is a short to 1e-8.
        var shorted = Surroundings.Usual with
        {
            CableFarads = 0,
            InputOhms = 1e-6,
        };
        return TextbookNodal.Solve(live, shorted, hertz, coil)[LiveNetwork.Tip] / 1e-6;
    }
}
