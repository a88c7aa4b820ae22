using WireText.Circuits;
using WireText.Electrical.Studies;
using WireText.Electrical.Tolerances;
using WireText.Testing;
using WireText.Text;

namespace WireText.Tests.Electrical.Tolerances;

public class RunJudgeTests
{
    private const int Counted = 100_000;

    /// <summary>Two coils in parallel, and the pot of the volume across them.</summary>
    private static readonly string TwoPickups = File.ReadAllText(
        Repository.PathOf("examples", "2-two-pickups-mute.wiring")
    );

    /// <summary>A pickup straight to the jack.</summary>
    private const string Straight = """
        pickup p single-coil dcr=6k l=2.5H c=100p
        jack out mono
        wire p.hot to out.tip white
        wire p.ground to out.sleeve black

        """;

    /// <summary>
    /// 100,000 instruments counted by another generator and by hand: 1/R = 1/neck + 1/bridge + 1/vol, coils ±5 %, pot ±20 %. The share
    /// must agree within the error that it tells and four deviations of the count.
    /// </summary>
    [Theory]
    [InlineData("3.28k ±3%")]
    [InlineData("3.2k ±2%")]
    [InlineData("3.3k ±1%")]
    public void Share_OfAReading_IsThatOfACount(string figure)
    {
        var (run, claim) = Judged(TwoPickups + $"expect sel=both: reads {figure} for 90%\n");
        var random = new Random(21);
        var counted = CountOf(() =>
        {
            var siemens =
                (1 / (6.1e3 * Within(random, 0.05)))
                + (1 / (7.3e3 * Within(random, 0.05)))
                + (1 / (250e3 * Within(random, 0.20)));
            return ((ReadsClaim)claim).Allows(1 / siemens);
        });

        AssertAgree(counted, run);
    }

    /// <summary>
    /// The same of a peak, in closed form: |1 + (R + jωL)(G + jωC)| is least at ω² = ((1 + RG) − (LG + RC)²/(2LC))/(LC), with the cable
    /// of 470 pF in C and the input of 1 MΩ in G.
    /// </summary>
    [Theory]
    [InlineData("4.2kHz ±3%")]
    [InlineData("4.15kHz ±2%")]
    public void Share_OfAPeak_IsThatOfACount(string figure)
    {
        var (run, claim) = Judged(Straight + $"expect rest: resonates {figure} for 80%\n");
        var random = new Random(22);
        var counted = CountOf(() =>
        {
            var (r, l, g) = (6e3 * Within(random, 0.05), 2.5 * Within(random, 0.05), 1e-6);
            var c = (100e-12 * Within(random, 0.10)) + 470e-12;
            var cross = (l * g) + (r * c);
            var square = (1 + (r * g) - (cross * cross / (2 * l * c))) / (l * c);
            return ((ResonatesClaim)claim).Allows(Math.Sqrt(square) / (2 * Math.PI));
        });

        AssertAgree(counted, run);
    }

    /// <summary>The same of a level at a frequency: the modulus of that quotient.</summary>
    [Fact]
    public void Share_OfALevel_IsThatOfACount()
    {
        var (run, claim) = Judged(Straight + "expect rest: level 0dB at 6kHz ±1dB for 60%\n");
        var random = new Random(23);
        var omega = 2 * Math.PI * 6e3;
        var counted = CountOf(() =>
        {
            var series = new System.Numerics.Complex(6e3 * Within(random, 0.05), omega * 2.5 * Within(random, 0.05));
            var across = new System.Numerics.Complex(1e-6, omega * ((100e-12 * Within(random, 0.10)) + 470e-12));
            return ((LevelAtClaim)claim).Allows(-20 * Math.Log10((1 + (series * across)).Magnitude));
        });

        AssertAgree(counted, run);
    }

    /// <summary>Between the ends that nothing passes no instrument needs to be drawn: (6.1 ∥ 7.3 ∥ 250) kΩ is 3.11 to 3.45 kΩ.</summary>
    [Fact]
    public void Share_OfAReadingThatHoldsAtBothEnds_IsAllOfThem()
    {
        Assert.Equal(RunShare.All, Judged(TwoPickups + "expect sel=both: reads 3.28k ±5.5% for 100%\n").Run);
        Assert.True(Judged(TwoPickups + "expect sel=both: reads 3.28k ±4% for 100%\n").Run.Share < 1);
    }

    /// <summary>Where all of n are hits the score interval reaches down to n/(n + z²); at half of them it is 1/2 ± z/2/√(n + z²) (Wilson 1927).</summary>
    [Fact]
    public void Of_HitsAndCount_IsTheIntervalOfWilson()
    {
        var square = RunShare.Deviations * RunShare.Deviations;

        Assert.Equal(1_000 / (1_000 + square), RunShare.Of(1_000, 1_000).Low, 1e-12);
        Assert.Equal(1, RunShare.Of(1_000, 1_000).High, 1e-12);
        Assert.Equal(0.5 - (RunShare.Deviations / 2 / Math.Sqrt(1_000 + square)), RunShare.Of(500, 1_000).Low, 1e-12);
    }

    [Theory]
    [InlineData("reads 3.28k ±3% for 80%", null)]
    [InlineData("reads 3.28k ±3% for 99%", "of a run (")]
    [InlineData("reads 3.28k ±3% for 0%", "'0%' is no share of a run")]
    [InlineData("reads 3.28k ±3% for 101%", "'101%' is no share of a run")]
    [InlineData("reads 3.28k ±3% for 95", "'95' is no share of a run")]
    [InlineData("resonates 5.23kHz ±5% for 95%", null)]
    [InlineData("resonates 5.5kHz ±3% for 50%", "of a run (")]
    public void Check_AClaimOverARun_IsJudgedOverIt(string claim, string? problem)
    {
        var findings = FindingsOf(TwoPickups + $"expect sel=both: {claim}\n");

        if (problem is null)
        {
            Assert.Empty(findings);
        }
        else
        {
            Assert.Contains(problem, Assert.Single(findings).Message, StringComparison.Ordinal);
        }
    }

    /// <summary>What the finding says to write instead holds.</summary>
    [Fact]
    public void Check_WhatToWriteInstead_Holds()
    {
        var help = Assert.Single(FindingsOf(TwoPickups + "expect sel=both: reads 3.28k ±3% for 99%\n")).Help!;

        var instead = help[(help.IndexOf("write: ", StringComparison.Ordinal) + "write: ".Length)..].Split('\n')[0];
        Assert.StartsWith("reads 3.28k ±3% for ", instead, StringComparison.Ordinal);
        Assert.Empty(FindingsOf(TwoPickups + $"expect sel=both: {instead}\n"));
    }

    /// <summary>Nine of ten and two of ten may be others, nine of ten and nine of ten not; and one as written is no share of a run.</summary>
    [Theory]
    [InlineData("reads 3.28k ±3% for 80%, reads 3.9k for 1%", false)]
    [InlineData("reads 3.28k ±3% for 80%, reads 3.9k for 90%", true)]
    [InlineData("reads 3.28k ±3%, reads 3.9k for 90%", false)]
    public void Conflict_OfClaimsOverARun_NeedsAnInstrumentInBoth(string claims, bool isConflict)
    {
        var found = FindingsOf(TwoPickups + $"expect sel=both: {claims}\n").Select(finding => finding.Id);

        Assert.Equal(isConflict, found.Contains("expect-conflict"));
    }

    private static (RunShare Run, Claim Claim) Judged(string text)
    {
        var study = Study.Of(Bench.CompileText(text))!;
        var expectation = study.Circuit.Expectations[^1];
        var claim = Assert.Single(expectation.Claims);
        return (new RunJudge(study.Analyst).ShareOf(claim, expectation.State), claim);
    }

    private static List<Finding> FindingsOf(string text) =>
        [
            .. Compilation
                .Of(new SourceText("run.wiring", text), NoSources.Instance)
                .Findings.Where(finding => finding.Severity == Severity.Error),
        ];

    private static double CountOf(Func<bool> isHit) =>
        Enumerable.Range(0, Counted).Count(_ => isHit()) / (double)Counted;

    private static double Within(Random random, double tolerance) => 1 + (tolerance * ((2 * random.NextDouble()) - 1));

    private static void AssertAgree(double counted, RunShare run)
    {
        var stray = 4 * Math.Sqrt(counted * (1 - counted) / Counted);
        Assert.InRange(counted, run.Low - stray, run.High + stray);
        Assert.InRange(run.Share, run.Low, run.High);
        Assert.InRange(run.High - run.Low, 0.001, 0.13);
    }
}
