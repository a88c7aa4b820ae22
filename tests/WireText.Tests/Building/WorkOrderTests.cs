using WireText.Building;
using WireText.Circuits;
using WireText.Testing;
using WireText.Tests.Checks.Mutants.Harnesses;
using WireText.Tests.Drawing.Random;
using WireText.Text;

namespace WireText.Tests.Building;

public class WorkOrderTests
{
    private const string TwoPots = """
        pickup neck single-coil
        pot    vol  250k audio
        pot    tone 250k audio
        switch kill spdt
        jack   out  mono
        cap    dark 22n heat-sensitive from tone.2 to tone.case
        cap    high 1n from vol.2 to vol.3
        wire   vol.case to tone.case to out.sleeve black
        wire   neck.hot to vol.3 white
        wire   neck.ground to vol.case black
        wire   vol.2 to kill.A0 red
        wire   kill.A1 to out.tip red
        wire   vol.3 to tone.1 yellow
        wire   vol.1 to vol.case bare
        """;

    public static TheoryData<string> Examples => Rows.Of(Repository.ExampleNames);

    [Theory, MemberData(nameof(Examples))]
    public void Order_OfAnExample_CanBeDoneAtTheBench(string name)
    {
        var text = File.ReadAllText(Repository.PathOf("examples", name));

        Assert.Empty(Simulated(text).Faults);
        Assert.Empty(Simulated(WithSensitiveParts(text)).Faults);
    }

    [Fact]
    public void Order_OfUsualHarnesses_CanBeDoneAtTheBench() =>
        Every.Item(
            UsualHarnesses.All,
            harness =>
            {
                Assert.Empty(Simulated(harness.Text).Faults);
                Assert.Empty(Simulated(WithSensitiveParts(harness.Text)).Faults);
            }
        );

    /// <summary>300 circuits wired by chance, with every capacitor and resistor in them harmed by heat.</summary>
    [Fact]
    public void Order_OfRandomCircuits_CanBeDoneAtTheBench()
    {
        var group = RandomDrawings.Groups[0];
        var texts = Every.Of(group.Take(group.Seed, 300).Select(sample => WithSensitiveParts(sample.Value)));

        var done = texts.Select(Simulated).ToList();

        Every.Item(done, bench => Assert.Empty(bench.Faults));
        Assert.InRange(done.Sum(bench => bench.HeatedLeads), 50, int.MaxValue);
    }

    [Fact]
    public void Order_OfTwoPots_FollowsThePhases()
    {
        var circuit = Bound(TwoPots);

        var lines = WorkOrder.Of(circuit).Steps.Select(step => Line(circuit, step));

        Assert.Equal(
            [
                "mount neck",
                "mount vol",
                "mount tone",
                "mount kill",
                "mount out",
                "lay vol.1--vol.case",
                "1 vol.1",
                "2 vol.case",
                "lay vol.case--tone.case tone.case--out.sleeve",
                "3 vol.case",
                "4 tone.case",
                "5 out.sleeve",
                "lay vol.2--kill.A0",
                "6 kill.A0",
                "lay kill.A1--out.tip",
                "7 kill.A1",
                "8 out.tip",
                "lay vol.3--tone.1",
                "9 tone.1",
                "lay neck.hot--vol.3",
                "lay neck.ground--vol.case",
                "10 vol.case",
                "lay high.1--vol.2 high.2--vol.3",
                "11 vol.2",
                "12 vol.3",
                "lay dark.1--tone.2 dark.2--tone.case",
                "13 tone.2",
                "14 tone.case",
            ],
            lines
        );
    }

    [Fact]
    public void Order_OfAChange_LiftsFirstAndLeavesTheRestAlone()
    {
        var before = Bound(TwoPots);
        var after = Bound(
            TwoPots.Replace("wire   vol.3 to tone.1 yellow", "wire vol.2 to tone.1 yellow", StringComparison.Ordinal)
        );

        var order = WorkOrder.Between(before, after);

        Assert.Equal(
            ["lift vol.3--tone.1", "lay vol.2--tone.1", "1 vol.2", "2 tone.1"],
            order.Steps.Select(step => Line(after, step))
        );
        int[] there = [.. after.Wires.Where(wire => wire.Id != "vol.2--tone.1").Select(wire => wire.Index)];
        Assert.Empty(BenchSimulation.Run(after, order, there).Faults);
    }

    [Fact]
    public void Order_OfAReplacedPart_TakesItsWiresOffAndOnAgain()
    {
        var before = Bound(TwoPots);
        var after = Bound(TwoPots.Replace("cap    high 1n", "cap    high 680p", StringComparison.Ordinal));

        var lines = WorkOrder.Between(before, after).Steps.Select(step => Line(after, step));

        Assert.Equal(
            [
                "lift high.1--vol.2",
                "lift high.2--vol.3",
                "remove high",
                "lay high.1--vol.2 high.2--vol.3",
                "1 vol.2",
                "2 vol.3",
            ],
            lines
        );
    }

    [Fact]
    public void Order_OfNoChange_HasNoSteps()
    {
        var circuit = Bound(TwoPots);

        Assert.Empty(WorkOrder.Between(circuit, Bound(TwoPots)).Steps);
        Assert.NotEmpty(WorkOrder.Of(circuit).Steps);
    }

    private static string Line(Circuit circuit, WorkStep step) =>
        step switch
        {
            WorkStep.Lift lift => $"lift {lift.Before.Wires[lift.Wire].Id}",
            WorkStep.Remove remove => $"remove {remove.Before.Parts[remove.Part].Name}",
            WorkStep.Mount mount => $"mount {circuit.Parts[mount.Part].Name}",
            WorkStep.Lay lay => $"lay {string.Join(' ', lay.Wires.Select(wire => circuit.Wires[wire].Id))}",
            WorkStep.Solder solder => $"{solder.Joint.Number} {circuit.NameOf(solder.Joint.Lug)}",
            _ => throw new InvalidOperationException(step.GetType().Name),
        };

    private static BenchSimulation Simulated(string text)
    {
        var circuit = Bound(text);
        return BenchSimulation.Run(circuit, WorkOrder.Of(circuit));
    }

    private static Circuit Bound(string text) =>
        Compilation.Of(new SourceText("bench.wiring", text), NoSources.Instance).Circuit!;

    private static string WithSensitiveParts(string text) =>
        string.Join(
            '\n',
            text.Split('\n')
                .Select(line =>
                    line.StartsWith("cap ", StringComparison.Ordinal)
                    || line.StartsWith("resistor ", StringComparison.Ordinal)
                        ? Sensitive(line)
                        : line
                )
        );

    /// <summary>The word goes before the leads.</summary>
    private static string Sensitive(string line) =>
        line.IndexOf(" from ", StringComparison.Ordinal) is >= 0 and var from
            ? line.Insert(from, " heat-sensitive")
            : line + " heat-sensitive";
}
