using WireText.Electrical.Studies;
using WireText.Output;
using WireText.Testing;
using WireText.Tests.Electrical;

namespace WireText.Tests.Output;

/// <summary>What the lines leave no hole for; that they are true is <see cref="ExpectLineProofTests"/>.</summary>
public class ExpectLinesTests
{
    private const string Pickup = "pickup neck single-coil dcr=6.1k l=2.2H c=110p; neck.ground ~ out.sleeve; ";

    [Fact]
    public void Lines_OfTheSmallestGuitar_PinRestAndWhatItsVolumeDoes()
    {
        var lines = LinesOf(File.ReadAllText(Repository.PathOf("examples", "1-one-pickup.wiring")));

        Assert.StartsWith("expect  rest:  bridge, reads 6.9k, resonates ", lines[0], StringComparison.Ordinal);
        Assert.StartsWith("expect  vol=5:  bridge, ", lines[1], StringComparison.Ordinal);
        Assert.Equal("expect  vol=0:  silence, reads 0R", lines[2]);
    }

    [Theory]
    [InlineData(5, "0 10")]
    [InlineData(3, "5 0 10")]
    [InlineData(10, "5 0")]
    [InlineData(0, "5 10")]
    public void Dial_ThatRestsAnywhere_IsPinnedInTheMiddleAndAtBothEnds(int rest, string travels)
    {
        var lines = LinesOf(
            Bench.Expand(
                Pickup
                    + $"jack out; pot vol 250k linear; rest vol={rest}; neck.hot ~ vol.3; vol.2 ~ out.tip; vol.1 ~ vol.case ~ out.sleeve"
            )
        );

        Assert.Equal(
            travels.Split(' ').Select(travel => $"expect  vol={travel}:"),
            lines.Skip(1).Select(line => line[..(line.IndexOf(':', StringComparison.Ordinal) + 1)])
        );
    }

    /// <summary>25k across a coil of 2.2 H leaves no peak: the level in the treble tells a capacitor from none.</summary>
    [Fact]
    public void State_WithoutAPeak_IsPinnedInTheTreble()
    {
        const string loaded = Pickup + "jack out; resistor load 25k from out.tip to out.sleeve; neck.hot ~ out.tip";

        var line = Assert.Single(LinesOf(Bench.Expand(loaded)));

        // H = 1/(1 + (R + jωL)(1/25k + 1/1M + jωC)) at 5 kHz, C = 110 pF + 470 pF: −9.4 dB.
        Assert.EndsWith(", level -9.4dB at 5kHz", line, StringComparison.Ordinal);
    }

    /// <summary>A volume for each position: where the one is on the way, the other does nothing.</summary>
    [Theory]
    [InlineData("neck", "bridge")] // two rows of the table
    [InlineData("neck", "neck")] // one: with the dials at rest the switch does nothing
    public void Dial_ThatDoesNothing_IsHeldToThat(string first, string second)
    {
        var lines = LinesOf(
            Bench.Expand(
                Pickup
                    + "pickup bridge single-coil dcr=7.1k l=2.7H c=120p; bridge.ground ~ out.sleeve; jack out; pot a 250k linear; pot b 250k linear; "
                    + $"switch sel spdt; {first}.hot ~ a.3; {second}.hot ~ b.3; a.2 ~ sel.A1; b.2 ~ sel.A2; sel.A0 ~ out.tip; "
                    + "a.1 ~ b.1 ~ a.case ~ b.case ~ out.sleeve"
            )
        );

        Assert.Contains(lines, line => line.StartsWith($"expect  sel=1 b=0:  {first}, ", StringComparison.Ordinal));
        Assert.Contains(lines, line => line.StartsWith($"expect  sel=2 a=0:  {second}, ", StringComparison.Ordinal));
        Assert.Contains("expect  sel=1 a=0:  silence, reads 0R", lines);
    }

    [Fact]
    public void Capacitor_ThatIsHeardOnlyWithADialTurned_IsPinnedThere()
    {
        var lines = LinesOf(
            Bench.Expand(
                Pickup
                    + "jack out; pot tone no-load 250k linear; switch voice spdt; cap a 10n; cap b 47n; neck.hot ~ out.tip; "
                    + "tone.3 ~ out.tip; tone.2 ~ voice.A0; voice.A1 ~ a.1; voice.A2 ~ b.1; a.2 ~ b.2 ~ tone.case ~ out.sleeve"
            )
        );

        Assert.Contains(lines, line => line.StartsWith("expect  voice=1 tone=0:", StringComparison.Ordinal));
        Assert.Contains(lines, line => line.StartsWith("expect  voice=2 tone=0:", StringComparison.Ordinal));
    }

    /// <summary>A mono plug joins ring and sleeve and so closes the supply; without one, and with a stereo plug, it is open.</summary>
    [Fact]
    public void Battery_OnTheRing_IsPinnedWithEachPlugAndWithout()
    {
        var lines = LinesOf(
            Bench.Expand(
                Pickup
                    + "jack out stereo; preamp pre buffer; battery cell 9V; neck.hot ~ pre.in; pre.out ~ out.tip; "
                    + "pre.common ~ out.sleeve; cell.plus ~ pre.plus; cell.minus ~ out.ring"
            )
        );

        Assert.Contains(lines, line => line.StartsWith("expect  rest:", StringComparison.Ordinal) && IsOn(line));
        Assert.Contains(
            lines,
            line => line.StartsWith("expect  out=no-plug:", StringComparison.Ordinal) && IsOff(line)
        );
        Assert.Contains(
            lines,
            line => line.StartsWith("expect  out=stereo-plug:", StringComparison.Ordinal) && IsOff(line)
        );

        static bool IsOn(string line) => line.EndsWith(", battery on", StringComparison.Ordinal);

        static bool IsOff(string line) => line.EndsWith(", battery off", StringComparison.Ordinal);
    }

    [Fact]
    public void Jack_ThatShortsWithoutAPlug_IsPinnedInEveryPosition()
    {
        const string switched =
            "jack out mono-switched; switch sel spdt; cap c 10n; neck.hot ~ out.tip ~ sel.A0; sel.A2 ~ c.1; c.2 ~ out.sleeve; ";

        Assert.Contains(
            "expect  out=no-plug others=any:  silence, reads 0R",
            LinesOf(Bench.Expand(Pickup + switched + "out.tip-break ~ out.sleeve"))
        );
        Assert.Contains("expect  out=no-plug:  reads 6.1k", LinesOf(Bench.Expand(Pickup + switched)));
    }

    private static string[] LinesOf(string text) =>
        ExpectLines.Write(Study.Of(Bench.CompileText(text))!).Split('\n', StringSplitOptions.RemoveEmptyEntries);
}
