using System.Text.Json;
using System.Xml.Linq;
using WireText.Testing;

namespace WireText.Cli.Tests;

public sealed class SpreadCommandTests : IDisposable
{
    private static readonly string Example = Repository.PathOf("examples", "2-two-pickups-mute.wiring");

    private readonly TestFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Spread_NoOption_HasEveryPositionAndSaysCountAndSeed()
    {
        var ran = Ran.Of("spread", Example);

        Assert.Equal((0, ""), (ran.Code, ran.Error));
        string[] states = ["mute=down", "sel=bridge mute=up", "sel=both mute=up", "sel=neck mute=up"];
        Every.Item(states, state => Assert.Contains($"\n{state} ", ran.Output, StringComparison.Ordinal));
        Assert.Contains("\n1,000 instruments, seed 1: ", ran.Output, StringComparison.Ordinal);
        Assert.Contains("silence: tip and sleeve are joined", ran.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Spread_AnotherSeedOrCount_IsAnotherRun_AndTheSameOneIsTheSame()
    {
        string[] asked = ["spread", Example, "--at", "sel=neck", "--format", "json", "--count"];
        var first = Ran.Of([.. asked, "60", "--seed", "4"]).Output;

        Assert.Equal(first, Ran.Of([.. asked, "60", "--seed", "4"]).Output);
        Assert.Equal(first, OtherCulture.Run(() => Ran.Of([.. asked, "60", "--seed", "4"]).Output));
        Assert.NotEqual(first, Ran.Of([.. asked, "60", "--seed", "5"]).Output);
        Assert.NotEqual(first, Ran.Of([.. asked, "61", "--seed", "4"]).Output);
    }

    /// <summary>The meter's ends are those that the table of positions has in brackets: by hand 5.63 and 6.27 kΩ there.</summary>
    [Fact]
    public void Spread_Json_HasFactorsFiguresAndShares()
    {
        var ran = Ran.Of("spread", Example, "--at", "sel=neck", "--format", "json", "--count", "200");

        var json = JsonDocument.Parse(ran.Output).RootElement;
        Assert.Equal(1, json.GetProperty("version").GetInt32());
        Assert.Equal(200, json.GetProperty("instruments").GetInt32());
        Assert.Equal(1, json.GetProperty("seed").GetInt32());
        var factors = json.GetProperty("factors").EnumerateArray().Select(one => one.GetProperty("name").GetString());
        Assert.Equal(
            ["neck.dcr", "neck.l", "neck.c", "bridge.dcr", "bridge.l", "bridge.c", "vol", "tone", "dark"],
            factors
        );
        var state = Assert.Single(json.GetProperty("states").EnumerateArray());
        Assert.Equal("sel=neck", state.GetProperty("at").GetString());
        var figures = state.GetProperty("figures").EnumerateArray().ToList();
        Assert.Equal(
            ["meter", "level", "peak", "height"],
            figures.Select(one => one.GetProperty("figure").GetString())
        );

        // The coil of 6.1 kΩ ±5 % beside the pot of 250 kΩ ±20 %.
        Assert.Equal(5795.0 * 200e3 / 205795, figures[0].GetProperty("least").GetDouble(), 1.0);
        Assert.Equal(6405.0 * 300e3 / 306405, figures[0].GetProperty("most").GetDouble(), 1.0);
        Assert.True(figures[0].GetProperty("exact").GetBoolean());
        Every.Item(
            figures,
            one =>
            {
                var shares = one.GetProperty("shares").EnumerateArray().ToList();
                Assert.Equal(1, shares.Sum(share => share.GetProperty("share").GetDouble()), 0.002);
                var tiers = one.GetProperty("percentiles");
                Assert.InRange(
                    tiers.GetProperty("50").GetDouble(),
                    tiers.GetProperty("5").GetDouble(),
                    tiers.GetProperty("95").GetDouble()
                );
            }
        );
    }

    [Fact]
    public void Spread_ToASvg_IsAChartWithBandsThatSaysWhatTheyAre()
    {
        var ran = Ran.Of("spread", Example, "--count", "40", "-o", folder["a.svg"]);

        Assert.Equal(0, ran.Code);
        var root = XDocument.Parse(folder.Text("a.svg")).Root!;
        Assert.Contains("nine of ten instruments of a run of 40, seed 1", root.Value, StringComparison.Ordinal);
        Assert.Equal(3, folder.Text("a.svg").Split("class=\"band\"").Length - 1);
    }

    [Fact]
    public void Spread_OneBatch_SaysSo()
    {
        var ran = Ran.Of("spread", Example, "--at", "sel=neck", "--one-batch", "--count", "30");

        Assert.Contains("vol+tone", ran.Output, StringComparison.Ordinal);
        Assert.Contains("; parts of one kind\nand value off alike", ran.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--count", "0", "--count takes a whole number from 1 to 100000")]
    [InlineData("--count", "100001", "--count takes a whole number from 1 to 100000")]
    [InlineData("--at", "sel=nekc", "'sel' has no position 'nekc'; did you mean 'neck'?")]
    [InlineData("--seed", "-1", "--seed")]
    [InlineData("--width", "640", "--width is for a PNG; add --format png or name a .png with -o")]
    [InlineData("-o", "a.gif", "'a.gif' ends in none of .txt, .json, .svg, .png and .pdf; say which with --format")]
    public void Spread_WrongOption_Exits2AndSaysWhatIsTaken(string option, string value, string message)
    {
        var ran = Ran.Of("spread", Example, option, value);

        Assert.Equal((2, ""), (ran.Code, ran.Output));
        Assert.Contains(message, ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Spread_MoreThanIsSolved_Exits2AndSaysWhatToAskFor()
    {
        string[] states = [.. Enumerable.Range(0, 11).SelectMany(i => new[] { "--at", $"vol={i}" })];
        var ran = Ran.Of(["spread", Example, .. states, "--count", "100000"]);

        Assert.Equal((2, ""), (ran.Code, ran.Output));
        Assert.Contains("say a smaller --count, or the states with --at", ran.Error, StringComparison.Ordinal);
    }
}
