using System.Globalization;
using WireText.Circuits;
using WireText.Electrical.BenchPlans;
using WireText.Electrical.Solving;
using WireText.Electrical.Studies;
using WireText.Testing;

namespace WireText.Tests.Electrical.BenchPlans;

/// <summary>What a plan expects of the meter, against the table of readings and by hand.</summary>
public class BenchReadingTests
{
    private const string Volume = "jack out mono; vol.2 ~ out.tip; vol.1 ~ vol.case ~ out.sleeve; ";

    private const string OnePickup =
        "pickup p single-coil dcr=8k; pot vol 500k linear; p.hot ~ vol.3; p.ground ~ vol.case; " + Volume;

    private const string Independent =
        "pickup p single-coil dcr=8k; pot vol 500k linear; jack out mono; p.hot ~ vol.2; p.ground ~ vol.case; "
        + "vol.3 ~ out.tip; vol.1 ~ vol.case ~ out.sleeve";

    private const string TwoVolumes =
        "pickup a single-coil dcr=7.5k; pickup b single-coil dcr=8.5k; pot va 500k linear; pot vb 500k linear; jack out mono; "
        + "a.ground ~ va.case; b.ground ~ va.case; va.1 ~ va.case; vb.1 ~ va.case; vb.case ~ va.case; va.case ~ out.sleeve; ";

    /// <summary>Rows of the table of readings that a plan has to come to by itself.</summary>
    public static TheoryData<string, string, string> TableRows =>
        new()
        {
            { "OM-09", OnePickup, "at rest" },
            { "OM-10", OnePickup, "vol 5" },
            { "OM-12", OnePickup, "vol 0" },
            { "OM-13", Independent, "at rest" },
            { "OM-14", Independent, "vol 5" },
            { "OM-15", Independent, "vol 0" },
            { "OM-23", TwoVolumes + "a.hot ~ va.3; b.hot ~ vb.3; va.2 ~ out.tip; vb.2 ~ out.tip", "at rest" },
            { "OM-24", TwoVolumes + "a.hot ~ va.3; b.hot ~ vb.3; va.2 ~ out.tip; vb.2 ~ out.tip", "vb 0" },
            { "OM-25", TwoVolumes + "a.hot ~ va.2; b.hot ~ vb.2; va.3 ~ out.tip; vb.3 ~ out.tip", "vb 0" },
        };

    [Theory]
    [MemberData(nameof(TableRows))]
    public void Plan_OfACircuitOfTheTable_ExpectsItsReading(string row, string wiring, string dials)
    {
        var reading = AtJack(PlanOf(wiring)).Single(one => DialsOf(one) == dials);

        Assert.Equal(FactTable.Row("ohmmeter.txt", row).Number("exact"), reading.Expected!.Value.Ohms, 0.0051);
    }

    [Fact]
    public void Selector_HasAReadingForEachPosition_AndADialForEachStopInEach()
    {
        var plan = PlanOf(
            "pickup a single-coil dcr=6k; pickup b single-coil dcr=7k; switch sel lever-3way; pot vol 250k linear; "
                + "a.hot ~ sel.A1; b.hot ~ sel.A3; sel.A0 ~ vol.3; a.ground ~ vol.case; b.ground ~ vol.case; "
                + Volume
        );

        // 6 kΩ and 7 kΩ across 250 kΩ; with no pickup the track alone; half way half the track across the rest of the way round.
        Assert.Equal(
            [
                "1 at rest 5859.4",
                "2 at rest 250000.0",
                "3 at rest 6809.3",
                "1 vol 0 0.0",
                "1 vol 5 63964.8",
                "2 vol 0 0.0",
                "2 vol 5 125000.0",
                "3 vol 0 0.0",
                "3 vol 5 64202.3",
            ],
            AtJack(plan)
                .Select(one =>
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"{StateText.PositionOf(plan.Circuit.FindControl("sel")!, one.State)} {DialsOf(one)} {one.Expected!.Value.Ohms:0.0}"
                    )
                )
        );
    }

    [Fact]
    public void Mute_IsReadReleasedAndPressed()
    {
        var plan = PlanOf("button mute momentary; mute.1 ~ out.tip; mute.2 ~ out.sleeve; " + OnePickup);

        Assert.Equal(
            ["down Joined 200", "up Value 20000"],
            AtJack(plan)
                .Where(one => one.Turned is null)
                .Select(one =>
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"{StateText.PositionOf(plan.Circuit.FindControl("mute")!, one.State)} {one.Expected!.Value.Kind} {one.Range}"
                    )
                )
                .Order(StringComparer.Ordinal)
        );
    }

    [Fact]
    public void Metal_IsReadToTheSleeve_WhetherItIsJoinedOrNot()
    {
        var plan = PlanOf(OnePickup + "; metal saddle; metal plate; saddle ~ vol.case");

        Assert.Equal(
            ["vol.case True", "saddle True", "plate False"],
            plan.Readings.Where(one => one.Points.Probe != plan.Circuit.Outputs[0].Tip)
                .Select(one => $"{plan.Circuit.NameOf(one.Points.Probe)} {one.Band.IsContinuity}")
        );
    }

    [Fact]
    public void Ring_ThatABatteryHangsOn_IsReadWithoutAPlug_AndShowsNothing()
    {
        var plan = PlanOfExample("7-active-buffer.wiring");
        var ring = plan.Readings.Single(one => plan.Circuit.NameOf(one.Points.Probe) == "out.ring");

        // With a plug in, ring and sleeve are one; without, the battery's minus leads nowhere while the battery is out.
        Assert.Equal(ReadingKind.None, ring.Expected!.Value.Kind);
        Assert.True(ring.Band.IsNothing);
    }

    [Fact]
    public void ToneDial_ThatChangesNoReading_IsTurnedOnceWhereTheSignalPassesIt()
    {
        var plan = PlanOfExample("8-twin-coil-cut.wiring");
        var turned = plan.Readings.Where(one => one.Turned?.Name.StartsWith("tone", StringComparison.Ordinal) == true);

        Assert.Equal(
            ["tone-n 0 at neck", "tone-b 0 at both"],
            turned.Select(one =>
                $"{DialsOf(one)} at {StateText.PositionOf(plan.Circuit.FindControl("tog")!, one.State)}"
            )
        );
    }

    [Fact]
    public void CoilWithoutAResistance_MakesTheReadingAssumed()
    {
        Every.Item(
            AtJack(PlanOf("pickup p single-coil; jack out mono; p.hot ~ out.tip; p.ground ~ out.sleeve")),
            one => Assert.True(one.IsAssumed)
        );
        Every.Item(AtJack(PlanOf(OnePickup)), one => Assert.False(one.IsAssumed));
    }

    [Fact]
    public void TwoJacks_AreEachRead_AndTheSecondSleeveToTheFirst()
    {
        var plan = PlanOf(TwoJackCircuits.Apart);
        var names = plan
            .Readings.Where(one => one.Turned is null)
            .Select(one => $"{plan.Circuit.NameOf(one.Points.Probe)} to {plan.Circuit.NameOf(one.Points.Reference)}")
            .ToList();

        Assert.Equal(["main.tip to main.sleeve", "second.tip to second.sleeve"], names.Take(2));
        Assert.Contains("second.sleeve to main.sleeve", names);
    }

    [Theory]
    [InlineData(199, 200)]
    [InlineData(200, 2e3)]
    [InlineData(7.5e3, 20e3)]
    [InlineData(250e3, 2e6)]
    [InlineData(19e6, 20e6)]
    [InlineData(double.PositiveInfinity, 20e6)]
    public void Range_IsTheLowestThatShowsTheWholeBand(double most, double range) =>
        Assert.Equal(range, MeterRange.For(new MeterBand(0, most)));

    [Fact]
    public void ManyPositions_AreTriedOneControlAtATime()
    {
        // Each of six capacitors to ground sounds different: 64 lines, more than a plan has positions.
        var caps = string.Concat(
            Enumerable
                .Range(1, 6)
                .Select(i => $"cap c{i} {i}n from s{i}.A1 to out.sleeve; switch s{i} spdt; s{i}.A0 ~ out.tip; ")
        );
        var plan = PlanOf(
            "pickup p single-coil dcr=8k; jack out mono; p.hot ~ out.tip; p.ground ~ out.sleeve; " + caps
        );

        Assert.True(
            Study.Of(plan.Circuit)!.Positions.Rows.Length > MostOf("lines of the table of positions in a bench plan")
        );
        Assert.Equal(7, AtJack(plan).Count());
    }

    [Fact]
    public void ManyReadings_StopAtTheBoundAndSaySo()
    {
        var most = (int)MostOf("readings of a bench plan");
        var metal = string.Concat(Enumerable.Range(1, most).Select(i => $"metal m{i}; m{i} ~ out.sleeve; "));
        var plan = PlanOf(
            "pickup p single-coil dcr=8k; jack out mono; p.hot ~ out.tip; p.ground ~ out.sleeve; " + metal
        );

        Assert.Equal(most, plan.Readings.Length);
        Assert.False(plan.AreAllReadings);
    }

    [Fact]
    public void ManyDials_StopAtTheBoundAndSaySo()
    {
        // None of them is wired: none changes the reading, and all the same there is an end to turning them.
        var most = MostOf("dials turned in the positions of a bench plan");
        Assert.True(PlanWith(most).AreAllReadings);
        Assert.False(PlanWith(most + 1).AreAllReadings);

        static BenchPlan PlanWith(long pots) =>
            BenchPlan.Of(
                Study.Of(
                    Bench.CompileText(
                        """
                        define pot bare "a track without a case"
                            body   round 24
                            lugs   1 5,16  2 0,16  3 -5,16
                            track  1 2 3

                        pickup p single-coil dcr=8k
                        jack out mono
                        wire p.hot to out.tip white
                        wire p.ground to out.sleeve black

                        """ + string.Concat(Enumerable.Range(1, (int)pots).Select(i => $"pot v{i} bare 1k linear\n"))
                    )
                )!
            );
    }

    internal static BenchPlan PlanOf(string wiring) => BenchPlan.Of(Study.Of(Bench.Of(wiring).Circuit)!);

    internal static BenchPlan PlanOfExample(string name) =>
        BenchPlan.Of(Study.Of(Bench.CompileText(File.ReadAllText(Repository.PathOf("examples", name))))!);

    internal static long MostOf(string counted) => Bounds.All.Single(bound => bound.Counted == counted).Most;

    private static IEnumerable<BenchReading> AtJack(BenchPlan plan) =>
        plan.Readings.Where(one => one.Points.Probe == plan.Circuit.Outputs[0].Tip);

    private static string DialsOf(BenchReading reading) =>
        reading.Turned is { } dial
            ? StateText.Of(dial, reading.State.Travels[dial.Index]).Replace('=', ' ')
            : "at rest";
}
