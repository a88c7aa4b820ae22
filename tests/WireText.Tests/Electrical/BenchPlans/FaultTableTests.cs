using WireText.Circuits;
using WireText.Electrical.BenchPlans;
using WireText.Electrical.Networks;
using WireText.Electrical.Solving;
using WireText.Testing;

namespace WireText.Tests.Electrical.BenchPlans;

/// <summary>What wrong readings point to, by hand.</summary>
public class FaultTableTests
{
    /// <summary>8 kΩ behind 500 kΩ with a tone control, every wire of its own.</summary>
    private const string OnePickup =
        "pickup p single-coil dcr=8k; pot vol 500k linear; pot tone 500k linear; cap dark 22n; jack out mono; "
        + "p.hot ~ vol.3; p.ground ~ vol.case; tone.1 ~ vol.3; dark.1 ~ tone.2; dark.2 ~ vol.case; "
        + "vol.2 ~ out.tip; vol.1 ~ vol.case; tone.case ~ vol.case; vol.case ~ out.sleeve";

    public static TheoryData<string> ExampleNames => Rows.Of(Repository.ExampleNames);

    [Fact]
    public void OpenCoil_LeavesTheTrackAlone_AsItsLeadsDo()
    {
        var plan = BenchReadingTests.PlanOf(OnePickup);
        var group = GroupOf(plan, fault => fault is ElementOpen open && plan.Circuit.Elements[open.Element] is Coil);
        var (rest, exact) = (group.Wrong[0], FactTable.Row("ohmmeter.txt", "OM-30").Number("exact"));

        // The pot is ±20 %.
        Assert.Equal(0, rest.Reading);
        Assert.Equal(0.8 * exact, rest.Band.Least, 0.5);
        Assert.Equal(1.2 * exact, rest.Band.Most, 0.5);
        Assert.Equal(
            ["p.ground vol.case", "p.hot vol.3"],
            group
                .Faults.OfType<WireLeftOut>()
                .Select(left => plan.Circuit.Wires[left.Wire])
                .Select(wire => $"{plan.Circuit.NameOf(wire.From)} {plan.Circuit.NameOf(wire.To)}")
                .Order(StringComparer.Ordinal)
        );
    }

    [Fact]
    public void ShortedToneCapacitor_ShowsOnlyWithTheToneAt0()
    {
        // OM-28: with the tone at 10 it takes 8 kΩ to 7.75 kΩ, within 5 %; OM-29: at 0 nothing is left.
        var plan = BenchReadingTests.PlanOf(OnePickup);
        var group = GroupOf(
            plan,
            fault => fault is ElementShorted shorted && plan.Circuit.Elements[shorted.Element] is Capacitor
        );

        var wrong = Assert.Single(group.Wrong);
        Assert.Equal("tone", plan.Readings[wrong.Reading].Turned?.Name);
        Assert.True(wrong.Band.IsContinuity);
    }

    [Fact]
    public void OpenToneCapacitor_IsNotSeen()
    {
        var plan = BenchReadingTests.PlanOf(OnePickup);

        Assert.Contains(
            plan.Faults.Unseen,
            fault => fault is ElementOpen open && plan.Circuit.Elements[open.Element] is Capacitor
        );
    }

    [Fact]
    public void PotOfHalfItsValue_ShowsHalfWay()
    {
        // Half way the reading is near R/4: 8 kΩ + 125 kΩ across 125 kΩ, 62.5 kΩ + 8 kΩ across 62.5 kΩ.
        var plan = BenchReadingTests.PlanOf(
            "pickup p single-coil dcr=8k; pot vol 250k linear; jack out mono; p.hot ~ vol.3; "
                + "p.ground ~ vol.case; vol.2 ~ out.tip; vol.1 ~ vol.case ~ out.sleeve"
        );
        var wrong = Assert.Single(GroupOf(plan, fault => fault is TrackHalved).Wrong);
        var (track, coil) = (62.5e3, 8e3);

        Assert.Equal(5, plan.Readings[wrong.Reading].State.Travels[0]);
        Assert.Equal(Across(0.8 * track, (0.8 * track) + (0.95 * coil)), wrong.Band.Least, 0.5);
        Assert.Equal(Across(1.2 * track, (1.2 * track) + (1.05 * coil)), wrong.Band.Most, 0.5);
    }

    [Theory]
    [MemberData(nameof(ExampleNames))]
    public void EveryFault_StandsOnce_AndEachGroupIsWrongSomewhere(string example)
    {
        var faults = BenchReadingTests.PlanOfExample(example).Faults;
        var all = faults.Groups.SelectMany(group => group.Faults).Concat(faults.Unseen).ToList();

        Assert.True(faults.IsComplete);
        Assert.Equal(all.Count, all.Distinct().Count());
        Every.Item(faults.Groups, group => Assert.NotEmpty(group.Wrong));
    }

    [Theory]
    [MemberData(nameof(ExampleNames))]
    public void FaultsOfTwoGroups_DifferInSomeReading_AndUnseenOnesInNone(string example)
    {
        var plan = BenchReadingTests.PlanOfExample(example);
        MeterBand[] right = [.. plan.Readings.Select(reading => reading.Band)];
        var shown = plan
            .Faults.Groups.SelectMany(
                (group, index) => group.Faults.Select(fault => (Group: index, Bands: BandsOf(plan, fault)))
            )
            .ToList();

        Every.Item(
            shown,
            one =>
            {
                Assert.False(AreAlike(one.Bands, right));
                Assert.DoesNotContain(shown, other => other.Group != one.Group && AreAlike(one.Bands, other.Bands));
            }
        );
        Assert.DoesNotContain(plan.Faults.Unseen, fault => !AreAlike(BandsOf(plan, fault), right));
    }

    [Fact]
    public void Plan_OfTheSameText_IsTheSame()
    {
        var (one, other) = (
            BenchReadingTests.PlanOfExample("8-twin-coil-cut.wiring"),
            BenchReadingTests.PlanOfExample("8-twin-coil-cut.wiring")
        );

        Assert.Equal(
            one.Readings.Select(reading => (reading.Points, reading.State, reading.Expected)),
            other.Readings.Select(reading => (reading.Points, reading.State, reading.Expected))
        );
        Assert.Equal(one.Faults.Unseen.AsEnumerable(), other.Faults.Unseen);
        Assert.Equal(
            one.Faults.Groups.SelectMany(group => group.Faults),
            other.Faults.Groups.SelectMany(group => group.Faults)
        );
        Assert.Equal(
            one.Faults.Groups.SelectMany(group => group.Wrong),
            other.Faults.Groups.SelectMany(group => group.Wrong)
        );
    }

    [Fact]
    public void ManyFaults_StopAtTheBoundAndSaySo()
    {
        var most = (int)BenchReadingTests.MostOf("faults of a bench plan");
        var plan = BenchReadingTests.PlanOf(
            "pickup p single-coil dcr=8k; jack out mono; p.ground ~ out.sleeve; "
                + string.Concat(Enumerable.Range(1, most + 1).Select(_ => "p.hot ~ out.tip; "))
        );

        Assert.False(plan.Faults.IsComplete);
        Assert.Equal(most, plan.Faults.Groups.Sum(group => group.Faults.Length) + plan.Faults.Unseen.Length);
    }

    [Fact]
    public void MuchWork_StopsAtTheBoundAndSaysSo()
    {
        // As many nets and readings as make each fault dear: fewer than the most are tried.
        var plan = BenchReadingTests.PlanOf(
            "pickup p single-coil dcr=8k; jack out mono; p.hot ~ out.tip; p.ground ~ out.sleeve; "
                + string.Concat(
                    Enumerable.Range(1, 400).Select(i => $"metal m{i}; pot v{i} 1k linear; m{i} ~ out.sleeve; ")
                )
        );
        var tried = plan.Faults.Groups.Sum(group => group.Faults.Length) + plan.Faults.Unseen.Length;

        Assert.False(plan.Faults.IsComplete);
        Assert.InRange(tried, 1, BenchReadingTests.MostOf("faults of a bench plan") - 1);
        Assert.True(
            (long)tried * plan.Readings.Length * (plan.Circuit.Nets.Count + plan.Circuit.Elements.Length)
                <= BenchReadingTests.MostOf("nets and elements looked at for the faults of a bench plan")
        );
    }

    private static FaultGroup GroupOf(BenchPlan plan, Predicate<Fault> isIt) =>
        plan.Faults.Groups.Single(group => group.Faults.Any(fault => isIt(fault)));

    private static MeterBand[] BandsOf(BenchPlan plan, Fault fault)
    {
        var faulty = fault.In(plan.Circuit);
        return
        [
            .. plan.Readings.Select(reading =>
                MeterBand.Of(Ohmmeter.Read(Network.Of(reading.Points.SeenIn(faulty))!, reading.State))
            ),
        ];
    }

    private static bool AreAlike(MeterBand[] one, MeterBand[] other) =>
        one.Zip(other).All(pair => pair.First.Least <= pair.Second.Most && pair.Second.Least <= pair.First.Most);

    private static double Across(double one, double other) => one * other / (one + other);
}
