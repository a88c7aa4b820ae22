using System.Collections.Immutable;
using System.Globalization;
using CsCheck;
using WireText.Electrical.Studies;
using WireText.Matching;
using WireText.Testing;
using WireText.Tests.Electrical;

namespace WireText.Tests.Matching;

public class MatcherTests
{
    /// <summary>A meter sees the coil and the pot side by side.</summary>
    private const string Volume = """
        pickup p single-coil dcr=6k l=2.2H c=100p
        pot vol 250k audio
        jack out mono
        wire p.hot to vol.3 white
        wire vol.2 to out.tip red
        wire vol.1 to out.sleeve black
        wire p.ground to out.sleeve black

        """;

    /// <summary>A meter sees all three one after the other; the two resistors come from one bin.</summary>
    private const string Series = """
        pickup p single-coil dcr=6k l=2.2H c=100p
        resistor a 10k from p.hot to b.1
        resistor b 10k tol=8%
        jack out mono
        wire b.2 to out.tip white
        wire p.ground to out.sleeve black

        """;

    private static readonly Gen<double> Spread = Gen.Double[0.90, 1.10];

    private static readonly Gen<Trial> Trials = Gen.Select(
        Gen.Int[0, 2],
        Gen.Int[1, 3],
        Spread.Array[1, 4],
        Spread.Array[1, 5],
        Gen.Double[0.97, 1.03],
        Gen.Double[0.005, 0.03],
        (kind, count, coils, others, aim, tolerance) => new Trial(kind, count, coils, others, aim, tolerance)
    );

    /// <summary>
    /// Every way to choose, tried one by one, with readings by hand: R = p·v/(p + v) and p + a + b. Limits of a part: coil ±5 %, pot ±20 %,
    /// resistor ±5 % where the text has no other.
    /// </summary>
    [Fact]
    public void Match_FiveHundredSmallBins_IsAsGoodAsTheBestOfAllChoices() =>
        Samples.Each(
            Trials,
            500,
            trial =>
            {
                var plan = Matcher.Match(StudyOf(trial.Text), trial.Bin, trial.Count, []);

                var (holding, whole, cost) = trial.Best();
                Assert.True(plan.IsExact);
                Assert.Equal((holding, whole), (plan.Holding, plan.Instruments.Length));
                Assert.Equal(cost, plan.Cost, 1e-6 * (1 + cost));
                Assert.Equal(plan.Cost, plan.LeastCost, 1e-6 * (1 + cost));
                AssertEachOnce(plan, trial.Bin);
            },
            trial => trial.ToString()
        );

    /// <summary>A batch of ten from a bin of sixty, claims that tie four parts together: all whole, no part twice, and no worse than the order of the bin.</summary>
    [Fact]
    public void Match_TenFromSixty_IsWholeAndNoWorseThanTheBinsOrder()
    {
        var study = StudyOf(File.ReadAllText(Repository.PathOf("docs", "match", "guitar.wiring")));
        var bin = BinReader
            .Read(study.Circuit, File.ReadAllText(Repository.PathOf("docs", "match", "bin.csv")))
            .Value!.Parts;
        Assert.Equal(60, bin.Length);

        var plan = Matcher.Match(study, bin, 10, []);

        Assert.Equal(10, plan.Instruments.Length);
        AssertEachOnce(plan, bin);
        Assert.InRange(plan.LeastCost, 0, plan.Cost);
        var naive = Matcher.Match(
            study,
            [.. plan.Slots.SelectMany(slot => bin.Where(slot.Fits).Take(10)).Distinct()],
            10,
            []
        );
        Assert.True(plan.Holding >= naive.Holding);
    }

    /// <summary>A pair is to be alike: of 240, 250, 251 and 262 kΩ the nearest two are 250 and 251.</summary>
    [Fact]
    public void Match_APair_TakesTheTwoThatAreNearest()
    {
        var study = StudyOf(
            """
            pickup n single-coil
            pickup b single-coil
            pot vn 250k audio
            pot vb 250k audio
            jack out mono
            wire n.hot to vn.3 white
            wire b.hot to vb.3 white
            wire vn.2 to out.tip red
            wire vb.2 to out.tip red
            wire vn.1 to out.sleeve black
            wire vb.1 to out.sleeve black
            wire n.ground to out.sleeve black
            wire b.ground to out.sleeve black
            """
        );
        var slots = MatchSlot.Of(study.Circuit);
        var (vn, vb) = (IndexOf("vn"), IndexOf("vb"));
        ImmutableArray<BinPart> bin =
        [
            new("k1", "pickup", 6e3, null, null, 2),
            new("k2", "pickup", 6e3, null, null, 3),
            new("p240", "pot", 240e3, null, null, 4),
            new("p250", "pot", 250e3, null, null, 5),
            new("p262", "pot", 262e3, null, null, 6),
            new("p251", "pot", 251e3, null, null, 7),
        ];

        var plan = Matcher.Match(study, bin, 1, [(vn, vb)]);

        Assert.Equal(["p250", "p251"], new[] { vn, vb }.Select(slot => plan.Instruments[0].Parts[slot].Name).Order());
        Assert.Equal(["p240", "p262"], plan.LeftOver.Select(part => part.Name));

        int IndexOf(string name) => slots.Single(slot => slot.Part.Name == name) is var slot ? slots.IndexOf(slot) : -1;
    }

    /// <summary>One pickup for two instruments: another is to be bought; and where the claim fails, what would do.</summary>
    [Fact]
    public void Match_TooFewOrWrongParts_SaysWhatToBuy()
    {
        var study = StudyOf(Volume + "expect rest: reads 5.86k ±1%\n");
        ImmutableArray<BinPart> bin =
        [
            new("coil", "p", 6.2e3, null, null, 2),
            new("a", "pot", 250e3, null, null, 3),
            new("b", "pot", 240e3, null, null, 4),
        ];

        var plan = Matcher.Match(study, bin, 2, []);

        Assert.Equal((1, 0), (plan.Instruments.Length, plan.Holding));
        var missing = plan.Wanted.Single(wanted => wanted.Instrument is null);
        Assert.Equal(("p", 1), (missing.Slot.Part.Name, missing.Count));
        Assert.Equal((5.7e3, 6.3e3), (missing.Least, missing.Most));

        // With the pot that was taken the coil must be R·v/(v − R) for R of 5.86 kΩ ±1 %; forty steps tell it to 15 Ω.
        var better = plan.Wanted.Single(wanted => wanted.Instrument == 0);
        Assert.Equal("p", better.Slot.Part.Name);
        var pot = plan.Instruments[0].Parts[1].Value;
        Assert.Equal(CoilFor(5.86e3 * 0.99), better.Least, 15.0);
        Assert.Equal(CoilFor(5.86e3 * 1.01), better.Most, 15.0);

        double CoilFor(double reading) => reading * pot / (pot - reading);
    }

    [Fact]
    public void Match_EmptyBin_BuysAll()
    {
        var plan = Matcher.Match(StudyOf(Volume), [], 3, []);

        Assert.Empty(plan.Instruments);
        Assert.Equal([("p", 3), ("vol", 3)], plan.Wanted.Select(wanted => (wanted.Slot.Part.Name, wanted.Count)));
    }

    private static Study StudyOf(string text) => Study.Of(Bench.CompileText(text))!;

    private static void AssertEachOnce(MatchPlan plan, ImmutableArray<BinPart> bin)
    {
        var used = plan.Instruments.SelectMany(one => one.Parts).ToList();
        Assert.Equal(used.Count, used.Select(part => part.Name).Distinct().Count());
        Assert.Equal(
            bin.Select(part => part.Name).Order(),
            used.Concat(plan.LeftOver).Select(part => part.Name).Order()
        );
        foreach (var one in plan.Instruments)
        {
            for (var slot = 0; slot < plan.Slots.Length; slot++)
            {
                Assert.True(plan.Slots[slot].Fits(one.Parts[slot]));
            }
        }
    }

    /// <summary>A small bin, and what is to be made of it. Kind 0 has a pot and a claim, 1 two resistors and a claim, 2 a pot and no claim.</summary>
    private sealed record Trial(int Kind, int Count, double[] Coils, double[] Others, double Aim, double Tolerance)
    {
        /// <summary>A part at the very limit fits, however its value is rounded.</summary>
        private const double Edge = 1e-9;

        private double Target => Aim * (Kind == 1 ? 26e3 : 5.86e3);

        public string Text =>
            (Kind == 1 ? Series : Volume)
            + (
                Kind == 2
                    ? ""
                    : string.Create(
                            CultureInfo.InvariantCulture,
                            $"expect rest: reads {Target:0.######} ±{100 * Tolerance:0.####}%\n"
                        )
                        .Replace(" ±", "R ±", StringComparison.Ordinal)
            );

        public ImmutableArray<BinPart> Bin =>
            [
                .. Coils.Select((times, i) => new BinPart($"c{i}", "pickup", 6e3 * times, null, null, i)),
                .. Others.Select(
                    (times, i) =>
                        Kind == 1
                            ? new BinPart($"r{i}", "resistor", 10e3 * times, null, null, i)
                            : new BinPart($"v{i}", "pot", 250e3 * (1 + (3 * (times - 1))), null, null, i)
                ),
            ];

        /// <summary>The most that hold, then the most that are whole, then the lowest cost, of all choices.</summary>
        public (int Holding, int Whole, double Cost) Best()
        {
            var (target, tolerance) = Stated();
            var instruments = Instruments(target, tolerance).ToList();
            var best = (Holding: 0, Whole: 0, Cost: 0.0);
            Choose(0, [], 0, 0, 0);
            return best;

            void Choose(int start, HashSet<string> used, int holding, int whole, double cost)
            {
                if (
                    holding > best.Holding
                    || (holding == best.Holding && whole > best.Whole)
                    || (holding == best.Holding && whole == best.Whole && cost < best.Cost)
                )
                {
                    best = (holding, whole, cost);
                }

                for (var i = start; i < instruments.Count && whole < Count; i++)
                {
                    var (names, holds, own) = instruments[i];
                    if (!names.Exists(used.Contains))
                    {
                        Choose(i + 1, [.. used, .. names], holding + (holds ? 1 : 0), whole + 1, cost + own);
                    }
                }
            }
        }

        /// <summary>The claim as the text has it, to the digits that are written.</summary>
        private (double Target, double Tolerance) Stated() =>
            (
                double.Parse(Target.ToString("0.######", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture),
                double.Parse(
                    (100 * Tolerance).ToString("0.####", CultureInfo.InvariantCulture),
                    CultureInfo.InvariantCulture
                ) / 100
            );

        private IEnumerable<(List<string> Names, bool Holds, double Cost)> Instruments(double target, double tolerance)
        {
            var coils = Bin.Where(part => part.Kind == "pickup" && Math.Abs((part.Value / 6e3) - 1) <= 0.05 + Edge)
                .ToList();
            var others = Bin.Where(part => part.Kind != "pickup").ToList();
            foreach (var coil in coils)
            {
                foreach (var a in others.Where(part => IsWithin(part, Kind == 1 ? 0.05 : 0.20)))
                {
                    if (Kind == 1)
                    {
                        foreach (var b in others.Where(part => part != a && IsWithin(part, 0.08)))
                        {
                            yield return Judged([coil, a, b], coil.Value + a.Value + b.Value);
                        }
                    }
                    else
                    {
                        yield return Judged([coil, a], coil.Value * a.Value / (coil.Value + a.Value));
                    }
                }
            }

            bool IsWithin(BinPart part, double limit) =>
                Math.Abs((part.Value / (Kind == 1 ? 10e3 : 250e3)) - 1) <= limit + Edge;

            (List<string>, bool, double) Judged(List<BinPart> parts, double reading)
            {
                // Without a claim each part is to be as written, in its own tolerance.
                var deviation = (reading - target) / (tolerance * target);
                var (coil, pot) = (((parts[0].Value / 6e3) - 1) / 0.05, ((parts[1].Value / 250e3) - 1) / 0.20);
                return (
                    parts.ConvertAll(part => part.Name),
                    Kind == 2 || Math.Abs(deviation) <= 1,
                    Kind == 2 ? (coil * coil) + (pot * pot) : deviation * deviation
                );
            }
        }
    }
}
