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

    /// <summary>The bench is walked: each answer becomes a line of the file, and what cannot be read is asked for again.</summary>
    [Fact]
    public void Diagnose_Next_WritesEachAnswerIntoTheFileUntilOneIsLeft()
    {
        var file = folder.Put("a.wiring", File.ReadAllText(Hums));
        using var host = new TestHost("open\nbanana\n0\n");

        var ran = Ran.Of(host, "diagnose", file, "--next");

        Assert.Equal(0, ran.Code);
        Assert.Single(ran.Output.Split('\n'), line => line.StartsWith("Unplug from", StringComparison.Ordinal));
        Assert.Contains("not 'banana'", ran.Output, StringComparison.Ordinal);
        Assert.Contains("no joint at sel.B3\n", ran.Output, StringComparison.Ordinal);
        Assert.Contains("\n1 explains it\n", ran.Output, StringComparison.Ordinal);
        Assert.EndsWith(
            """
            found   worked
            found   sel=bridge:              reads 7.24k
            found   sel=neck:                reads 6.05k
            found   sel=both:                reads 7.25k, hums
            found   sel.B2 to sel.B3:        reads open
            found   joint sel.B2 of sel.B3:  reads 0

            """,
            File.ReadAllText(file),
            StringComparison.Ordinal
        );
    }

    /// <summary>Without a line yet the first is put at the end; what cannot be measured is not asked for again.</summary>
    [Fact]
    public void Diagnose_Next_SkipsWhatCannotBeMeasured()
    {
        var file = folder.Put("a.wiring", OneAnswer.Split("found", 2)[0]);
        using var host = new TestHost("248k\nskip\n\n");

        var ran = Ran.Of(host, "diagnose", file, "--next");

        Assert.Equal(1, ran.Code);
        Assert.EndsWith("red\n\nfound   rest:  reads 248k\n", File.ReadAllText(file), StringComparison.Ordinal);
        var asked = ran.Output.Split('\n').Where(line => line.StartsWith("measure next", StringComparison.Ordinal));
        Assert.Equal(3, asked.Distinct().Count());
    }

    [Fact]
    public void Diagnose_NextOfStandardInput_Exits2() => Assert.Equal(2, Ran.Of("diagnose", "-", "--next").Code);

    /// <summary>A shop that has counted its own repairs weighs by them.</summary>
    [Fact]
    public void Diagnose_WeightsOfTheShop_RankWhatReadingsCannotTellApart()
    {
        var file = folder.Put("a.wiring", File.ReadAllText(Hums));
        folder.Put("wiretext.toml", "[faults]\njoint = [3, 12]\ncontact-open = 0.1\n");

        var first = Ran.Of("diagnose", file).Output.Split('\n')[2];

        Assert.Contains("no joint at sel.B", first, StringComparison.Ordinal);
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
