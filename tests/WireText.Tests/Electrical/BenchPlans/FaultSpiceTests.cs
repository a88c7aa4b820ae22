using WireText.Electrical.BenchPlans;
using WireText.Electrical.Networks;
using WireText.Electrical.Solving;
using WireText.Testing;
using WireText.Tests.Output;

namespace WireText.Tests.Electrical.BenchPlans;

/// <summary>ngspice as referee of the plan: what a meter shows with ten faults in each of four examples, and which readings are wrong.</summary>
public class FaultSpiceTests
{
    private const int FaultsTried = 10;

    /// <summary>The joints of the deck have some, in ohms.</summary>
    private const double JointsOhms = 0.1;

    private const double Tolerance = 1e-4;

    private static readonly int[] Sides = [-1, 0, 1];

    public static TheoryData<string> Examples =>
        ["1-one-pickup.wiring", "2-two-pickups-mute.wiring", "5-bass-two-volumes.wiring", "6-series-phase.wiring"];

    [SkippableTheory]
    [MemberData(nameof(Examples))]
    public void TenFaults_AreReadAndJudgedAsByNgspice(string example)
    {
        Ngspice.SkipWhereAbsent();

        var plan = BenchReadingTests.PlanOfExample(example);
        var all = FaultsOf(plan).ToList();
        var tried = Enumerable.Range(0, FaultsTried).Select(i => all[i * all.Count / FaultsTried]).ToList();
        var right = Show(plan, [null])[0];
        var shown = Show(plan, [.. tried.Select(one => one.Fault)]);

        Every.Item(Enumerable.Range(0, plan.Readings.Length), i => AssertSame(right[i], plan.Readings[i].Expected));
        Every.Item(
            tried.Zip(shown),
            pair =>
            {
                var ((fault, group), meters) = pair;
                var faulty = fault.In(plan.Circuit);
                var wrong = Enumerable.Range(0, meters.Length).Where(i => AreApart(meters[i], right[i])).ToList();
                for (var i = 0; i < meters.Length; i++)
                {
                    var network = Network.Of(plan.Readings[i].Points.SeenIn(faulty))!;
                    AssertSame(meters[i], Ohmmeter.Read(network, plan.Readings[i].State));
                }

                Assert.Equal(group is null, wrong.Count == 0);
                if (group is not null)
                {
                    Assert.Subset(group.Wrong.Select(one => one.Reading).ToHashSet(), wrong.ToHashSet());
                    Every.Item(group.Wrong, one => AssertHolds(one.Band, meters[one.Reading]));
                }
            }
        );
    }

    private static IEnumerable<(Fault Fault, FaultGroup? Group)> FaultsOf(BenchPlan plan) =>
        plan
            .Faults.Groups.SelectMany(group => group.Faults.Select(fault => (fault, (FaultGroup?)group)))
            .Concat(plan.Faults.Unseen.Select(fault => (fault, (FaultGroup?)null)));

    /// <summary>For each fault what ngspice's meter shows at each reading.</summary>
    private static List<Shown[]> Show(BenchPlan plan, IReadOnlyList<Fault?> faults)
    {
        var deck = new MeterDeck();
        foreach (var fault in faults)
        {
            foreach (var reading in plan.Readings)
            {
                foreach (var side in Sides)
                {
                    deck.Add(plan.Circuit, reading, fault, side);
                }
            }
        }

        var ohms = deck.Read().Chunk(Sides.Length).Select(three => new Shown(three[0], three[1], three[2]));
        return [.. ohms.Chunk(plan.Readings.Length)];
    }

    private static void AssertSame(Shown meter, Reading? reading)
    {
        var expected = reading!.Value;
        AssertNear(meter.Low, expected.Least);
        AssertNear(meter.Middle, expected.Ohms);
        AssertNear(meter.High, expected.Most);
    }

    private static void AssertHolds(MeterBand band, Shown meter)
    {
        Assert.True(
            band.Least <= meter.Seen.Low + JointsOhms + (Tolerance * meter.Seen.Low),
            $"{band} has not {meter}"
        );
        Assert.True(
            band.Most >= meter.Seen.High - JointsOhms - (Tolerance * Math.Min(meter.Seen.High, MeterRange.Highest)),
            $"{band} has not {meter}"
        );
    }

    /// <summary>What is over the meter's highest range is nothing to it.</summary>
    private static void AssertNear(double meter, double ohms)
    {
        if (meter > MeterRange.Highest || ohms > MeterRange.Highest)
        {
            Assert.True(meter > MeterRange.Highest && ohms > MeterRange.Highest, $"ngspice {meter}, plan {ohms}");
            return;
        }

        Assert.Equal(meter, ohms, JointsOhms + (Tolerance * meter));
    }

    /// <summary>True when no parts within tolerance make both show the same: nothing is left of 1 Ω, or shown over 20 MΩ.</summary>
    private static bool AreApart(Shown one, Shown other) =>
        one.Seen.Low > other.Seen.High || other.Seen.Low > one.Seen.High;

    private sealed record Shown(double Low, double Middle, double High)
    {
        public (double Low, double High) Seen =>
            High < MeterBand.ContinuityOhms
                ? (0, MeterBand.ContinuityOhms)
                : (Math.Min(Low, MeterRange.Highest), High > MeterRange.Highest ? double.PositiveInfinity : High);
    }
}
