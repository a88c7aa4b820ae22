using WireText.Testing;
using WireText.Text;

namespace WireText.Tests.Mods;

/// <summary>A file that stands on another: what it lifts, drops and replaces. What is left was worked out by hand.</summary>
public class ModTests
{
    private const string Base = "base \"stock.wiring\"\n";
    private const string OnTwoJacks = "base \"two.wiring\"\n";

    [Fact]
    public void Mod_ThatChangesNothing_IsTheBase()
    {
        var (mod, stock) = (new Stock().Compile(Base), new Stock().Compile(Stock.Text));

        Assert.Empty(Told(mod));
        Assert.Equal(Wires(stock), Wires(mod));
        Assert.Equal("Two pickups, as they left the shop", mod.Circuit!.Title);
        Assert.Equal(3, mod.Circuit.Expectations.Length);
    }

    [Theory]
    [InlineData("lift vol.2", "vol.2--out.tip")]
    [InlineData("lift out.tip to vol.2", "vol.2--out.tip")]
    [InlineData("lift vol.3", "sel.A0--sel.B0 sel.B0--vol.3 vol.3--tone.1")] // a run is one piece of wire
    [InlineData("lift vol.3 to tone.1", "vol.3--tone.1")]
    [InlineData("lift SEL.case to tone.case", "sel.case--vol.case vol.case--tone.case tone.case--out.sleeve")]
    [InlineData("lift neck.hot", "neck.hot--sel.A1")]
    [InlineData("lift dark.2", "dark.2--tone.case")]
    [InlineData("lift tone.2", "dark.1--tone.2")] // the other lead stays where it is
    [InlineData("drop plate", "plate--tone.case")]
    [InlineData("drop dark", "dark.1--tone.2 dark.2--tone.case")]
    public void Mod_ThatTakesOut_LeavesTheRest(string change, string gone)
    {
        var mod = new Stock().Compile(Base + change + "\n");

        Assert.Equal(gone.Split(' '), Wires(new Stock().Compile(Stock.Text)).Except(Wires(mod)));
        Assert.Empty(Wires(mod).Except(Wires(new Stock().Compile(Stock.Text))));
    }

    [Fact]
    public void Mod_ThatIsAboutSomethingElse_SaysItInPlaceOfItsBase()
    {
        var stock = new Stock(("job.wiring", "about job \"1\"\nabout by \"the shop\"\n" + Stock.Text));

        var mod = stock.Compile("base \"job.wiring\"\nabout JOB \"2\"\n");

        Assert.Empty(Told(mod));
        Assert.Equal(["by: the shop", "JOB: 2"], mod.Circuit!.About.Select(about => $"{about.Key}: {about.Words}"));
    }

    /// <summary>A part that goes takes its places, names and rests with it.</summary>
    [Fact]
    public void Mod_ThatDropsASwitch_LeavesNothingOfIt()
    {
        var mod = new Stock().Compile(
            Base
                + "drop sel\ndrop expect sel=neck\ndrop expect sel=both\ndrop expect sel=bridge\nwire neck.hot to vol.3 white\ndrop bridge\n"
                + "wire vol.case to tone.case to out.sleeve black\n"
        );

        Assert.DoesNotContain(mod.Findings, finding => finding.Severity == Severity.Error);
        Assert.Null(mod.Circuit!.FindPart("sel"));
        Assert.Empty(mod.Circuit.Expectations);
    }

    [Fact]
    public void Mod_WithAMute_IsWholeAndHeldToWhatTheBaseExpects()
    {
        var mod = new Stock().Compile(
            Base
                + """
                circuit "With a mute"
                button mute momentary
                replace dark 22n paper-in-oil
                wire mute.1 to out.tip red
                wire mute.2 to out.sleeve black
                expect mute=down: silence

                """
        );

        Assert.Empty(Told(mod));
        Assert.Equal("With a mute", mod.Circuit!.Title);
        Assert.Equal("22n", mod.Circuit.FindPart("dark")!.ValueLabel);
        Assert.Equal(4, mod.Circuit.Expectations.Length);
        Assert.Contains("dark.1--tone.2", Wires(mod));
    }

    /// <summary>The base promises what its positions do: a mod that breaks it hears so, where the promise stands.</summary>
    [Fact]
    public void Mod_ThatBreaksAPromise_IsToldAtTheLineOfTheBase()
    {
        var mod = new Stock().Compile(Base + "lift bridge.hot\nwire bridge.hot to sel.A1 yellow\n");

        var broken = mod.Findings.First(finding => finding.Severity == Severity.Error);
        Assert.Contains(
            broken.Related.Select(place => place.Location).Append(broken.Location),
            place => place.Source.Path == Stock.Path
        );
    }

    [Fact]
    public void Mod_MayNameWhatIsSaidOnceAnew()
    {
        var mod = new Stock().Compile(
            Base
                + "positions sel front mix back\nplace vol at 10,20\ndrop expect sel=neck\ndrop expect sel=both\ndrop expect sel=bridge\n"
        );

        Assert.Empty(Told(mod));
        Assert.Equal(["front", "mix", "back"], mod.Circuit!.Controls[0].Positions.Select(position => position.Name));
        Assert.Single(mod.Circuit.Places);
    }

    [Fact]
    public void Mod_OnAMod_StandsOnBoth()
    {
        var stock = new Stock(
            (
                "first.wiring",
                Base + "button mute momentary\nwire mute.1 to out.tip red\nwire mute.2 to out.sleeve black\n"
            )
        );

        var mod = stock.Compile("base \"first.wiring\"\nlift mute.1\nwire mute.1 to out.tip green\n");

        Assert.Empty(Told(mod));
        Assert.Equal(Wires(stock.Compile(Base)).Append("mute.2--out.sleeve").Append("mute.1--out.tip"), Wires(mod));
    }

    [Theory]
    [InlineData(
        "[|lift vol.2 to tone.1|]",
        "nothing leads from 'vol.2' to 'tone.1'",
        "line 19: wire vol.2      to out.tip blue"
    )]
    [InlineData("[|lift tone.3|]", "nothing is soldered to 'tone.3'", "nothing at all is on 'tone.3'")]
    [InlineData("lift [|volume|].2", "no part 'volume'", "write one of: neck, bridge")]
    [InlineData("lift [|vok|].2", "no part 'vok'", "did you mean 'vol'?")]
    [InlineData("drop [|mute|]", "no part 'mute'", "write one of")]
    [InlineData("replace [|dork|] 22n", "no part 'dork'", "did you mean 'dark'?")]
    [InlineData(
        "[|drop expect sel=middle|]",
        "expects nothing at sel=middle",
        "it expects something at: sel=neck, sel=both, sel=bridge"
    )]
    [InlineData("[|drop expect rest|]", "expects nothing at rest", "sel=neck")]
    public void Mod_OfWhatIsNotThere_SaysWhatIs(string marked, string message, string help)
    {
        var (text, spans) = MarkedText.Parse(Base + marked + "\n");

        var finding = new Stock().Compile(text).Findings.First(one => one.Severity == Severity.Error);

        Assert.Equal(("not-on-base", spans.Single()), (finding.Id, finding.Location.Span));
        Assert.Contains(message, finding.Message, StringComparison.Ordinal);
        Assert.Contains(help, finding.Help, StringComparison.Ordinal);
    }

    [Fact]
    public void Mod_ThatDropsWhatIsSpokenOf_SaysWhichLinesGoToo()
    {
        var found = new Stock().Compile(Base + "drop bridge\n").Findings.Where(one => one.Id == "still-expected");

        Assert.Equal(["write: drop expect sel=both", "write: drop expect sel=bridge"], found.Select(one => one.Help));
    }

    /// <summary>What is expected of one state at two jacks are two lines: each is taken back by its own.</summary>
    [Theory]
    [InlineData("drop expect sel=neck", "main: sel=neck|MAIN: rest")]
    [InlineData("drop expect main: sel=neck", "sel=neck|MAIN: rest")]
    [InlineData("drop expect  Main :SEL=Neck", "sel=neck|MAIN: rest")]
    [InlineData("drop expect main: rest", "sel=neck|main: sel=neck")]
    public void Mod_ThatDropsWhatIsExpectedAtAJack_LeavesTheOtherJack(string change, string left)
    {
        var mod = TwoJacks().Compile(OnTwoJacks + change + "\n");

        Assert.DoesNotContain(mod.Findings, one => one.Id is "not-on-base" or "expected");
        Assert.Equal(left.Split('|'), Stock.ExpectedIn(mod));
    }

    [Theory]
    [InlineData(
        "[|drop expect rest|]",
        "expects nothing at rest",
        "something at: sel=neck, main: sel=neck, MAIN: rest"
    )]
    [InlineData("[|drop expect out: sel=neck|]", "expects nothing at out: sel=neck", "main: sel=neck")]
    public void Mod_ThatDropsWhatIsExpectedAtAnotherJack_SaysWhere(string marked, string message, string help)
    {
        var (text, spans) = MarkedText.Parse(OnTwoJacks + marked + "\n");

        var finding = TwoJacks().Compile(text).Findings.First(one => one.Id == "not-on-base");

        Assert.Equal(spans.Single(), finding.Location.Span);
        Assert.Contains(message, finding.Message, StringComparison.Ordinal);
        Assert.Contains(help, finding.Help, StringComparison.Ordinal);
    }

    [Fact]
    public void Mod_ThatDropsAJackThatIsSpokenOf_SaysTheLineWithTheJack()
    {
        var found = TwoJacks().Compile(OnTwoJacks + "drop main\n").Findings.Where(one => one.Id == "still-expected");

        Assert.Equal(
            ["write: drop expect main: sel=neck", "write: drop expect MAIN: rest"],
            found.Select(one => one.Help)
        );
    }

    [Theory]
    [InlineData("base [|\"stack.wiring\"|]\n", "cannot-read-base", "cannot read 'stack.wiring'")]
    [InlineData("jack out2 mono\n[|base \"stock.wiring\"|]\n", "base-late", "behind a part")]
    [InlineData("base \"stock.wiring\"\n[|base \"stock.wiring\"|]\n", "base-late", "stands on one file")]
    [InlineData("jack out mono\n[|drop out|]\n", "not-on-base", "stands on no other")]
    public void Mod_WithoutAProperBase_IsToldAtTheLine(string marked, string id, string message)
    {
        var (text, spans) = MarkedText.Parse(marked);

        var finding = new Stock().Compile(text).Findings.First(one => one.Id == id);

        Assert.Equal(spans.Single(), finding.Location.Span);
        Assert.Contains(message, finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Mods_ThatStandOnOneAnother_AreShownAsARing()
    {
        var ring = new Stock(("a.wiring", "base \"b.wiring\"\n"), ("b.wiring", "base \"a.wiring\"\n"));

        var mod = ring.Compile("base \"a.wiring\"\n");

        var finding = Assert.Single(mod.Findings);
        Assert.Equal("base-goes-round", finding.Id);
        Assert.EndsWith("a.wiring → b.wiring → a.wiring", finding.Message, StringComparison.Ordinal);
        Assert.Null(mod.Circuit);
    }

    [Theory]
    [InlineData(0, false)]
    [InlineData(1, true)]
    public void Mods_OneOnAnother_EndAtTheBound(int beyond, bool isTold)
    {
        var most = (int)Bounds.All.Single(bound => bound.Counted == "mods that stand on mods").Most;
        (string, string)[] chain =
        [
            .. Enumerable
                .Range(1, most - 1 + beyond)
                .Select(i => ($"{i}.wiring", i == 1 ? Base : $"base \"{i - 1}.wiring\"\n")),
        ];

        var mod = new Stock(chain).Compile($"base \"{chain.Length}.wiring\"\n");

        Assert.Equal(isTold, mod.Findings.Any(finding => finding.Id == "base-too-deep"));
        Assert.Equal(isTold, mod.Circuit is null);
    }

    private static List<Finding> Told(Compilation mod) => [.. mod.Findings.Where(one => one.Severity > Severity.Right)];

    private static IEnumerable<string> Wires(Compilation compiled) => compiled.Circuit!.Wires.Select(wire => wire.Id);

    private static Stock TwoJacks() => new(("two.wiring", Stock.WithTwoJacks));
}
