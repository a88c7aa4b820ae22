using WireText.Tests.Electrical;
using WireText.Text;

namespace WireText.Tests.Checks.Intent;

/// <summary>Claims that cannot be true together are an error of their own, and are not held against the wires.</summary>
public class ExpectConflictTests
{
    private const string Guitar = """
        pickup neck   single-coil dcr=6k
        pickup bridge single-coil dcr=7k
        switch sel    spdt
        button mute   momentary
        pot    vol    250k audio
        jack   out    mono
        wire   neck.hot   to sel.A1 white
        wire   bridge.hot to sel.A2 yellow
        wire   sel.A0     to vol.3  red
        wire   vol.2      to out.tip blue
        wire   mute.1     to out.tip blue
        wire   mute.2     to out.sleeve black
        wire   neck.ground   to vol.case black
        wire   bridge.ground to vol.case black
        wire   vol.1 to vol.case to out.sleeve bare

        """;

    [Theory]
    [InlineData("sel=1: neck", "sel=1: bridge", "bridge")]
    [InlineData("sel=1: neck", "sel=1: neck parallel bridge", "neck parallel bridge")]
    [InlineData("rest: neck series bridge", "rest: neck parallel bridge", "neck parallel bridge")]
    [InlineData("rest: neck parallel bridge", "rest: neck parallel reversed bridge", "neck parallel reversed bridge")]
    [InlineData("sel=1: neck", "sel=1: silence", "silence")]
    [InlineData("sel=1: dead", "sel=1: silence", "silence")]
    [InlineData("sel=1: dead", "sel=1: open", "open")]
    [InlineData("sel=1: open", "sel=1: resonates 4kHz", "resonates 4kHz")]
    [InlineData("sel=1: silence", "sel=1: hum-cancelling", "hum-cancelling")]
    [InlineData("sel=1: reads 5.9k", "sel=1: reads 7k", "reads 7k")]
    [InlineData("sel=1: reads 5.9k", "sel=1: open", "open")]
    [InlineData("sel=1: resonates 3kHz", "sel=1: resonates 4kHz", "resonates 4kHz")]
    [InlineData("vol=5: level -6dB", "vol=5: level -12dB", "level -12dB")]
    [InlineData("sel=1: battery on", "sel=1: battery off", "battery off")]
    [InlineData("sel=1: neck", "sel=any: bridge", "bridge")]
    [InlineData("mute=down others=any: silence", "sel=2 mute=down: bridge", "bridge")]
    public void Claims_ThatExcludeEachOther_AreOneErrorWithBothPlaces(string first, string second, string at)
    {
        var finding = Assert.Single(Check($"expect {first}\nexpect {second}\n"));

        Assert.Equal(("expect-conflict", Severity.Error), (finding.Id, finding.Severity));
        Assert.Equal(at, finding.Location.Text);
        Assert.Equal(
            first[(first.IndexOf(':', StringComparison.Ordinal) + 2)..],
            Assert.Single(finding.Related).Location.Text
        );
    }

    [Fact]
    public void Claims_OfOneLine_ConflictToo()
    {
        var finding = Assert.Single(Check("expect sel=1: neck, silence\n"));

        Assert.Equal("'silence' and 'neck' are expected at sel=1: one excludes the other", finding.Message);
    }

    [Theory]
    [InlineData("sel=1: neck", "sel=2: bridge")]
    [InlineData("sel=1: neck", "sel=1 mute=down: silence")]
    [InlineData("vol=10: neck", "vol=0: silence")]
    [InlineData("sel=1: neck, reads 5.86k", "sel=1: neck, reads 5.9k")] // 6 kΩ beside 250 kΩ is 5.86 kΩ
    [InlineData("sel=1: reads 5.86k", "sel=1: neck")]
    [InlineData("mute=down: silence", "mute=down: reads 0R")]
    [InlineData("sel=1: neck", "sel=1: neck")]
    public void Claims_ThatGoTogether_AreNoConflict(string first, string second) =>
        Assert.Empty(Check($"expect {first}\nexpect {second}\n"));

    [Fact]
    public void HumCancelling_SaidTwice_IsNoConflict() =>
        Assert.DoesNotContain(
            Check("expect rest: hum-cancelling\nexpect rest: hum-cancelling\n"),
            finding => finding.Id == "expect-conflict"
        );

    /// <summary>In circuit 32 the neck is a trace beside the bridge: naming it or not are both true.</summary>
    [Fact]
    public void Claims_ThatBothHold_AreNoConflict()
    {
        var circuit = Bench.CompileText(
            RightVerdicts.TextWith(32, "expect mix=0: bridge\nexpect mix=0: bridge parallel neck")
        );

        Assert.DoesNotContain(Checked.Findings(circuit), finding => finding.Id is "expect-conflict" or "expect");
    }

    [Fact]
    public void OtherLines_BesideAConflict_AreStillJudged()
    {
        var found = Check("expect sel=1: neck\nexpect sel=1: bridge\nexpect sel=2: neck\n");

        Assert.Equal(["expect-conflict", "expect"], found.Select(finding => finding.Id));
        Assert.Equal("neck", found[1].Location.Text);
    }

    private static List<Finding> Check(string lines) =>
        [
            .. Checked
                .Report(Bench.CompileText(Guitar + lines))
                .Findings.Where(finding => finding.Severity > Severity.Right),
        ];
}
