using System.Text;
using WireText.Testing;

namespace WireText.Cli.Tests;

public sealed class SheetCommandTests : IDisposable
{
    private readonly TestFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Theory]
    [InlineData(".pdf", "%PDF-")]
    [InlineData(".html", "<!DOCTYPE html>")]
    [InlineData(".md", "# Build sheet: untitled wiring")]
    public void Sheet_ByTheEndingOfItsName_IsWrittenSo(string ending, string start)
    {
        var file = folder.Put("a.wiring", Sample.Right);
        var target = Path.Combine(Path.GetDirectoryName(file)!, "sheet" + ending);

        var ran = Ran.Of("sheet", file, "-o", target);

        Assert.Equal(0, ran.Code);
        Assert.StartsWith(start, Encoding.Latin1.GetString(File.ReadAllBytes(target)), StringComparison.Ordinal);
    }

    /// <summary>Who has the guitar before him needs the steps of the mod and no other, what comes off first.</summary>
    [Fact]
    public void Sheet_OfAMod_HasItsStepsAloneAndTheBenchTest()
    {
        var ran = Ran.Of("sheet", Repository.PathOf("examples", "mods", "mute-and-capacitor.wiring"));

        var steps = ran.Output.Split('\n').Where(line => line.StartsWith("- [ ] ", StringComparison.Ordinal)).ToList();
        Assert.Equal(0, ran.Code);
        Assert.Contains("dark", steps[0], StringComparison.Ordinal);
        Assert.DoesNotContain(steps, step => step.Contains("bridge.hot", StringComparison.Ordinal));
        Assert.Contains(steps, step => step.Contains("mute.1", StringComparison.Ordinal));
        Assert.DoesNotContain("| pickup", ran.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("| neck.hot", ran.Output, StringComparison.Ordinal);
        Assert.Contains("| cap paper-in-oil | 22n | 223 | dark |", ran.Output, StringComparison.Ordinal);
        Assert.Contains("\n## Bench test\n", ran.Output, StringComparison.Ordinal);
        Assert.Contains("| these readings are wrong | it may be |", ran.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Sheet_WithWires_WritesThemAsATable()
    {
        var file = folder.Put("a.wiring", Sample.Right);
        var target = Path.Combine(Path.GetDirectoryName(file)!, "wires.csv");

        Ran.Of("sheet", file, "--wires", target);

        Assert.Equal(
            "no.,colour,from,to,awg,stated mm,cut mm,strip,sleeve,joints\n"
                + "1,white,neck.hot,out.tip,,,own lead,6 mm,,1\n"
                + "2,black,neck.ground,out.sleeve,,,own lead,6 mm,,2\n",
            File.ReadAllText(target)
        );
    }

    [Theory]
    [InlineData("--paper", "b7", "--paper b7: paper is a4, letter, a3, tabloid")]
    [InlineData("--count", "0", "--count takes a whole number from 1 to 10000")]
    public void Sheet_OfWhatCannotBe_SaysWhy(string option, string value, string words)
    {
        var ran = Ran.Of("sheet", folder.Put("a.wiring", Sample.Right), option, value);

        Assert.Equal(2, ran.Code);
        Assert.Contains(words, ran.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("300x300", 0, "")]
    [InlineData("100x100", 2, "--fit: letters would be")]
    public void Draw_FittedOnPaper_IsDrawnOnlyWhereItCanBeRead(string paper, int code, string words)
    {
        var file = folder.Put("a.wiring", Sample.Right);
        var target = Path.Combine(Path.GetDirectoryName(file)!, "a.pdf");

        var ran = Ran.Of("draw", file, "-o", target, "--paper", paper, "--fit");

        Assert.Equal(code, ran.Code);
        Assert.Contains(words, ran.Error, StringComparison.Ordinal);
        Assert.Equal(code == 0, File.Exists(target));
    }

    [Theory]
    [InlineData("--paper a4 -o -", "--paper is for a PDF")]
    [InlineData("--fit -o -", "--fit fits the drawing on paper")]
    public void Draw_WithPaperForNoPdf_SaysWhatWouldDo(string options, string words)
    {
        var ran = Ran.Of(["draw", folder.Put("a.wiring", Sample.Right), .. options.Split(' ')]);

        Assert.Equal(2, ran.Code);
        Assert.Contains(words, ran.Error, StringComparison.Ordinal);
    }
}
