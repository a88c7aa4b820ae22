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

    private readonly TestFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Draw_NoTarget_WritesAnSvgBesideTheFile()
    {
        var file = folder.Put("a.wiring", Sample.Right);

        var ran = Ran.Of("draw", file);

        Assert.Equal((0, ""), (ran.Code, ran.Output));
        Assert.StartsWith($"{file}: places were searched for", ran.Error, StringComparison.Ordinal);
        Assert.Equal(["a.svg", "a.wiring"], folder.Names);
        Assert.Equal("svg", XDocument.Parse(folder.Text("a.svg")).Root!.Name.LocalName);
    }

    [Fact]
    public void Draw_Clean_LeavesOutWhatIsForTheBench()
    {
        const string Text = """
            pickup  neck  single-coil
            pot     vol   250k audio "the only knob"
            cap     dark  22n paper-in-oil from vol.3 to vol.case
            jack    out   mono
            wire    neck.hot     to vol.3       white  length=120mm
            wire    neck.ground  to vol.case    black
            wire    vol.2        to out.tip     red
            wire    vol.case     to out.sleeve  black

            """;
        var file = folder.Put("a.wiring", Text);

        var (bench, customer) = (Ran.Of("draw", file, "-o", "-"), Ran.Of("draw", file, "--clean", "-o", "-"));

        string[] forBench = ["class=\"finding\"", "class=\"heat\"", "Lengths stated", "heat-sensitive"];
        Every.Item(forBench, words => Assert.Contains(words, bench.Output, StringComparison.Ordinal));
        Every.Item(forBench, words => Assert.DoesNotContain(words, customer.Output, StringComparison.Ordinal));
        Assert.Contains("the only knob", customer.Output, StringComparison.Ordinal);
        // What is wrong is told to who draws it all the same.
        Assert.Equal(bench.Code, customer.Code);
        Assert.Contains("warning: ", bench.Error, StringComparison.Ordinal);
        Assert.Equal(bench.Error, customer.Error);
    }

    [Fact]
    public void Draw_Trace_SaysWhatIsFollowed()
    {
        var ran = Ran.Of("draw", folder.Put("a.wiring", Sample.Right), "--trace", "neck.hot", "-o", "-");

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
        var ran = Ran.Of("draw", folder.Put("a.wiring", Selector), "--views", "positions", "-o", "-");

        var views = XDocument.Parse(ran.Output).Descendants().Where(item => item.Attribute("class")?.Value == "view");
        var headings = XDocument
            .Parse(ran.Output)
            .Descendants()
            .Where(item => item.Attribute("class")?.Value is "heading" or "says")
            .Select(item => item.Value);
        Assert.Equal(0, ran.Code);
        Assert.Equal(3, views.Count());
        Assert.Equal(["sel=1", "neck", "sel=2", "neck parallel bridge (phase assumed)", "sel=3", "bridge"], headings);
        Assert.DoesNotContain("id=\"", ran.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--trace", "neck.hot")]
    [InlineData("--measure", null)]
    public void Draw_Views_WithWhatDoesNotGoWithThem_IsRefused(string option, string? value)
    {
        string[] args = ["draw", folder.Put("a.wiring", Sample.Right), "--views", "positions", option];

        var ran = Ran.Of(value is null ? args : [.. args, value]);

        Assert.Equal(2, ran.Code);
        Assert.Contains("leave the other out", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Draw_TraceOfNoLug_IsRefusedWithTheNearest()
    {
        var ran = Ran.Of("draw", folder.Put("a.wiring", Sample.Right), "--trace", "neck.hit");

        Assert.Equal(2, ran.Code);
        Assert.Contains("'neck.hit' is no lug; did you mean 'neck.hot'?", ran.Error, StringComparison.Ordinal);
        Assert.Equal(["a.wiring"], folder.Names);
    }

    [Fact]
    public void Draw_Mistake_IsDrawnAndToldAndExits1()
    {
        var file = folder.Put("a.wiring", Sample.Wrong);

        var ran = Ran.Of("draw", file, "-o", folder["b.svg"]);

        Assert.Equal(1, ran.Code);
        Assert.Contains("a.wiring:4:37: error: ", ran.Error, StringComparison.Ordinal);
        Assert.Equal(["a.wiring", "b.svg"], folder.Names);
    }

    [Theory]
    [InlineData("a.png")]
    [InlineData("a.PNG")]
    public void Draw_TargetEndsInPng_WritesAPng(string target)
    {
        var file = folder.Put("a.wiring", Sample.Right);

        var ran = Ran.Of("draw", file, "-o", folder[target], "--width", "300");

        Assert.Equal(0, ran.Code);
        var png = File.ReadAllBytes(folder[target]);
        Assert.Equal(PngSignature, png[..8]);
        Assert.Equal(300, BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(16)));
    }

    [Fact]
    public void Draw_Dpi_SetsTheWidthByThePaper()
    {
        var file = folder.Put("a.wiring", Sample.Right);
        Ran.Of("draw", file);
        var millimetres = double.Parse(
            XDocument.Parse(folder.Text("a.svg")).Root!.Attribute("width")!.Value[..^2],
            CultureInfo.InvariantCulture
        );

        Ran.Of("draw", file, "--format", "png", "--dpi", "127");

        // 127 dots an inch are 5 a millimetre.
        var png = File.ReadAllBytes(folder["a.png"]);
        Assert.Equal(Math.Ceiling(Math.Round(millimetres * 5, 6)), BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(16)));
    }

    [Fact]
    public void Draw_Transparent_IsAnotherPng()
    {
        var file = folder.Put("a.wiring", Sample.Right);

        var paper = Ran.Of("draw", file, "-o", "-", "--format", "png", "--width", "200");
        var clear = Ran.Of("draw", file, "-o", "-", "--format", "png", "--width", "200", "--transparent");

        Assert.Equal((0, 0), (paper.Code, clear.Code));
        Assert.Equal(PngSignature, clear.OutputBytes[..8]);
        Assert.NotEqual(paper.OutputBytes, clear.OutputBytes);
    }

    [Fact]
    public void Draw_StandardInput_GoesToStandardOutput()
    {
        var ran = Ran.Of(new TestHost(Sample.Right), "draw", "-");

        Assert.Equal(0, ran.Code);
        Assert.Equal("svg", XDocument.Parse(ran.Output).Root!.Name.LocalName);
    }

    [Fact]
    public void Draw_TwiceAndInAnotherCulture_GivesTheSameBytes()
    {
        var file = folder.Put("a.wiring", Sample.Right);
        var first = Ran.Of("draw", file, "-o", "-").OutputBytes;

        Assert.Equal(first, Ran.Of("draw", file, "-o", "-").OutputBytes);
        Assert.Equal(first, OtherCulture.Run(() => Ran.Of("draw", file, "-o", "-").OutputBytes));
    }

    [Theory]
    [InlineData("quick")]
    [InlineData("full")]
    public void Draw_Measure_WritesItAndNoPicture(string effort)
    {
        var file = folder.Put("a.wiring", Sample.Right);

        var ran = Ran.Of("draw", file, "--measure", "--effort", effort);

        Assert.Equal(0, ran.Code);
        Assert.Equal(["a.wiring"], folder.Names);
        using var measure = JsonDocument.Parse(ran.Output);
        var wires = measure.RootElement.GetProperty("wires");
        Assert.Equal(2, wires.GetProperty("inSource").GetInt32());
        Assert.Equal(2, wires.GetProperty("inPicture").GetInt32());
        Assert.Equal(0, measure.RootElement.GetProperty("hardFaults").GetInt32());
    }

    [Fact]
    public void Draw_MeasureAndTarget_GivesBoth()
    {
        var file = folder.Put("a.wiring", Sample.Right);

        var ran = Ran.Of("draw", file, "--measure", "-o", folder["b.svg"]);

        Assert.Equal(0, ran.Code);
        Assert.StartsWith("{", ran.Output, StringComparison.Ordinal);
        Assert.Equal(["a.wiring", "b.svg"], folder.Names);
    }

    [Fact]
    [UnsupportedOSPlatform("windows")]
    public void Draw_ExistingTarget_IsReplacedWholeAndKeepsItsRights()
    {
        var file = folder.Put("a.wiring", Sample.Right);
        folder.Put("a.svg", new string('x', 1_000_000));
        const UnixFileMode mine = UnixFileMode.UserRead | UnixFileMode.UserWrite;
        File.SetUnixFileMode(folder["a.svg"], mine);

        Assert.Equal(0, Ran.Of("draw", file).Code);

        Assert.EndsWith("</svg>\n", folder.Text("a.svg"), StringComparison.Ordinal);
        Assert.Equal(mine, File.GetUnixFileMode(folder["a.svg"]));
    }

    [Fact]
    public void Draw_TargetIsALink_WritesBehindIt()
    {
        var file = folder.Put("a.wiring", Sample.Right);
        folder.Put("shelf/real.svg", "old");
        File.CreateSymbolicLink(folder["link.svg"], folder["shelf/real.svg"]);

        Assert.Equal(0, Ran.Of("draw", file, "-o", folder["link.svg"]).Code);

        Assert.NotNull(new FileInfo(folder["link.svg"]).LinkTarget);
        Assert.EndsWith("</svg>\n", folder.Text("shelf/real.svg"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("none/b.svg")] // no such folder
    [InlineData("a.wiring/b.svg")] // a file where a folder should be
    [InlineData("folder.svg")] // a folder where a file should be
    public void Draw_TargetCannotBeWritten_Exits2AndLeavesNothing(string target)
    {
        var file = folder.Put("a.wiring", Sample.Right);
        Directory.CreateDirectory(folder["folder.svg"]);

        var ran = Ran.Of("draw", file, "-o", folder[target]);

        Assert.Equal(2, ran.Code);
        Assert.Contains("cannot write", ran.Error, StringComparison.Ordinal);
        Assert.Equal(["a.wiring"], folder.Names);
    }

    [SkippableFact]
    public void Draw_FullDisk_Exits2()
    {
        Skip.IfNot(File.Exists("/dev/full"), "this system has no device that is always full");
        var file = folder.Put("a.wiring", Sample.Right);

        var ran = Ran.Of("draw", file, "-o", "/dev/full", "--format", "svg");

        Assert.Equal(2, ran.Code);
        Assert.Contains("cannot write '/dev/full'", ran.Error, StringComparison.Ordinal);
        Assert.True(File.Exists("/dev/full"));
    }

    [Fact]
    public void Draw_NothingToDraw_LeavesTheTargetUntouched()
    {
        var file = folder.Put("a.wiring", "jock out mono\n");
        folder.Put("a.svg", "old");

        var ran = Ran.Of("draw", file);

        Assert.NotEqual(0, ran.Code);
        if (ran.Code == 2)
        {
            Assert.Equal("old", folder.Text("a.svg"));
        }

        Assert.Equal(["a.svg", "a.wiring"], folder.Names);
    }

    [Theory]
    [InlineData("--width", "0")]
    [InlineData("--width", "1000000")]
    [InlineData("--width", "many")]
    [InlineData("--dpi", "-3")]
    [InlineData("--dpi", "2401")]
    public void Draw_SizeThatCannotBe_Exits2AndLeavesNothing(string option, string value)
    {
        var file = folder.Put("a.wiring", Sample.Right);

        var ran = Ran.Of("draw", file, "--format", "png", option, value);

        Assert.Equal(2, ran.Code);
        Assert.NotEmpty(ran.Error);
        Assert.Equal(["a.wiring"], folder.Names);
    }

    [Theory]
    [InlineData("--width", "300")]
    [InlineData("--dpi", "300")]
    [InlineData("--transparent")]
    public void Draw_PngOptionForAnSvg_IsRefused(params string[] options)
    {
        var file = folder.Put("a.wiring", Sample.Right);

        var ran = Ran.Of(["draw", file, .. options]);

        Assert.Equal(2, ran.Code);
        Assert.Contains($"{options[0]} is for a PNG", ran.Error, StringComparison.Ordinal);
        Assert.Equal(["a.wiring"], folder.Names);
    }

    [Fact]
    public void Draw_WidthAndDpi_AreOneOrTheOther()
    {
        var file = folder.Put("a.wiring", Sample.Right);

        var ran = Ran.Of("draw", file, "--format", "png", "--width", "300", "--dpi", "300");

        Assert.Equal(2, ran.Code);
        Assert.Contains("--width and --dpi both say how large a PNG is", ran.Error, StringComparison.Ordinal);
        Assert.Equal(["a.wiring"], folder.Names);
    }

    [Theory]
    [InlineData("")]
    [InlineData("# nothing yet\n")]
    [InlineData("circuit \"a title\"\n")]
    public void Draw_FileWithoutParts_WritesNothingAndSaysWhy(string text)
    {
        var file = folder.Put("a.wiring", text);

        var ran = Ran.Of("draw", file);

        Assert.Equal(2, ran.Code);
        Assert.Contains($"there is nothing to draw: '{file}' has no parts", ran.Error, StringComparison.Ordinal);
        Assert.Equal(["a.wiring"], folder.Names);
    }

    [Fact]
    public void Draw_FileThatIsNoWiring_WritesNothingAndSaysWhy()
    {
        var file = folder.Put("a.wiring", "no wiring at all\n");

        var ran = Ran.Of("draw", file);

        Assert.Equal(2, ran.Code);
        Assert.EndsWith(
            $"wiretext: there is nothing to draw: no line of '{file}' that could be read has a part in it\n",
            ran.Error,
            StringComparison.Ordinal
        );
        Assert.Equal(["a.wiring"], folder.Names);
    }

    [Fact]
    public void Draw_ToAFile_SaysWhatItWrote_AndToStandardOutputDoesNot()
    {
        var file = folder.Put("a.wiring", Sample.Right);

        var beside = Ran.Of("draw", file);
        var piped = Ran.Of("draw", file, "-o", "-");

        Assert.EndsWith($"{folder["a.svg"]} is written\n", beside.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("is written", piped.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Draw_OtherEnding_IsRefused()
    {
        var file = folder.Put("a.wiring", Sample.Right);

        var ran = Ran.Of("draw", file, "-o", folder["a.tiff"]);

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
        var file = folder.Put("a.wiring", Sample.Right);
        Ran.Of("draw", file, "-o", folder["true.svg"]);
        foreach (var name in new[] { "b.svg", "b.png", "b.pdf" })
        {
            Assert.Equal(0, Ran.Of("draw", file, "-o", folder[name], "--scale", ratio).Code);
        }

        var (trueWidth, trueHeight) = PageOf(folder.Text("true.svg"));
        var (width, height) = PageOf(folder.Text("b.svg"));
        Assert.Equal(trueWidth * scale, width, 0.001);
        Assert.Equal(trueHeight * scale, height, 0.001);

        var png = File.ReadAllBytes(folder["b.png"]);
        Assert.Equal(Math.Ceiling(width / 25.4 * 200), BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(16)));
        Assert.Equal(Math.Ceiling(height / 25.4 * 200), BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(20)));

        var box = Regex.Match(
            Encoding.Latin1.GetString(File.ReadAllBytes(folder["b.pdf"])),
            @"/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]"
        );
        Assert.Equal(width / 25.4 * 72, double.Parse(box.Groups[1].Value, CultureInfo.InvariantCulture), 0.5);
        Assert.Equal(height / 25.4 * 72, double.Parse(box.Groups[2].Value, CultureInfo.InvariantCulture), 0.5);
    }

    [Fact]
    public void Draw_ScaleOneToOne_IsWhatIsDrawnWithoutIt()
    {
        var file = folder.Put("a.wiring", Sample.Right);

        Assert.Equal(Ran.Of("draw", file, "-o", "-").Output, Ran.Of("draw", file, "-o", "-", "--scale", "1:1").Output);
    }

    [Fact]
    public void Draw_WidthAndScale_RecordTheResolutionThatGivesThePage()
    {
        var file = folder.Put("a.wiring", Sample.Right);
        Ran.Of("draw", file, "-o", folder["a.svg"], "--scale", "1:2");

        Ran.Of("draw", file, "-o", folder["a.png"], "--scale", "1:2", "--width", "600");

        var png = File.ReadAllBytes(folder["a.png"]);
        var metres = 600.0 / BinaryPrimitives.ReadUInt32BigEndian(png.AsSpan(41));
        Assert.Equal(PageOf(folder.Text("a.svg")).Width, metres * 1000, 0.05);
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
        var file = folder.Put("a.wiring", Sample.Right);

        var ran = Ran.Of("draw", file, "--scale", ratio);

        Assert.Equal(2, ran.Code);
        Assert.Contains($"--scale {ratio}: a scale is PAPER:REAL", ran.Error, StringComparison.Ordinal);
        Assert.Contains("write 1:1 for true size", ran.Error, StringComparison.Ordinal);
        Assert.Equal(["a.wiring"], folder.Names);
    }

    [Fact]
    public void Draw_PdfTooLargeForAPage_SaysSoAndLeavesNothing()
    {
        var file = folder.Put("a.wiring", Sample.Right);

        var ran = Ran.Of("draw", file, "--format", "pdf", "--scale", "100:1");

        Assert.Equal(2, ran.Code);
        Assert.Contains("too large for a PDF; up to 5080 mm will do", ran.Error, StringComparison.Ordinal);
        Assert.Equal(["a.wiring"], folder.Names);
    }

    [Theory]
    [InlineData("-o", "b.pdf", "b.pdf")]
    [InlineData("-o", "b.PDF", "b.PDF")]
    [InlineData("--format", "pdf", "a.pdf")]
    public void Draw_Pdf_IsWrittenWholeAndTheSameTwice(string option, string value, string written)
    {
        var file = folder.Put("a.wiring", Sample.Right);
        string[] args = ["draw", file, option, option == "-o" ? folder[value] : value];

        Assert.Equal(0, Ran.Of(args).Code);
        var first = File.ReadAllBytes(folder[written]);
        Ran.Of(args);

        Assert.StartsWith("%PDF-", Encoding.Latin1.GetString(first), StringComparison.Ordinal);
        Assert.EndsWith("%%EOF", Encoding.Latin1.GetString(first).TrimEnd(), StringComparison.Ordinal);
        Assert.Equal(first, File.ReadAllBytes(folder[written]));
        Assert.Equal(2, folder.Names.Count());
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
        var file = folder.Put("a.svg", Sample.Right);

        var ran = Ran.Of("draw", file);

        Assert.Equal(2, ran.Code);
        Assert.Equal(Sample.Right, folder.Text("a.svg"));
    }

    [Fact]
    public void Draw_PictureAndMeasureToOnePlace_IsRefused() =>
        Assert.Equal(2, Ran.Of(new TestHost(Sample.Right), "draw", "-", "-o", "-", "--measure").Code);

    [Fact]
    public void Draw_InputThatIsNoText_Exits2()
    {
        var ran = Ran.Of(new TestHost(Encoding.Latin1.GetBytes("# 10 µF\n")), "draw", "-");

        Assert.Equal(2, ran.Code);
        Assert.Equal(
            "wiretext: cannot read '-': it is not text in UTF-8: line 1 has the byte B5, which is 'µ' in Latin-1; save it as UTF-8\n",
            ran.Error
        );
    }
}
