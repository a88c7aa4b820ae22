using WireText.Circuits;
using WireText.Electrical.Networks;
using WireText.Electrical.Solving;
using WireText.Electrical.Sound;
using WireText.Testing;
using WireText.Tests.Output;
using WireText.Text;

namespace WireText.Cli.Tests;

public sealed class ExportCommandTests : IDisposable
{
    private static readonly string Example = Repository.PathOf("examples", "2-two-pickups-mute.wiring");

    private readonly TestFolder folder = new();

    public void Dispose() => folder.Dispose();

    /// <summary>The referee is ngspice: it runs the very file that the command wrote.</summary>
    [SkippableTheory]
    [InlineData("rest")]
    [InlineData("sel=neck,vol=7")]
    [InlineData("sel=both,tone=0")]
    public void Spice_TheFileThatIsWritten_RunsInNgspiceAndGivesOurLevels(string state)
    {
        Ngspice.SkipWhereAbsent();

        var ran = Ran.Of("export", Example, "--spice", "--at", state, "-o", folder["deck.cir"]);

        Assert.Equal((0, ""), (ran.Code, ran.Output));
        var table = Ngspice.RunAsItIs(folder.Text("deck.cir"), "response.txt");
        var ours = Levels(state, [.. table.Select(row => row[0])]);
        // ac dec 133 20 20000 gives 400 points.
        Assert.Equal(400, table.Count);
        Every.Item(table.Zip(ours), pair => Assert.Equal(pair.First[1], pair.Second, 0.01));
    }

    [SkippableFact]
    public void Spice_TipAndSleeveJoined_RunsAndSaysSo()
    {
        Ngspice.SkipWhereAbsent();

        var ran = Ran.Of("export", Example, "--spice", "--at", "mute=down");

        Assert.Equal(0, ran.Code);
        Assert.Contains("tip and sleeve are joined", Ngspice.OutputOf(ran.Output), StringComparison.Ordinal);
    }

    /// <summary>A lead in the air, a coil with one end, a coil that nothing plucks, and no coil at all.</summary>
    [SkippableTheory]
    [InlineData("wire neck.ground to out.sleeve black\n")]
    [InlineData("wire neck.hot to out.tip white\n")]
    [InlineData("wire neck.hot to neck.ground white\nwire neck.ground to out.sleeve black\n")]
    [InlineData("wire vol.3 to out.tip white\nwire vol.1 to out.sleeve black\n")]
    [InlineData("wire vol.3 to out.tip white\nwire vol.1 to out.sleeve black\nwire neck.ground to out.sleeve black\n")]
    public void Spice_NothingHeard_RunsAndSaysSo(string wires)
    {
        Ngspice.SkipWhereAbsent();
        var file = folder.Put(
            "a.wiring",
            "pickup neck single-coil dcr=6k l=2.4H c=100p\npot vol 250k audio\njack out mono\n" + wires
        );

        var said = Ngspice.OutputOf(Ran.Of("export", file, "--spice").Output);

        Assert.Contains("nothing arrives at the jack", said, StringComparison.Ordinal);
    }

    [Fact]
    public void Spice_NoTarget_GoesToStandardOutputWithNodesByLug()
    {
        var ran = Ran.Of("export", Example, "--spice", "--at", "sel=neck,vol=7");

        Assert.Equal(0, ran.Code);
        Assert.StartsWith(
            "* Two pickups, 3-way lever, mute button\n* sel=neck\n",
            ran.Output,
            StringComparison.Ordinal
        );
        Assert.Contains("\n* node tone_2: tone.2 tone.3 dark.1\n", ran.Output, StringComparison.Ordinal);
        Assert.Contains("\nr_tone_low neck_hot tone_2 250000\n", ran.Output, StringComparison.Ordinal);
        Assert.EndsWith("\n.end\n", ran.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Spice_WiringOnStandardInput_IsRead()
    {
        var ran = Ran.Of(new TestHost(Sample.Right), "export", "-", "--spice");

        Assert.Equal(0, ran.Code);
        Assert.Contains("\nl_neck neck__l out_tip 2.4\n", ran.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("sell=neck", "wiretext: --at sell=neck: no control is called 'sell'; did you mean 'sel'?\n")]
    [InlineData("sel=nekc", "wiretext: --at sel=nekc: 'sel' has no position 'nekc'; did you mean 'neck'?\n")]
    [InlineData("tone=12", "wiretext: --at tone=12: 'tone' turns from 0 to 10; '12' is not on it\n")]
    public void Spice_StateThatIsNot_Exits2WritesNothingAndOffersTheNearest(string state, string message)
    {
        var ran = Ran.Of("export", Example, "--spice", "--at", state, "-o", folder["deck.cir"]);

        Assert.Equal((2, ""), (ran.Code, ran.Output));
        Assert.EndsWith(message, ran.Error, StringComparison.Ordinal);
        Assert.Empty(folder.Names);
    }

    [Fact]
    public void Spice_WiringWithAMistake_IsWrittenAsItIsWiredAndExits1()
    {
        var ran = Ran.Of("export", folder.Put("a.wiring", Sample.Wrong), "--spice");

        Assert.Equal(1, ran.Code);
        Assert.Contains("a.wiring:4:37: error: ", ran.Error, StringComparison.Ordinal);
        Assert.Contains("\n.end\n", ran.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("pickup neck single-coil dcr=6k l=2H c=100p\n", "the circuit has no output jack to listen at")]
    [InlineData("no wiring at all\n", "the circuit has no output jack to listen at")]
    public void Spice_NothingToListenAt_Exits2(string wiring, string why)
    {
        var ran = Ran.Of("export", folder.Put("a.wiring", wiring), "--spice", "-o", folder["deck.cir"]);

        Assert.Equal((2, ""), (ran.Code, ran.Output));
        Assert.Contains($"wiretext: {why}", ran.Error, StringComparison.Ordinal);
        Assert.Equal(["a.wiring"], folder.Names);
    }

    [Fact]
    public void Spice_TargetIsTheWiring_IsRefused()
    {
        var file = folder.Put("a.wiring", Sample.Right);

        var ran = Ran.Of("export", file, "--spice", "-o", file);

        Assert.Equal(2, ran.Code);
        Assert.Contains("is the wiring itself", ran.Error, StringComparison.Ordinal);
        Assert.Equal(Sample.Right, folder.Text("a.wiring"));
    }

    [Fact]
    public void Export_FileThatIsNotThere_Exits2()
    {
        var ran = Ran.Of("export", folder["none.wiring"], "--spice");

        Assert.Equal(2, ran.Code);
        Assert.StartsWith("wiretext: cannot read ", ran.Error, StringComparison.Ordinal);
    }

    private static IEnumerable<double> Levels(string text, double[] hertz)
    {
        var source = new SourceText(Example, File.ReadAllText(Example));
        var network = Network.Of(Compilation.Of(source, NoSources.Instance).Circuit!)!;
        var state = StateReader.Read(network.Circuit, text).Value!;
        var live = LiveNetwork.Of(network, state);
        return StringResponse.Of(network.Circuit, live)!.DecibelsAt(hertz)!.Value;
    }
}
