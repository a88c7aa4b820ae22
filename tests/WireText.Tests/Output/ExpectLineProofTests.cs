using WireText.Checks.Intent;
using WireText.Electrical.Studies;
using WireText.Output;
using WireText.Testing;
using WireText.Tests.Checks;
using WireText.Tests.Checks.Mutants.Harnesses;
using WireText.Tests.Electrical;

namespace WireText.Tests.Output;

/// <summary>What the program writes of a circuit is true of it: every line is read, proven, and said once.</summary>
public class ExpectLineProofTests
{
    /// <summary>Circuits whose lines were refuted by the circuit itself, and their neighbours.</summary>
    private static readonly Dictionary<string, string> Odd = new()
    {
        ["parallel coils inside a parallel, a volume on the wiper each"] = """
            pickup neck humbucker-4 dcr=7.6k l=4.2H
            pickup bridge humbucker-4 dcr=8.4k l=4.8H
            pot va 500k audio; pot vb 500k audio; jack out mono
            neck.n-start ~ neck.s-finish ~ va.2; neck.n-finish ~ neck.s-start ~ va.case
            bridge.n-start ~ vb.2; bridge.n-finish ~ bridge.s-finish; bridge.s-start ~ vb.case
            neck.shield ~ va.case; bridge.shield ~ vb.case; va.case ~ vb.case ~ va.1 ~ vb.1 ~ out.sleeve
            va.3 ~ vb.3 ~ out.tip
            """,
        ["parallel coils inside a parallel, a volume on lug 3 each"] = """
            pickup neck humbucker-4 dcr=7.6k l=4.2H
            pickup bridge humbucker-4 dcr=8.4k l=4.8H
            pot va 500k audio; pot vb 500k audio; jack out mono
            neck.n-start ~ neck.s-finish ~ va.3; neck.n-finish ~ neck.s-start ~ va.case
            bridge.n-start ~ bridge.s-finish ~ vb.3; bridge.n-finish ~ bridge.s-start ~ vb.case
            neck.shield ~ va.case; bridge.shield ~ vb.case; va.case ~ vb.case ~ va.1 ~ vb.1 ~ out.sleeve
            va.2 ~ vb.2 ~ out.tip
            """,
        ["a blend before a master volume"] = """
            pickup neck single-coil dcr=6.1k l=2.2H c=110p wind=ccw magnet=south
            pickup bridge single-coil dcr=7.2k l=2.7H c=120p wind=cw magnet=north
            pot mix blend 250k; pot vol 250k audio; jack out mono
            neck.hot ~ mix.a.3; bridge.hot ~ mix.b.1; mix.a.2 ~ mix.b.2 ~ vol.3; vol.2 ~ out.tip
            neck.ground ~ bridge.ground ~ vol.case; vol.1 ~ vol.case; mix.case ~ vol.case; vol.case ~ out.sleeve
            """,
        ["a blend with parallel coils on one side"] = """
            pickup neck humbucker-4 dcr=7.6k l=4.2H
            pickup bridge single-coil dcr=7.2k l=2.7H c=120p wind=cw magnet=north
            pot mix blend 250k; pot vol 250k audio; jack out mono
            neck.n-start ~ neck.s-finish ~ mix.a.3; neck.n-finish ~ neck.s-start ~ vol.case; bridge.hot ~ mix.b.1
            mix.a.2 ~ mix.b.2 ~ vol.3; vol.2 ~ out.tip; neck.shield ~ vol.case
            bridge.ground ~ vol.case; vol.1 ~ vol.case; mix.case ~ vol.case; vol.case ~ out.sleeve
            """,
        ["a rheostat that blends one pickup in, resting half way"] = """
            pickup neck single-coil dcr=6.1k l=2.2H c=110p wind=ccw magnet=south
            pickup bridge single-coil dcr=7.2k l=2.7H c=120p wind=cw magnet=north
            pot mix 250k linear; pot vol 250k audio; jack out mono; rest mix=5
            neck.hot ~ mix.3; mix.2 ~ vol.3; bridge.hot ~ vol.3; vol.2 ~ out.tip
            neck.ground ~ bridge.ground ~ vol.case; vol.1 ~ vol.case; mix.case ~ vol.case; vol.case ~ out.sleeve
            """,
        ["a pair of parallel pickups through a resistor, beside a third"] = """
            pickup a single-coil dcr=6.1k l=2.2H; pickup b single-coil dcr=6.4k l=2.3H; pickup c single-coil dcr=6.8k l=2.5H
            pot mix 100k linear; pot vol 250k audio; jack out mono; cap lo 4.7n
            a.hot ~ b.hot ~ lo.1; lo.2 ~ mix.3; mix.2 ~ c.hot ~ vol.3; vol.2 ~ out.tip
            a.ground ~ b.ground ~ c.ground ~ vol.case; vol.1 ~ vol.case; mix.case ~ vol.case; vol.case ~ out.sleeve
            """,
        ["series pickups, a volume across each"] = """
            pickup neck single-coil dcr=6.1k l=2.2H c=110p wind=ccw magnet=south
            pickup bridge single-coil dcr=7.2k l=2.7H c=120p wind=cw magnet=north
            pot va 250k audio; pot vb 250k audio; jack out mono
            neck.hot ~ va.3; neck.ground ~ va.1 ~ vb.2; va.2 ~ out.tip
            bridge.hot ~ vb.3; bridge.ground ~ vb.1 ~ out.sleeve; va.case ~ vb.case ~ out.sleeve
            """,
        ["a board, a battery and a switched ring"] = """
            pickup neck single-coil dcr=6.1k l=2.2H c=110p wind=ccw magnet=south
            pot vol 25k audio; preamp pre buffer; battery cell 9V; jack out stereo
            neck.hot ~ pre.in; neck.ground ~ pre.common ~ vol.case; pre.out ~ vol.3; vol.2 ~ out.tip
            vol.1 ~ vol.case; vol.case ~ out.sleeve; cell.plus ~ pre.plus; cell.minus ~ out.ring
            """,
        ["a tip that rests on the sleeve"] = """
            pickup neck single-coil dcr=6.1k l=2.2H c=110p wind=ccw magnet=south
            pot vol 250k audio; jack out mono-switched
            neck.hot ~ vol.3; neck.ground ~ vol.case; vol.2 ~ out.tip; vol.1 ~ vol.case; vol.case ~ out.sleeve
            out.tip-break ~ out.sleeve
            """,
    };

    public static TheoryData<string> Examples => Rows.Of(Repository.Examples);

    public static TheoryData<int> Worked => Rows.Of(Enumerable.Range(1, RightVerdicts.Count));

    public static TheoryData<int> Numbers => Rows.Of(UsualHarnesses.All.Select(harness => harness.Number));

    public static TheoryData<string> Names => Rows.Of(Odd.Keys);

    [Theory]
    [MemberData(nameof(Examples))]
    public void Lines_OfAnExample_AreConfirmedByIt(string path) => AssertConfirmed(File.ReadAllText(path));

    [Theory]
    [MemberData(nameof(Worked))]
    public void Lines_OfAWorkedCircuit_AreConfirmedByIt(int number) =>
        AssertConfirmed(RightVerdicts.TextWith(number, ""));

    [Theory]
    [MemberData(nameof(Numbers))]
    public void Lines_OfAHarness_AreConfirmedByIt(int number) => AssertConfirmed(UsualHarnesses.All[number - 1].Text);

    [Theory]
    [MemberData(nameof(Names))]
    public void Lines_OfAnOddCircuit_AreConfirmedByIt(string name) => AssertConfirmed(Bench.Expand(Odd[name]));

    /// <summary>Each line alone, so that one that is refuted is told by its own text.</summary>
    private static void AssertConfirmed(string text)
    {
        var study = Study.Of(Bench.CompileText(text))!;
        string[] lines =
        [
            .. ExpectLines
                .Write(study)
                .Split('\n', StringSplitOptions.RemoveEmptyEntries)
                .Where(line => !line.StartsWith('#')),
        ];
        var before = study.Circuit.Expectations.Length;
        var pinned = Bench.CompileText($"{text}\n{string.Join('\n', lines)}\n");
        var judge = Study.Of(pinned)!.Judge;

        Assert.Equal(lines.Distinct(), lines);
        Assert.Equal(before + lines.Length, pinned.Expectations.Length);
        var refuted = pinned
            .Expectations.Skip(before)
            .Zip(lines)
            .Where(pair => !judge.Holds(pair.First, mayNameTraces: true))
            .Select(pair => pair.Second);
        Assert.Equal([], refuted);
        Assert.Empty(
            Checked
                .Report(pinned, [new Expect(), new ExpectConflict(), new ExpectNotJudged()])
                .Findings.Select(found => found.Message)
        );
    }
}
