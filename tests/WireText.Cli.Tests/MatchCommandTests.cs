using System.Text.Json;
using WireText.Testing;

namespace WireText.Cli.Tests;

public sealed class MatchCommandTests : IDisposable
{
    private static readonly string Guitar = Repository.PathOf("docs", "match", "guitar.wiring");

    private static readonly string Bin = Repository.PathOf("docs", "match", "bin.csv");

    private readonly TestFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Match_Json_HasWholeInstrumentsAndNoPartTwice()
    {
        var ran = Ran.Of("match", Guitar, Bin, "--batch", "10", "--format", "json");

        Assert.Equal((0, ""), (ran.Code, ran.Error));
        var json = JsonDocument.Parse(ran.Output).RootElement;
        Assert.Equal((10, 10), (json.GetProperty("asked").GetInt32(), json.GetProperty("whole").GetInt32()));
        var used = json.GetProperty("instruments")
            .EnumerateArray()
            .SelectMany(one => one.GetProperty("parts").EnumerateObject().Select(part => part.Value.GetString()))
            .ToList();
        Assert.Equal(50, used.Distinct().Count());
        Assert.Equal(10, json.GetProperty("leftOver").GetArrayLength());
        Assert.True(json.GetProperty("leastCost").GetDouble() <= json.GetProperty("cost").GetDouble());
        Assert.Equal(
            ran.Output,
            OtherCulture.Run(() => Ran.Of("match", Guitar, Bin, "--batch", "10", "--format", "json").Output)
        );
    }

    [Fact]
    public void Match_ToCsv_ComputesNothingInASheet()
    {
        folder.Put("a.wiring", Sample.Right);
        folder.Put("bin.csv", "name,kind,value\n\"=HYPERLINK(\"\"x\"\")\",pickup,6k\n@v,pot,250k\n");

        var ran = Ran.Of("match", folder["a.wiring"], folder["bin.csv"], "-o", folder["out.csv"]);

        Assert.Equal(0, ran.Code);
        var rows = folder.Text("out.csv").TrimEnd('\n').Split('\n');
        Assert.Equal("instrument,part,name,value,holds", rows[0]);
        Every.Item(rows.Skip(1), row => Assert.Matches("^1,[a-z]+,(\"'=|'@)", row));
    }

    [Theory]
    [InlineData("name,kind,value\na,valve,1k\n", "bin.csv: line 2: 'valve' is no kind of part")]
    [InlineData("", "bin.csv: line 1: the bin is empty")]
    public void Match_WrongBin_Exits2AndNamesItsLine(string bin, string message)
    {
        folder.Put("bin.csv", bin);

        var ran = Ran.Of("match", Guitar, folder["bin.csv"]);

        Assert.Equal((2, ""), (ran.Code, ran.Output));
        Assert.Contains(message, ran.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--batch", "101", "--batch takes a whole number from 1 to 100")]
    [InlineData("--alike", "vol", "name two parts, such as neck,bridge; there are neck, bridge, vol, tone, dark")]
    [InlineData("--alike", "vol,voll", "name two parts")]
    [InlineData("-o", "a.svg", "'a.svg' ends in none of .txt, .csv and .json; say which with --format")]
    public void Match_WrongOption_Exits2AndSaysWhatIsTaken(string option, string value, string message)
    {
        var ran = Ran.Of("match", Guitar, Bin, option, value);

        Assert.Equal((2, ""), (ran.Code, ran.Output));
        Assert.Contains(message, ran.Error, StringComparison.Ordinal);
    }

    /// <summary>No result is written over what it came from.</summary>
    [Fact]
    public void Match_OverItsOwnBin_IsRefused()
    {
        folder.Put("bin.csv", File.ReadAllText(Bin));

        var ran = Ran.Of("match", Guitar, folder["bin.csv"], "-o", folder["bin.csv"]);

        Assert.Equal(2, ran.Code);
        Assert.Equal(File.ReadAllText(Bin), folder.Text("bin.csv"));
    }
}
