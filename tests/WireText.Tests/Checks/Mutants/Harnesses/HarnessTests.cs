using System.Numerics;
using WireText.Circuits;
using WireText.Electrical.Networks;
using WireText.Electrical.Solving;
using WireText.Parts;
using WireText.Testing;
using WireText.Tests.Electrical;
using WireText.Tests.Judging;
using WireText.Text;

namespace WireText.Tests.Checks.Mutants.Harnesses;

/// <summary>The harnesses are right, by what they were made for, by the judge's solver and by the program.</summary>
public class HarnessTests
{
    private static readonly double[] Hertz = [97, 1130, 5310];

    public static TheoryData<int> Numbers => Rows.Of(UsualHarnesses.All.Select(harness => harness.Number));

    /// <summary>Standard switches that choose, cut, turn or lift something in no harness, and why.</summary>
    private static readonly string[] NotUsed =
    [
        // Held down it opens; a mute must short.
        "momentary-nc",
    ];

    [Fact]
    public void EveryStandardSwitch_IsInSomeHarness()
    {
        var used = UsualHarnesses
            .All.SelectMany(harness => Bench.CompileText(harness.Text).Parts)
            .Where(part => part.Kind is "switch" or "button")
            .Select(part => part.Definition.Model)
            .ToHashSet();
        var standard = StandardParts
            .Catalogue.Definitions.Where(part => part.Kind is "switch" or "button")
            .Select(part => part.Model);

        Assert.Equal(NotUsed, standard.Where(model => !used.Contains(model)));
    }

    [Theory]
    [MemberData(nameof(Numbers))]
    public void Harness_ThatIsRight_RaisesNoAlarm(int number)
    {
        var harness = UsualHarnesses.All[number - 1];
        var compiled = Compilation.Of(new SourceText("harness.wiring", harness.TextWithClaims), NoSources.Instance);
        var alarms = compiled.Findings.Where(finding => finding.Severity >= Severity.Warning).ToList();

        Assert.True(
            alarms.Count == 0,
            $"{string.Join('\n', alarms.Select(finding => finding.Message))}\n{harness.Name}\n{harness.TextWithClaims}"
        );
    }

    /// <summary>Which pickups a stop of the selector gives follows from the plan that the harness was made by.</summary>
    [Theory]
    [MemberData(nameof(Numbers))]
    public void Pickups_AtEachStop_AreHeardAsPlanned(int number)
    {
        var harness = UsualHarnesses.All[number - 1];
        var circuit = Bench.CompileText(harness.Text);
        var selector = circuit.FindControl("sel");
        var rest = BenchSetting.Rest(circuit);

        foreach (var (stop, pickups) in Every.Of(harness.Heard))
        {
            var setting = selector is null
                ? rest
                : rest with
                {
                    Positions = rest.Positions.SetItem(selector.Index, PositionOf(selector, stop)),
                };
            Assert.Equal<string>([.. pickups], [.. Sounding.PickupsAt(circuit, setting)]);
        }
    }

    [Theory]
    [MemberData(nameof(Numbers))]
    public void Metal_OfAHarness_IsSolderedToTheSleeve(int number)
    {
        var circuit = Bench.CompileText(UsualHarnesses.All[number - 1].Text);
        var solder = MetalPieces.Soldered(circuit);

        Every.Item(
            circuit.Lugs.Where(lug => lug.IsMetal),
            lug => Assert.True(solder.AreOne(lug.Index, circuit.Outputs[0].Sleeve), lug.Name)
        );
    }

    [Theory]
    [MemberData(nameof(Numbers))]
    public void Gains_InEveryPosition_AreThoseOfTheJudge(int number)
    {
        var circuit = Bench.CompileText(UsualHarnesses.All[number - 1].Text);
        var network = Network.Of(circuit)!;
        foreach (var setting in BenchSetting.AllPositions(circuit).SelectMany(positions => positions.Turned()))
        {
            var state = State.Of([.. setting.Positions.Select(position => (int?)position)], setting.Travels);
            var live = LiveNetwork.Of(network, state);
            var answer = live.IsShort ? null : AcSolver.Prepare(live, circuit.Surroundings)?.Solve(Hertz);
            var bench = new BenchNetwork(circuit, setting);
            for (var f = 0; f < Hertz.Length; f++)
            {
                var reading = bench.Read(Hertz[f]);
                foreach (var (coil, place) in bench.Coils.Select((coil, place) => (coil, place)))
                {
                    var at = answer?.Coils.IndexOf(coil.Index) ?? -1;
                    AssertNear(reading.Volts[place], at < 0 ? Complex.Zero : answer!.GainAt(at, f), 1e-9);
                }
            }

            void AssertNear(Complex expected, Complex actual, double none) =>
                Assert.True(
                    Complex.Abs(expected - actual) <= none + (1e-6 * Complex.Abs(expected)),
                    $"{setting.In(circuit)}: judge {expected}, program {actual}"
                );
        }
    }

    private static int PositionOf(Control control, string name) =>
        control.Positions.IndexOf(control.Positions.Single(position => position.Name == name));
}
