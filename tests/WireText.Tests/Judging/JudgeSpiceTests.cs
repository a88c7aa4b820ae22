using System.Collections.Immutable;
using System.Numerics;
using CsCheck;
using WireText.Checks.Repairs;
using WireText.Circuits;
using WireText.Testing;
using WireText.Tests.Checks.Mutants;
using WireText.Tests.Output;

namespace WireText.Tests.Judging;

/// <summary>ngspice as referee of the judge: circuits with a slip, from decks that the tests write.</summary>
public class JudgeSpiceTests
{
    /// <summary>Of each kind of slip in each example: 9 times 3 times 2 are 54 circuits.</summary>
    private const int SlipsOfAKind = 2;

    /// <summary>Settings tried of each circuit besides rest.</summary>
    private const int SettingsDrawn = 2;

    /// <summary>How far a figure may be off, as a part of it: 0.01 dB.</summary>
    private const double Tolerance = 1e-3;

    /// <summary>
    /// Voltages below this are not told from none, in volts for 1 V in a coil: −80 dB. What ngspice asks for at every node of
    /// an island leaks as much into an open jack.
    /// </summary>
    private const double NoVolts = 1e-4;

    /// <summary>Impedances below this are not told from none, in ohms: the joints of the deck have some.</summary>
    private const double NoOhms = 0.1;

    public static TheoryData<string, string> Kinds =>
        Rows.Of(
            Repository.ExampleNames.SelectMany(example =>
                new[] { nameof(RemoveWire), nameof(MoveEnd), nameof(ExchangeEnds) }.Select(kind => (example, kind))
            )
        );

    [SkippableTheory]
    [MemberData(nameof(Kinds))]
    public void Readings_OfACircuitWithASlip_AreThoseOfNgspice(string example, string kind)
    {
        Ngspice.SkipWhereAbsent();

        var right = MutantSuite.Read(Repository.PathOf("examples", example));
        var slips = WireMutants.Of(right).Where(slip => slip.GetType().Name == kind).ToList();
        var samples =
            from index in Gen.Int[0, slips.Count - 1]
            from settings in SettingOf(right).List[SettingsDrawn]
            select (slip: slips[index], settings);

        Samples.Each(
            samples,
            SlipsOfAKind,
            sample => AssertReadAlike(sample.slip.Apply(right), [BenchSetting.Rest(right), .. sample.settings]),
            sample => $"{example}: {WireMutants.NameOf(right, sample.slip)}"
        );
    }

    private static Gen<BenchSetting> SettingOf(Circuit circuit)
    {
        Gen<ImmutableArray<int>> positions = Gen.Const(ImmutableArray<int>.Empty);
        foreach (var control in circuit.Controls)
        {
            positions =
                from before in positions
                from position in Gen.Int[0, control.Positions.Length - 1]
                select before.Add(position);
        }

        return from chosen in positions
            from halves in Gen.Int[0, 20].Array[circuit.Dials.Length]
            select new BenchSetting(chosen, [.. halves.Select(half => half / 2.0)]);
    }

    private static void AssertReadAlike(Circuit circuit, IReadOnlyList<BenchSetting> settings)
    {
        var answers = Ngspice.Run([.. settings.Select(setting => LugDeck.Of(circuit, setting))]);
        for (var i = 0; i < settings.Count; i++)
        {
            var network = new BenchNetwork(circuit, settings[i]);
            for (var f = 0; f < answers[i][0].Length; f++)
            {
                var reading = network.Read(answers[i][0][f].Hertz);
                var where = $"{settings[i].In(circuit)} at {answers[i][0][f].Hertz} Hz";
                for (var coil = 0; coil < reading.Volts.Length; coil++)
                {
                    AssertNear(answers[i][coil][f].Volts, reading.Volts[coil], NoVolts, $"coil {coil}, {where}");
                }

                AssertNear(answers[i][^1][f].Volts, reading.Ohms, NoOhms, $"impedance, {where}");
            }
        }
    }

    private static void AssertNear(Complex expected, Complex actual, double none, string where) =>
        Assert.True(
            Complex.Abs(expected - actual) <= none + (Tolerance * Complex.Abs(expected)),
            $"{where}: ngspice {expected}, judge {actual}"
        );
}
