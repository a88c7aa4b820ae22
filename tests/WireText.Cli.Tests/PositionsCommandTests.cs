using System.Text.Json;

namespace WireText.Cli.Tests;

public sealed class PositionsCommandTests : IDisposable
{
    private readonly TestFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Positions_OfARightCircuit_WritesTheTableAlone()
    {
        var ran = Ran.Of("positions", folder.Put("a.wiring", Sample.Right));

        Assert.Equal(0, ran.Code);
        Assert.StartsWith("heard  level", ran.Output, StringComparison.Ordinal);
        Assert.Contains("6.00 kΩ", ran.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("out.md", "| heard |")]
    [InlineData("out.csv", "heard,outcome")]
    [InlineData("out.json", "{\n  \"version\"")]
    [InlineData("out.html", "<!doctype html>")]
    [InlineData("out.pdf", "%PDF")]
    [InlineData("out.txt", "heard  level")]
    public void Positions_ToAFile_TakesTheFormOfItsEnding(string name, string start)
    {
        var file = folder.Put("a.wiring", Sample.Right);

        var ran = Ran.Of("positions", file, "-o", folder[name]);

        Assert.Equal((0, ""), (ran.Code, ran.Output));
        Assert.StartsWith(start, File.ReadAllText(folder[name]), StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void Positions_AsAPdf_HasBothTablesAndItsFile()
    {
        var file = folder.Put("a.wiring", "about customer \"the owner\"\n" + Sample.Right);
        Ran.Of("positions", file, "-o", folder["out.pdf"], "--paper", "letter");

        using var pdf = UglyToad.PdfPig.PdfDocument.Open(folder["out.pdf"]);

        var page = Assert.Single(pdf.GetPages());
        Assert.Equal(612, page.Width, 0.01);
        var words = string.Join(' ', page.GetWords().Select(word => word.Text));
        Assert.Contains("customer the owner", words, StringComparison.Ordinal);
        Assert.Contains("6.00 kΩ", words, StringComparison.Ordinal);
        Assert.Contains("The coils", words, StringComparison.Ordinal);
        Assert.Contains("a.wiring, circuit", words, StringComparison.Ordinal);
    }

    [Fact]
    public void Positions_PaperForNoPdf_IsRefused()
    {
        var ran = Ran.Of("positions", folder.Put("a.wiring", Sample.Right), "--paper", "a4");

        Assert.Equal((2, ""), (ran.Code, ran.Output));
        Assert.Contains("--paper is for a PDF", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Positions_OfACircuitWithAnError_TellsItAsideAndStillWritesTheTable()
    {
        var file = folder.Put("a.wiring", Sample.Right + "wire out.tip to out.sleeve black\n");

        var ran = Ran.Of("positions", file);

        Assert.Equal(1, ran.Code);
        Assert.Contains("[shorted-output]", ran.Error, StringComparison.Ordinal);
        Assert.Contains("silence: tip and sleeve are joined", ran.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("json", "{\n")]
    [InlineData("csv", "heard,outcome,")]
    [InlineData("markdown", "| heard | level |")]
    public void Positions_OtherForms_OfStandardInput(string format, string start)
    {
        var ran = Ran.Of(new TestHost(Sample.Right), "positions", "--format", format, "-");

        Assert.Equal(0, ran.Code);
        Assert.StartsWith(start, ran.Output, StringComparison.Ordinal);
    }

    /// <summary>Two pickups in series or one, 1 V in each, into 1 MΩ: 2 V and 1 V less the divider with 12 kΩ and 6 kΩ.</summary>
    [Theory]
    [InlineData("wire neck.hot to out.tip white\nwire neck.ground to bridge.hot grey\n", 5.9)]
    [InlineData("wire neck.hot to out.tip white\nwire neck.ground to out.sleeve black\n", -0.05)]
    public void Positions_LevelOfOneCoil_IsTheSameInEveryFile(string wires, double expected)
    {
        var file = folder.Put(
            "a.wiring",
            "pickup neck single-coil dcr=6k l=2H c=100p wind=cw magnet=north\npickup bridge single-coil dcr=6k l=2H c=100p wind=cw magnet=north\n"
                + $"jack out mono\n{wires}wire bridge.ground to out.sleeve black\n"
        );

        using var coil = JsonDocument.Parse(Ran.Of("positions", file, "--format", "json", "--level", "coil").Output);
        using var loudest = JsonDocument.Parse(Ran.Of("positions", file, "--format", "json").Output);

        Assert.Equal("coil", coil.RootElement.GetProperty("levelReference").GetString());
        Assert.Equal(expected, LevelIn(coil), 0.1);
        Assert.Equal("loudest", loudest.RootElement.GetProperty("levelReference").GetString());
        Assert.Equal(0, LevelIn(loudest));
        Assert.Contains(
            "level against what the strings induce in one coil;",
            Ran.Of("positions", file, "--level", "coil").Output,
            StringComparison.Ordinal
        );

        static double LevelIn(JsonDocument json) =>
            json.RootElement.GetProperty("rows")[0].GetProperty("levelDecibels").GetDouble();
    }

    [Fact]
    public void Positions_Expect_WritesLinesThatCheckProves()
    {
        var lines = Ran.Of(new TestHost(Sample.Right), "positions", "--expect", "-").Output;

        var ran = Ran.Of(new TestHost(Sample.Right + lines), "check", "-");

        Assert.StartsWith("expect  rest:  neck, reads 6k", lines, StringComparison.Ordinal);
        Assert.Equal("nothing found\n", ran.Output);
    }

    [Theory]
    [InlineData("pickup neck single-coil\n", "no output jack")]
    [InlineData("base \"stock.wiring\"\n", "no circuit")]
    public void Positions_OfNoCircuit_SaysWhy(string wiring, string why)
    {
        var ran = Ran.Of("positions", folder.Put("a.wiring", wiring));

        Assert.Equal(2, ran.Code);
        Assert.Contains(why, ran.Error, StringComparison.Ordinal);
    }
}
