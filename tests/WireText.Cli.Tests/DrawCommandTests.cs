using System.Buffers.Binary;
using System.Globalization;
using System.Runtime.Versioning;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using WireText.Testing;

namespace WireText.Cli.Tests;

public sealed class DrawCommandTests : IDisposable
{
    private static readonly byte[] PngSignature = [0x89, .. "PNG\r\n"u8, 0x1A, 0x0A];

    private readonly Bench bench = new();

    public void Dispose() => bench.Dispose();

    [Fact]
    public void Draw_NoTarget_WritesAnSvgBesideTheFile()
    {
        var file = bench.Put("a.wiring", Bench.Right);

        var ran = Bench.Run("draw", file);

        Assert.Equal((0, ""), (ran.Code, ran.Output));
        Assert.StartsWith($"{file}: info: places were searched for", ran.Error, StringComparison.Ordinal);
        Assert.Equal(["a.svg", "a.wiring"], bench.Names);
        Assert.Equal("svg", XDocument.Parse(bench.Text("a.svg")).Root!.Name.LocalName);
    }

    [Fact]
    public void Draw_Trace_SaysWhatIsFollowed()
    {
        var ran = Bench.Run("draw", bench.Put("a.wiring", Bench.Right), "--trace", "neck.hot", "-o", "-");

        Assert.Equal(0, ran.Code);
        Assert.Contains("Following: neck.hot", ran.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Draw_Views_HasAPictureForEachRowOfTheTableOfPositions()
    {
        const string Selector = """
            pickup  neck    single-coil
            pickup  bridge  single-coil
            switch  sel     toggle-3way
            jack    out     mono
            wire    neck.hot       to sel.A1               white
            wire    bridge.hot     to sel.B1               yellow
            wire    sel.A0         to sel.B0 to out.tip    red
            wire    neck.ground    to out.sleeve           black
            wire    bridge.ground  to out.sleeve           black
            wire    sel.case       to out.sleeve           black

            """;
        var ran = Bench.Run("draw", bench.Put("a.wiring", Selector), "--views", "positions", "-o", "-");

        var views = XDocument.Parse(ran.Output).Descendants().Where(item => item.Attribute("class")?.Value == "view");
        var headings = XDocument
            .Parse(ran.Output)
            .Descendants()
            .Where(item => item.Attribute("class")?.Value is "heading" or "says")
            .Select(item => item.Value);
        Assert.Equal(0, ran.Code);
        Assert.Equal(3, views.Count());
        Assert.Equal(["sel=1", "neck", "sel=2", "neck parallel bridge", "sel=3", "bridge"], headings);
        Assert.DoesNotContain("id=\"", ran.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--trace", "neck.hot")]
    [InlineData("--measure", null)]
    public void Draw_Views_WithWhatDoesNotGoWithThem_IsRefused(string option, string? value)
    {
        string[] args = ["draw", bench.Put("a.wiring", Bench.Right), "--views", "positions", option];

        var ran = Bench.Run(value is null ? args : [.. args, value]);

        Assert.Equal(2, ran.Code);
        Assert.Contains("leave the other out", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Draw_TraceOfNoLug_IsRefusedWithTheNearest()
    {
        var ran = Bench.Run("draw", bench.Put("a.wiring", Bench.Right), "--trace", "neck.hit");

        Assert.Equal(2, ran.Code);
        Assert.Contains("'neck.hit' is no lug; did you mean 'neck.hot'?", ran.Error, StringComparison.Ordinal);
        Assert.Equal(["a.wiring"], bench.Names);
    }

    [Fact]
    public void Draw_Mistake_IsDrawnAndToldAndExits1()
    {
        var file = bench.Put("a.wiring", Bench.Wrong);

        var ran = Bench.Run("draw", file, "-o", bench["b.svg"]);

        Assert.Equal(1, ran.Code);
        Assert.Contains("a.wiring:4:37: error: ", ran.Error, StringComparison.Ordinal);
        Assert.Equal(["a.wiring", "b.svg"], bench.Names);
    }

    [Theory]
    [InlineData("a.png")]
    [InlineData("a.PNG")]
    public void Draw_TargetEndsInPng_WritesAPng(string target)
    {
        var file = bench.Put("a.wiring", Bench.Right);

        var ran = Bench.Run("draw", file, "-o", bench[target], "--width", "300");

        Assert.Equal(0, ran.Code);
        var png = File.ReadAllBytes(bench[target]);
        Assert.Equal(PngSignature, png[..8]);
        Assert.Equal(300, BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(16)));
    }

    [Fact]
    public void Draw_Dpi_SetsTheWidthByThePaper()
    {
        var file = bench.Put("a.wiring", Bench.Right);
        Bench.Run("draw", file);
        var millimetres = double.Parse(
            XDocument.Parse(bench.Text("a.svg")).Root!.Attribute("width")!.Value[..^2],
            CultureInfo.InvariantCulture
        );

        Bench.Run("draw", file, "--format", "png", "--dpi", "127");

        // 127 dots an inch are 5 a millimetre.
        var png = File.ReadAllBytes(bench["a.png"]);
        Assert.Equal(Math.Ceiling(Math.Round(millimetres * 5, 6)), BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(16)));
    }

    [Fact]
    public void Draw_Transparent_IsAnotherPng()
    {
        var file = bench.Put("a.wiring", Bench.Right);

        var paper = Bench.Run("draw", file, "-o", "-", "--format", "png", "--width", "200");
        var clear = Bench.Run("draw", file, "-o", "-", "--format", "png", "--width", "200", "--transparent");

        Assert.Equal((0, 0), (paper.Code, clear.Code));
        Assert.Equal(PngSignature, clear.OutputBytes[..8]);
        Assert.NotEqual(paper.OutputBytes, clear.OutputBytes);
    }

    [Fact]
    public void Draw_StandardInput_GoesToStandardOutput()
    {
        var ran = Bench.Run(new TestHost(Bench.Right), "draw", "-");

        Assert.Equal(0, ran.Code);
        Assert.Equal("svg", XDocument.Parse(ran.Output).Root!.Name.LocalName);
    }

    [Fact]
    public void Draw_TwiceAndInAnotherCulture_GivesTheSameBytes()
    {
        var file = bench.Put("a.wiring", Bench.Right);
        var first = Bench.Run("draw", file, "-o", "-").OutputBytes;

        Assert.Equal(first, Bench.Run("draw", file, "-o", "-").OutputBytes);
        Assert.Equal(first, OtherCulture.Run(() => Bench.Run("draw", file, "-o", "-").OutputBytes));
    }

    [Theory]
    [InlineData("quick")]
    [InlineData("full")]
    public void Draw_Measure_WritesItAndNoPicture(string effort)
    {
        var file = bench.Put("a.wiring", Bench.Right);

        var ran = Bench.Run("draw", file, "--measure", "--effort", effort);

        Assert.Equal(0, ran.Code);
        Assert.Equal(["a.wiring"], bench.Names);
        using var measure = JsonDocument.Parse(ran.Output);
        var wires = measure.RootElement.GetProperty("wires");
        Assert.Equal(2, wires.GetProperty("inSource").GetInt32());
        Assert.Equal(2, wires.GetProperty("inPicture").GetInt32());
        Assert.Equal(0, measure.RootElement.GetProperty("hardFaults").GetInt32());
    }

    [Fact]
    public void Draw_MeasureAndTarget_GivesBoth()
    {
        var file = bench.Put("a.wiring", Bench.Right);

        var ran = Bench.Run("draw", file, "--measure", "-o", bench["b.svg"]);

        Assert.Equal(0, ran.Code);
        Assert.StartsWith("{", ran.Output, StringComparison.Ordinal);
        Assert.Equal(["a.wiring", "b.svg"], bench.Names);
    }

    [Fact]
    [UnsupportedOSPlatform("windows")]
    public void Draw_ExistingTarget_IsReplacedWholeAndKeepsItsRights()
    {
        var file = bench.Put("a.wiring", Bench.Right);
        bench.Put("a.svg", new string('x', 1_000_000));
        const UnixFileMode mine = UnixFileMode.UserRead | UnixFileMode.UserWrite;
        File.SetUnixFileMode(bench["a.svg"], mine);

        Assert.Equal(0, Bench.Run("draw", file).Code);

        Assert.EndsWith("</svg>\n", bench.Text("a.svg"), StringComparison.Ordinal);
        Assert.Equal(mine, File.GetUnixFileMode(bench["a.svg"]));
    }

    [Fact]
    public void Draw_TargetIsALink_WritesBehindIt()
    {
        var file = bench.Put("a.wiring", Bench.Right);
        bench.Put("shelf/real.svg", "old");
        File.CreateSymbolicLink(bench["link.svg"], bench["shelf/real.svg"]);

        Assert.Equal(0, Bench.Run("draw", file, "-o", bench["link.svg"]).Code);

        Assert.NotNull(new FileInfo(bench["link.svg"]).LinkTarget);
        Assert.EndsWith("</svg>\n", bench.Text("shelf/real.svg"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("none/b.svg")] // no such folder
    [InlineData("a.wiring/b.svg")] // a file where a folder should be
    [InlineData("folder.svg")] // a folder where a file should be
    public void Draw_TargetCannotBeWritten_Exits2AndLeavesNothing(string target)
    {
        var file = bench.Put("a.wiring", Bench.Right);
        Directory.CreateDirectory(bench["folder.svg"]);

        var ran = Bench.Run("draw", file, "-o", bench[target]);

        Assert.Equal(2, ran.Code);
        Assert.Contains("cannot write", ran.Error, StringComparison.Ordinal);
        Assert.Equal(["a.wiring"], bench.Names);
    }

    [SkippableFact]
    public void Draw_FullDisk_Exits2()
    {
        Skip.IfNot(File.Exists("/dev/full"), "this system has no device that is always full");
        var file = bench.Put("a.wiring", Bench.Right);

        var ran = Bench.Run("draw", file, "-o", "/dev/full", "--format", "svg");

        Assert.Equal(2, ran.Code);
        Assert.Contains("cannot write '/dev/full'", ran.Error, StringComparison.Ordinal);
        Assert.True(File.Exists("/dev/full"));
    }

    [Fact]
    public void Draw_NothingToDraw_LeavesTheTargetUntouched()
    {
        var file = bench.Put("a.wiring", "jock out mono\n");
        bench.Put("a.svg", "old");

        var ran = Bench.Run("draw", file);

        Assert.NotEqual(0, ran.Code);
        if (ran.Code == 2)
        {
            Assert.Equal("old", bench.Text("a.svg"));
        }

        Assert.Equal(["a.svg", "a.wiring"], bench.Names);
    }

    [Theory]
    [InlineData("--width", "0")]
    [InlineData("--width", "1000000")]
    [InlineData("--width", "many")]
    [InlineData("--dpi", "-3")]
    [InlineData("--dpi", "2401")]
    public void Draw_SizeThatCannotBe_Exits2AndLeavesNothing(string option, string value)
    {
        var file = bench.Put("a.wiring", Bench.Right);

        var ran = Bench.Run("draw", file, "--format", "png", option, value);

        Assert.Equal(2, ran.Code);
        Assert.NotEmpty(ran.Error);
        Assert.Equal(["a.wiring"], bench.Names);
    }

    [Theory]
    [InlineData("--width", "300")]
    [InlineData("--dpi", "300")]
    [InlineData("--transparent")]
    public void Draw_PngOptionForAnSvg_IsRefused(params string[] options)
    {
        var file = bench.Put("a.wiring", Bench.Right);

        var ran = Bench.Run(["draw", file, .. options]);

        Assert.Equal(2, ran.Code);
        Assert.Contains($"{options[0]} is for a PNG", ran.Error, StringComparison.Ordinal);
        Assert.Equal(["a.wiring"], bench.Names);
    }

    [Fact]
    public void Draw_OtherEnding_IsRefused()
    {
        var file = bench.Put("a.wiring", Bench.Right);

        var ran = Bench.Run("draw", file, "-o", bench["a.tiff"]);

        Assert.Equal(2, ran.Code);
        Assert.Contains("in none of .svg, .png and .pdf", ran.Error, StringComparison.Ordinal);
    }

    /// <summary>A point is 1/72 inch; the page may be off by the rounding to whole points.</summary>
    [Theory]
    [InlineData("1:1", 1.0)]
    [InlineData("1:2", 0.5)]
    [InlineData("2:1", 2.0)]
    [InlineData("3:4", 0.75)]
    public void Draw_Scale_SetsThePageOfEveryFormat(string ratio, double scale)
    {
        var file = bench.Put("a.wiring", Bench.Right);
        Bench.Run("draw", file, "-o", bench["true.svg"]);
        foreach (var name in new[] { "b.svg", "b.png", "b.pdf" })
        {
            Assert.Equal(0, Bench.Run("draw", file, "-o", bench[name], "--scale", ratio).Code);
        }

        var (trueWidth, trueHeight) = PageOf(bench.Text("true.svg"));
        var (width, height) = PageOf(bench.Text("b.svg"));
        Assert.Equal(trueWidth * scale, width, 0.001);
        Assert.Equal(trueHeight * scale, height, 0.001);

        var png = File.ReadAllBytes(bench["b.png"]);
        Assert.Equal(Math.Ceiling(width / 25.4 * 200), BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(16)));
        Assert.Equal(Math.Ceiling(height / 25.4 * 200), BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(20)));

        var box = Regex.Match(
            Encoding.Latin1.GetString(File.ReadAllBytes(bench["b.pdf"])),
            @"/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]"
        );
        Assert.Equal(width / 25.4 * 72, double.Parse(box.Groups[1].Value, CultureInfo.InvariantCulture), 0.5);
        Assert.Equal(height / 25.4 * 72, double.Parse(box.Groups[2].Value, CultureInfo.InvariantCulture), 0.5);
    }

    [Fact]
    public void Draw_ScaleOneToOne_IsWhatIsDrawnWithoutIt()
    {
        var file = bench.Put("a.wiring", Bench.Right);

        Assert.Equal(
            Bench.Run("draw", file, "-o", "-").Output,
            Bench.Run("draw", file, "-o", "-", "--scale", "1:1").Output
        );
    }

    [Fact]
    public void Draw_WidthAndScale_RecordTheResolutionThatGivesThePage()
    {
        var file = bench.Put("a.wiring", Bench.Right);
        Bench.Run("draw", file, "-o", bench["a.svg"], "--scale", "1:2");

        Bench.Run("draw", file, "-o", bench["a.png"], "--scale", "1:2", "--width", "600");

        var png = File.ReadAllBytes(bench["a.png"]);
        var metres = 600.0 / BinaryPrimitives.ReadUInt32BigEndian(png.AsSpan(41));
        Assert.Equal(PageOf(bench.Text("a.svg")).Width, metres * 1000, 0.05);
    }

    [Theory]
    [InlineData("0:1")]
    [InlineData("1:0")]
    [InlineData("1:101")]
    [InlineData("1/2")]
    [InlineData("0.5:1")]
    [InlineData("-1:2")]
    [InlineData("1:2:3")]
    [InlineData("half")]
    [InlineData("")]
    public void Draw_ScaleThatIsNone_SaysWhatIsOne(string ratio)
    {
        var file = bench.Put("a.wiring", Bench.Right);

        var ran = Bench.Run("draw", file, "--scale", ratio);

        Assert.Equal(2, ran.Code);
        Assert.Contains($"--scale {ratio}: a scale is PAPER:REAL", ran.Error, StringComparison.Ordinal);
        Assert.Contains("write 1:1 for true size", ran.Error, StringComparison.Ordinal);
        Assert.Equal(["a.wiring"], bench.Names);
    }

    [Fact]
    public void Draw_PdfTooLargeForAPage_SaysSoAndLeavesNothing()
    {
        var file = bench.Put("a.wiring", Bench.Right);

        var ran = Bench.Run("draw", file, "--format", "pdf", "--scale", "100:1");

        Assert.Equal(2, ran.Code);
        Assert.Contains("too large for a PDF; up to 5080 mm will do", ran.Error, StringComparison.Ordinal);
        Assert.Equal(["a.wiring"], bench.Names);
    }

    [Theory]
    [InlineData("-o", "b.pdf", "b.pdf")]
    [InlineData("-o", "b.PDF", "b.PDF")]
    [InlineData("--format", "pdf", "a.pdf")]
    public void Draw_Pdf_IsWrittenWholeAndTheSameTwice(string option, string value, string written)
    {
        var file = bench.Put("a.wiring", Bench.Right);
        string[] args = ["draw", file, option, option == "-o" ? bench[value] : value];

        Assert.Equal(0, Bench.Run(args).Code);
        var first = File.ReadAllBytes(bench[written]);
        Bench.Run(args);

        Assert.StartsWith("%PDF-", Encoding.Latin1.GetString(first), StringComparison.Ordinal);
        Assert.EndsWith("%%EOF", Encoding.Latin1.GetString(first).TrimEnd(), StringComparison.Ordinal);
        Assert.Equal(first, File.ReadAllBytes(bench[written]));
        Assert.Equal(2, bench.Names.Count());
    }

    private static (double Width, double Height) PageOf(string svg)
    {
        var root = XDocument.Parse(svg).Root!;
        return (Side("width"), Side("height"));

        double Side(string name) => double.Parse(((string)root.Attribute(name)!)[..^2], CultureInfo.InvariantCulture);
    }

    [Fact]
    public void Draw_OverItsOwnSource_IsRefused()
    {
        var file = bench.Put("a.svg", Bench.Right);

        var ran = Bench.Run("draw", file);

        Assert.Equal(2, ran.Code);
        Assert.Equal(Bench.Right, bench.Text("a.svg"));
    }

    [Fact]
    public void Draw_PictureAndMeasureToOnePlace_IsRefused() =>
        Assert.Equal(2, Bench.Run(new TestHost(Bench.Right), "draw", "-", "-o", "-", "--measure").Code);

    [Fact]
    public void Draw_InputThatIsNoText_Exits2()
    {
        var ran = Bench.Run(new TestHost(Encoding.Latin1.GetBytes("# 10 µF\n")), "draw", "-");

        Assert.Equal(2, ran.Code);
        Assert.Equal("wiretext: cannot read '-': it is not text in UTF-8\n", ran.Error);
    }
}
