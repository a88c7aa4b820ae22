using System.Globalization;
using System.Text.Json;
using WireText.Tests.Output;

namespace WireText.Cli.Tests;

/// <summary>The commands that listen at one jack, asked for each of two.</summary>
public sealed class JackOptionTests : IDisposable
{
    /// <summary>A 6 kΩ coil at the first jack, and a 12 kΩ one at the second.</summary>
    private const string TwoJacks = """
        pickup  neck    single-coil  dcr=6k l=2.4H c=100p wind=cw magnet=north
        pickup  bridge  single-coil  dcr=12k l=4H c=150p wind=cw magnet=north
        jack    main    mono
        jack    second  mono
        wire    neck.hot       to main.tip       white
        wire    neck.ground    to main.sleeve    black
        wire    bridge.hot     to second.tip     yellow
        wire    bridge.ground  to second.sleeve  black
        wire    main.sleeve    to second.sleeve  black

        """;

    private readonly TestFolder folder = new();

    public void Dispose() => folder.Dispose();

    /// <summary>At 20 Hz a coil is its resistance and the load 1 MΩ: 20·log10(1/(1 + 0.006)), and with 0.012.</summary>
    [Theory]
    [InlineData(null, "Hz,main: rest", -0.052)]
    [InlineData("main", "Hz,main: rest", -0.052)]
    [InlineData("second", "Hz,second: rest", -0.1036)]
    [InlineData("SECOND", "Hz,second: rest", -0.1036)]
    public void Response_AtAJack_IsThatOfItsPickup(string? jack, string heading, double level)
    {
        var ran = Ran.Of(new TestHost(TwoJacks), ["response", "-", .. Asked(jack)]);

        Assert.Equal((0, ""), (ran.Code, ran.Error));
        var rows = ran.Output.Split('\n');
        Assert.Equal(heading, rows[0]);
        Assert.Equal(level, double.Parse(rows[1].Split(',')[1], CultureInfo.InvariantCulture), 0.001);
    }

    [Fact]
    public void Response_AsJson_NamesTheJack()
    {
        var ran = Ran.Of(new TestHost(TwoJacks), "response", "-", "--jack", "second", "--format", "json");

        using var json = JsonDocument.Parse(ran.Output);
        Assert.Equal("second", json.RootElement.GetProperty("jack").GetString());
        Assert.Equal("bridge", json.RootElement.GetProperty("curves")[0].GetProperty("heard").GetString());
    }

    [Fact]
    public void Response_AsAChart_NamesTheJack()
    {
        var file = folder.Put("a.wiring", TwoJacks);

        var ran = Ran.Of("response", file, "--jack", "second", "-o", folder["a.svg"]);

        Assert.Equal(0, ran.Code);
        Assert.Contains("second: rest", folder.Text("a.svg"), StringComparison.Ordinal);
    }

    [Fact]
    public void Response_WithAnotherValue_IsThatOfTheJack()
    {
        var ran = Ran.Of(new TestHost(TwoJacks), "response", "-", "--jack", "second", "--what-if", "bridge.dcr=24k");

        var levels = ran.Output.Split('\n')[1].Split(',').Skip(1);
        var found = levels.Select(cell => double.Parse(cell, CultureInfo.InvariantCulture)).ToList();
        // 20·log10(1/(1 + 0.012)) and 20·log10(1/(1 + 0.024)).
        Assert.Equal(2, found.Count);
        Assert.Equal(-0.1036, found[0], 0.001);
        Assert.Equal(-0.2060, found[1], 0.001);
    }

    /// <summary>The referee is ngspice: it runs the file that was written for the second jack.</summary>
    [SkippableFact]
    public void Spice_AtTheSecondJack_RunsAndGivesItsLevel()
    {
        Ngspice.SkipWhereAbsent();

        var ran = Ran.Of(new TestHost(TwoJacks), "export", "-", "--spice", "--jack", "second");

        Assert.Contains("* seen from second", ran.Output, StringComparison.Ordinal);
        var table = Ngspice.RunAsItIs(ran.Output, "response.txt");
        Assert.Equal(-0.1036, table[0][1], 0.001);
    }

    [Theory]
    [InlineData("response")]
    [InlineData("export")]
    public void Command_WithAnUnknownJack_SaysWhichThereAre(string command)
    {
        string[] spice = command == "export" ? ["--spice"] : [];

        var ran = Ran.Of(new TestHost(TwoJacks), [command, "-", "--jack", "aux", .. spice]);

        Assert.Equal((2, ""), (ran.Code, ran.Output));
        Assert.Contains(
            "--jack aux: no output jack has that name; there is main and second",
            ran.Error,
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData("rest", "main: rest", "main.tip", "second.tip")]
    [InlineData("second: rest", "second: rest", "second.tip", "main.tip")]
    [InlineData("SECOND: rest", "second: rest", "second.tip", "main.tip")]
    public void Trace_OfAState_IsFollowedToTheJack(string asked, string caption, string lit, string faded)
    {
        var drawn = Ran.Of(new TestHost(TwoJacks), "draw", "-", "--trace", asked, "--effort", "quick").Output;

        Assert.Contains(caption, drawn, StringComparison.Ordinal);
        var whole = Ran.Of(new TestHost(TwoJacks), "draw", "-", "--effort", "quick").Output;
        Assert.Equal(JointIn(whole, lit), JointIn(drawn, lit));
        Assert.NotEqual(JointIn(whole, faded), JointIn(drawn, faded));
    }

    /// <summary>The colour of the solder on a lug.</summary>
    private static string JointIn(string svg, string lug) =>
        svg.Split($"<circle class=\"joint\" data-lug=\"{lug}\"")[1].Split("fill=\"")[1].Split('"')[0];

    [Fact]
    public void Trace_ToAnUnknownJack_SaysWhichThereAre()
    {
        var ran = Ran.Of(new TestHost(TwoJacks), "draw", "-", "--trace", "aux: rest");

        Assert.Equal((2, ""), (ran.Code, ran.Output));
        Assert.Contains("'aux' is no jack in use; there is main and second", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Views_OfTwoJacks_ShowEach()
    {
        var drawn = Ran.Of(new TestHost(TwoJacks), "draw", "-", "--views", "positions", "--effort", "quick").Output;

        Assert.Contains("main: rest", drawn, StringComparison.Ordinal);
        Assert.Contains("second: rest", drawn, StringComparison.Ordinal);
    }

    private static string[] Asked(string? jack) => jack is null ? [] : ["--jack", jack];
}
