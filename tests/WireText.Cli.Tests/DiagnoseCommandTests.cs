using System.Text.Json.Nodes;
using WireText.Testing;

namespace WireText.Cli.Tests;

public sealed class DiagnoseCommandTests : IDisposable
{
    private const string OneAnswer = """
        pickup  neck  single-coil  dcr=6.1k
        pot     vol   250k audio
        jack    out   mono
        wire    neck.hot     to vol.3       white
        wire    neck.ground  to vol.case    black
        wire    vol.1        to vol.case    black
        wire    vol.case     to out.sleeve  black
        wire    vol.2        to out.tip     red
        found   worked
        found   rest:        reads 248k, dead
        found   neck alone:  reads open

        """;

    private readonly TestFolder folder = new();

    private static string Hums => Repository.PathOf("examples", "diagnose", "hums-in-the-middle.wiring");

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Diagnose_SeveralRemain_SaysWhatToMeasureNextAndExits1()
    {
        var ran = Ran.Of("diagnose", Hums);

        Assert.Equal((1, ""), (ran.Code, ran.Error));
        Assert.StartsWith("Unplug from the amplifier, battery out:", ran.Output, StringComparison.Ordinal);
        Assert.Contains("\nmeasure next: ", ran.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Diagnose_OneAnswer_Exits0()
    {
        var ran = Ran.Of("diagnose", folder.Put("a.wiring", OneAnswer));

        Assert.Equal(0, ran.Code);
        Assert.Contains("coil neck is open\n1 explains it\n", ran.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Diagnose_NothingFound_SaysWhatToMeasureFirst()
    {
        var text = OneAnswer.Split("found", 2)[0];

        var ran = Ran.Of("diagnose", folder.Put("a.wiring", text));

        Assert.Equal(1, ran.Code);
        Assert.EndsWith("measure next: rest\n", ran.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Diagnose_ALineThatNamesWhatIsNotThere_StillCountsTheOthers()
    {
        var ran = Ran.Of("diagnose", folder.Put("a.wiring", OneAnswer + "found sel=up: reads 6k\n"));

        Assert.Equal(0, ran.Code);
        Assert.Contains("[unknown-part]", ran.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("pickup neck single-coil\n", "no circuit with an output jack")]
    public void Diagnose_WhereNothingCanBeMeasured_Exits2(string text, string why)
    {
        var ran = Ran.Of("diagnose", folder.Put("a.wiring", text));

        Assert.Equal((2, ""), (ran.Code, ran.Output));
        Assert.Contains(why, ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Diagnose_Json_HasTheSameAnswer()
    {
        var json = JsonNode.Parse(Ran.Of("diagnose", Hums, "--format", "json").Output)!;

        Assert.Equal(1, (int)json["version"]!);
        Assert.Equal("go-on", (string?)json["end"]);
        Assert.Equal("contact sel.B0 to sel.B2 does not close", (string?)json["explanations"]![0]!["faults"]![0]);
        Assert.InRange(json["explanations"]!.AsArray().Sum(one => (double)one!["share"]!), 0.99, 1.001);
        Assert.Equal("sel.B2 to sel.B3", (string?)json["next"]!["where"]);
    }
}
