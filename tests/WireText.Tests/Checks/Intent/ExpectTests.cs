using WireText.Checks.Intent;
using WireText.Testing;
using WireText.Tests.Electrical;
using WireText.Text;

namespace WireText.Tests.Checks.Intent;

/// <summary>Claims about the numbered circuits, whose verdicts two other solvers gave; see <see cref="RightVerdicts"/>.</summary>
public class ExpectTests
{
    [Theory]
    [InlineData(1, "mute=down: silence")]
    [InlineData(1, "rest: neck, reads 6.24k ±1%")]
    [InlineData(5, "sel=2: dead, reads 250k")]
    [InlineData(6, "sel=2: open")]
    [InlineData(8, "rest: neck series bridge, hum-cancelling, reads 12.9k")]
    [InlineData(8, "sp=3: neck parallel bridge, hum-cancelling, reads 3.34k")]
    [InlineData(11, "rest: bridge parallel neck, reads 3.34k ±1%")]
    [InlineData(12, "rest: neck parallel reversed bridge")]
    [InlineData(12, "rest: reversed neck parallel bridge")]
    [InlineData(13, "sel=1 ph=any: neck")]
    [InlineData(15, "cut=2: hb.n, reads 3.94k")]
    [InlineData(19, "vol=0: silence")]
    [InlineData(19, "vol=5: bridge parallel neck, reads 6.31k")]
    [InlineData(20, "vol=0: bridge, reads 6.81k")]
    [InlineData(20, "vol=0 v2=0: dead, reads 125k")]
    [InlineData(22, "rest: (hb.n parallel hx.n) series (hb.s parallel hx.s), hum-cancelling, reads 4.12k")]
    [InlineData(25, "rest: neck through lo")]
    [InlineData(30, "vol=5: neck, reads 64.1k")]
    [InlineData(31, "rest: neck, hum-cancelling, reads 12.2k")]
    [InlineData(31, "rest: neck series dummy")]
    [InlineData(32, "mix=0: bridge, reads 6.81k")]
    [InlineData(32, "mix=10: neck through mix parallel bridge")] // at the end of its travel too
    [InlineData(32, "mix=10: (neck parallel bridge) through vol")]
    [InlineData(25, "rest: (neck through lo) through vol")]
    [InlineData(32, "mix=0: bridge parallel neck")] // a trace may be named or not
    public void Claim_ThatTheWorkedVerdictBears_Holds(int number, string line)
    {
        Assert.Empty(Refutations(number, line));
    }

    [Theory]
    [InlineData(2, "mute=down: silence", "'silence' is expected at mute=down, but there is: open: the jack floats")]
    [InlineData(
        5,
        "sel=2: silence",
        "'silence' is expected at sel=2, but there is: dead: only 250 kΩ stay on the jack"
    )]
    [InlineData(
        11,
        "rest: neck series bridge",
        "'neck series bridge' is expected at rest, but there is: neck parallel bridge"
    )]
    [InlineData(
        11,
        "rest: neck parallel reversed bridge",
        "'neck parallel reversed bridge' is expected at rest, but there is: neck parallel bridge"
    )]
    [InlineData(11, "rest: neck", "'neck' is expected at rest, but there is: neck parallel bridge")]
    [InlineData(
        32,
        "mix=10: neck parallel bridge through mix",
        "'neck parallel bridge through mix' is expected at mix=10, but there is: neck parallel bridge"
    )]
    [InlineData(11, "rest: reads 3.6k", "'reads 3.6k' (3.49 kΩ to 3.71 kΩ) is expected at rest, but there is: 3.34 kΩ")]
    [InlineData(12, "rest: hum-cancelling", "at rest there is: the full hum of neck parallel bridge, out of phase")]
    [InlineData(
        13,
        "sel=2 ph=any: neck parallel bridge",
        "'neck parallel bridge' is expected at ph=2 sel=2, but there is: neck parallel bridge, out of phase"
    )]
    [InlineData(
        20,
        "vol=0 v2=0: silence",
        "'silence' is expected at vol=0 v2=0, but there is: dead: only 125 kΩ stay on the jack"
    )]
    [InlineData(22, "rest: hb parallel hx", "at rest there is: (hb.n parallel hx.n) series (hb.s parallel hx.s)")]
    [InlineData(25, "rest: reads 6k", "'reads 6k' (5.82 kΩ to 6.18 kΩ) is expected at rest, but there is: 250 kΩ")]
    [InlineData(
        1,
        "rest: neck through mute, battery on",
        "'neck through mute' is expected at rest, but there is: neck"
    )]
    [InlineData(1, "rest: battery on", "'battery on' is expected at rest, but there is: no battery")]
    public void Claim_ThatTheWorkedVerdictDenies_IsRefutedWithWhatIsThere(int number, string line, string message)
    {
        var finding = Assert.Single(Refutations(number, line));

        Assert.Equal(message, finding.Message);
    }

    [Fact]
    public void OthersAny_LeavesOutNoMute_AndNamesTheSmallestStatesThatFail()
    {
        var text = WithoutExpectations("2-two-pickups-mute.wiring");

        var found = Check(text + "expect sel=both others=any: bridge parallel neck\n");

        var finding = Assert.Single(found, f => f.Id == "expect");
        Assert.Equal("at sel=both mute=down there is: silence: tip and sleeve are joined", finding.Message);
    }

    [Fact]
    public void OthersAny_FailingInSeveralStates_NamesThemAll()
    {
        var text = WithoutExpectations("6-series-phase.wiring");

        var finding = Assert.Single(Check(text + "expect others=any: neck parallel bridge\n"), f => f.Id == "expect");

        Assert.Equal("at join=series phase=normal and in 2 more there is: neck series bridge", finding.Message);
        Assert.Equal(
            "it fails too at join=series phase=turned, join=parallel phase=turned",
            Assert.Single(finding.Related).Message
        );
    }

    [Fact]
    public void WireOnTheWrongThrow_ThatRefutesTwoLines_IsOneFindingWithTheOtherLineBeside()
    {
        var text = File.ReadAllText(Repository.PathOf("examples", "mistakes", "positions-exchanged.wiring"));

        var finding = Assert.Single(Check(text + "expect sel=neck: neck\n"), f => f.Id == "expect");

        Assert.Equal("'bridge' is expected at sel=bridge, but there is: neck", finding.Message);
        Assert.Equal(
            "refuted too: 'neck' is expected at sel=neck, but there is: bridge",
            Assert.Single(finding.Related).Message
        );
    }

    [Fact]
    public void ErrorThatExplainsIt_SpeaksAlone()
    {
        // Circuit 2: the mute opens the hot, so that silence is not what it gives.
        var circuit = Bench.CompileText(RightVerdicts.TextWith(2, "expect mute=down: silence"));

        Assert.Equal(["mute-opens-hot"], Checked.Findings(circuit).Select(f => f.Id));
    }

    /// <summary>A linear 250 kΩ pot at 5 between a 6.4 kΩ coil and 1 MΩ: a little over 6 dB down (voltage divider).</summary>
    [Fact]
    public void Level_OfAVolumeAtHalf_IsThatOfTheDivider()
    {
        Assert.Empty(Refutations(11, "vol=5: level -6.8dB"));
        Assert.Single(Refutations(11, "vol=5: level −3dB ±1dB"));
    }

    [Fact]
    public void Resonance_OfACoilIntoACable_IsThatOfItsInductanceAndCapacitance()
    {
        // f = 1/(2π√(LC)) with 2.4 H and 100 pF + 470 pF is 4303 Hz; the 1 MΩ load damps it little.
        const string text = """
            pickup neck single-coil dcr=6k l=2.4H c=100p
            jack   out  mono
            wire   neck.hot    to out.tip    white
            wire   neck.ground to out.sleeve black

            """;

        Assert.DoesNotContain(Check(text + "expect rest: resonates 4.3kHz ±1%\n"), f => f.Id == "expect");
        Assert.Matches(
            "4\\.(29|30) kHz",
            Assert.Single(Check(text + "expect rest: resonates 3kHz\n"), f => f.Id == "expect").Message
        );
    }

    /// <summary>H = 1/(1 + (R + jωL)(1/Rl + jωC)), C = 100 pF + 470 pF, Rl = 1 MΩ: +7.10 dB at 5 kHz, +0.44 dB at 1 kHz.</summary>
    [Fact]
    public void Level_AtAFrequency_IsThatOfTheClosedForm()
    {
        const string text = """
            pickup neck single-coil dcr=6k l=2.5H c=100p
            jack   out  mono
            wire   neck.hot    to out.tip    white
            wire   neck.ground to out.sleeve black

            """;

        Assert.DoesNotContain(
            Check(text + "expect rest: level 7.1dB at 5kHz ±0.1dB, level 0.44dB at 1kHz +-0.05dB\n"),
            f => f.Id.StartsWith("expect", StringComparison.Ordinal)
        );
        var refuted = Assert.Single(Check(text + "expect rest: level 1dB at 5kHz\n"), f => f.Id == "expect");
        Assert.Equal(
            "'level 1dB at 5kHz' (0.0 dB to 2.0 dB) is expected at rest, but there is: 7.1 dB",
            refuted.Message
        );
        Assert.EndsWith("write: level 7.1dB at 5kHz", refuted.Help, StringComparison.Ordinal);
    }

    /// <summary>
    /// A series circuit of the meter: 6 kΩ read where 7 kΩ are wound, since 1 MΩ is not on the meter; L from f = 1/(2π√(LC)).
    /// </summary>
    [Theory]
    [InlineData(
        "reads 6k",
        "'reads 6k' (5.82 kΩ to 6.18 kΩ) is expected at rest, but there is: 7.00 kΩ",
        "it fits with neck dcr=6k, or if this is what it is meant to do, write: reads 7k"
    )]
    [InlineData(
        "resonates 4.3kHz",
        "'resonates 4.3kHz' (4.17 kHz to 4.43 kHz) is expected at rest, but there is: 4.69 kHz",
        "it fits with neck l=2.4H, or if this is what it is meant to do, write: resonates 4.69kHz"
    )]
    public void Value_ThatDiffers_IsToldWithItsBandAndTheValueThatFits(string claim, string message, string help)
    {
        var found = Check(
            $"""
            pickup neck single-coil dcr=7k l=2H c=100p
            jack   out  mono
            wire   neck.hot    to out.tip    white
            wire   neck.ground to out.sleeve black
            expect rest: {claim}

            """
        );

        var finding = Assert.Single(found, f => f.Id == "expect");
        Assert.Equal((message, help), (finding.Message, finding.Help));
    }

    /// <summary>A pot that does nothing stands beside it, and has nothing to do with it: the value is told all the same.</summary>
    [Fact]
    public void Value_ThatDiffersBesideAWarning_IsToldWithTheValueThatFits()
    {
        var found = Check(
            """
            pickup neck single-coil dcr=7k l=2H c=100p
            pot    tone 250k audio
            jack   out  mono
            wire   neck.hot    to out.tip    white
            wire   neck.ground to out.sleeve black
            wire   tone.1 to tone.2 red
            wire   tone.case to out.sleeve black
            expect rest: reads 6k

            """
        );

        Assert.Contains(found, f => f is { Id: "inert-control", Severity: Severity.Warning });
        Assert.Equal(
            "it fits with neck dcr=6k, or if this is what it is meant to do, write: reads 7k",
            Assert.Single(found, f => f.Id == "expect").Help
        );
    }

    /// <summary>A wrong join is no value: nothing is said to fit, and what is read does not speak first.</summary>
    [Fact]
    public void Value_BesideARefutedJoin_IsNoneThatFits() =>
        Assert.StartsWith(
            "mend the wires, ",
            Assert.Single(Refutations(11, "rest: neck series bridge, reads 14k")).Help,
            StringComparison.Ordinal
        );

    /// <summary>Two readings that no one winding gives both.</summary>
    [Fact]
    public void Values_ThatNoOneValueFits_AreToBeCompared() =>
        Assert.StartsWith(
            "compare the values, and then the wires, ",
            Assert.Single(Refutations(11, "rest: reads 5k, resonates 2kHz")).Help,
            StringComparison.Ordinal
        );

    [Theory]
    [InlineData("level 1dB at 5kHz, level 4dB at 5kHz", true)]
    [InlineData("level 1dB at 5kHz, level 4dB at 6kHz", false)]
    [InlineData("level 1dB at 5kHz, level 4dB", false)]
    public void Levels_OfOneFrequency_ExcludeEachOther(string claims, bool areApart)
    {
        var found = Check(RightVerdicts.TextWith(11, $"expect rest: {claims}"));

        Assert.Equal(areApart, found.Any(f => f.Id == "expect-conflict"));
    }

    [Theory]
    [InlineData("out=no-plug: battery off", false)]
    [InlineData("out=no-plug: battery on", true)]
    [InlineData("rest: battery on", false)]
    public void Battery_OfAPlugThatSwitchesIt_IsDrawnFromWithThePlugIn(string line, bool isRefuted)
    {
        var text = File.ReadAllText(Repository.PathOf("examples", "7-active-buffer.wiring"));

        Assert.Equal(isRefuted, Check($"{text}expect {line}\n").Any(f => f.Id == "expect"));
    }

    [Fact]
    public void ClaimedSilence_InAPositionThatShorts_IsMeant()
    {
        // Circuit 7: the third throw goes to the sleeve.
        var text = RightVerdicts.TextWith(7, "expect sel=3: silence");

        Assert.DoesNotContain(Check(text), f => f.Severity == Severity.Error);
        Assert.Contains(Check(RightVerdicts.TextWith(7, "")), f => f.Id == "shorted-output");
    }

    [Fact]
    public void Refutation_HasItsCaretOnTheClaimAndOffersTheOneThatHolds()
    {
        var finding = Assert.Single(Refutations(11, "rest: hum-cancelling, neck series bridge"));

        Assert.Equal("neck series bridge", finding.Location.Text);
        Assert.EndsWith("write: neck parallel bridge", finding.Help, StringComparison.Ordinal);
    }

    /// <summary>An example without its own lines, which a wrong one would contradict.</summary>
    private static string WithoutExpectations(string example) =>
        string.Concat(
            File.ReadLines(Repository.PathOf("examples", example))
                .Where(line => !line.StartsWith("expect", StringComparison.Ordinal))
                .Select(line => line + "\n")
        );

    /// <summary>The check alone: reading would stop at leads joined in the air, and other errors would speak first.</summary>
    private static List<Finding> Refutations(int number, string line)
    {
        var circuit = Bench.CompileText(RightVerdicts.TextWith(number, "expect " + line));
        Assert.Single(circuit.Expectations);
        return [.. Checked.Report(circuit, [new Expect()]).Findings];
    }

    private static IReadOnlyList<Finding> Check(string text)
    {
        var result = Compilation.Of(new SourceText("a.wiring", text), NoSources.Instance);
        Assert.Empty(result.Tree.Findings);
        return result.Findings;
    }
}
