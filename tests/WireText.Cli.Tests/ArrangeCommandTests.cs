using System.Text;

namespace WireText.Cli.Tests;

public sealed class ArrangeCommandTests : IDisposable
{
    private readonly TestFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Arrange_OfACircuitWithoutPlaces_PrintsABlock()
    {
        var ran = Ran.Of(new TestHost(Sample.Right), "arrange", "-");

        Assert.Equal(0, ran.Code);
        Assert.StartsWith("arrange\n    ", ran.Output, StringComparison.Ordinal);
        Assert.Contains("neck", ran.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Arrange_Write_KeepsTheFileAndThenHasNothingToDo()
    {
        var file = folder.Put("a.wiring", "# mine\n" + Sample.Right);

        var first = Ran.Of("arrange", file, "--write");
        var written = File.ReadAllText(file);
        var second = Ran.Of("arrange", file, "--write");

        Assert.Equal((0, ""), (first.Code, first.Output));
        Assert.StartsWith("# mine\n", written, StringComparison.Ordinal);
        Assert.Contains("\narrange\n", written, StringComparison.Ordinal);
        Assert.Equal(0, Ran.Of("check", file).Code);
        Assert.Contains("every part has its place already", second.Error, StringComparison.Ordinal);
        Assert.Equal(written, File.ReadAllText(file));
    }

    [Fact]
    public void Arrange_Write_KeepsByteOrderMarkAndLineEnds()
    {
        byte[] mark = [0xEF, 0xBB, 0xBF];
        var plain = folder.Put("plain.wiring", Sample.Right);
        var file = folder.Put(
            "a.wiring",
            [.. mark, .. Encoding.UTF8.GetBytes(Sample.Right.ReplaceLineEndings("\r\n"))]
        );

        Ran.Of("arrange", plain, "--write");
        Ran.Of("arrange", file, "--write");

        var written = File.ReadAllText(plain);
        Assert.Contains("\narrange\n", written, StringComparison.Ordinal);
        Assert.Equal([.. mark, .. Encoding.UTF8.GetBytes(written.ReplaceLineEndings("\r\n"))], File.ReadAllBytes(file));
    }

    [Fact]
    public void Arrange_Write_OfStandardInput_IsRefused()
    {
        var ran = Ran.Of(new TestHost(Sample.Right), "arrange", "-", "--write");

        Assert.Equal(2, ran.Code);
        Assert.Contains("leave --write out", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Draw_WithoutPlaces_OffersToKeepThem_AndWithThemDoesNot()
    {
        var file = folder.Put("a.wiring", Sample.Right);

        var before = Ran.Of("draw", file);
        Ran.Of("arrange", file, "--write");
        var after = Ran.Of("draw", file);

        Assert.Contains($"'wiretext arrange {file} --write' keeps them", before.Error, StringComparison.Ordinal);
        Assert.Equal($"{folder["a.svg"]} is written\n", after.Error);
        Assert.Equal((0, 0), (before.Code, after.Code));
    }
}
