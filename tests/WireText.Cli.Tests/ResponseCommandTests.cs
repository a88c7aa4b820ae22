using System.Buffers.Binary;
using System.Globalization;
using System.Text.Json;
using System.Xml.Linq;
using WireText.Testing;

namespace WireText.Cli.Tests;

public sealed class ResponseCommandTests : IDisposable
{
    private static readonly string Example = Repository.PathOf("examples", "2-two-pickups-mute.wiring");

    private readonly TestFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Response_NoOption_IsATableOfTheStateAtRest()
    {
        var ran = Ran.Of(new TestHost(Sample.Right), "response", "-");

        Assert.Equal((0, ""), (ran.Code, ran.Error));
        var rows = ran.Output.TrimEnd('\n').Split('\n');
        Assert.Equal(401, rows.Length);
        Assert.Equal("Hz,rest", rows[0]);
        Assert.Equal("20", rows[1].Split(',')[0]);
        Assert.Equal("20000", rows[^1].Split(',')[0]);

        // At 20 Hz the coil is 6 kΩ and the load 1 MΩ: 20·log10(1/(1 + 0.006)) = -0.052 dB.
        Assert.Equal(-0.052, double.Parse(rows[1].Split(',')[1], CultureInfo.InvariantCulture), 0.001);
    }

    [Fact]
    public void Response_SweepAndStatesAndChanges_AreAColumnEach()
    {
        var ran = Ran.Of(
            "response",
            Example,
            "--at",
            "sel=neck",
            "--at",
            "sel=both",
            "--sweep",
            "tone=0..10:2",
            "--what-if",
            "dark=22n"
        );

        Assert.Equal(0, ran.Code);
        Assert.Equal(
            "Hz,sel=neck tone=0 as wired,sel=neck tone=0 dark=22n,sel=neck tone=10 as wired,sel=neck tone=10 dark=22n,"
                + "sel=both tone=0 as wired,sel=both tone=0 dark=22n,sel=both tone=10 as wired,sel=both tone=10 dark=22n",
            ran.Output.Split('\n')[0]
        );
    }

    [Fact]
    public void Response_SilentState_IsAnEmptyColumnAndTold()
    {
        var ran = Ran.Of("response", Example, "--at", "rest", "--at", "mute=down");

        Assert.Equal(0, ran.Code);
        Every.Item(
            ran.Output.TrimEnd('\n').Split('\n').Skip(1),
            row => Assert.EndsWith(",", row, StringComparison.Ordinal)
        );
        Assert.EndsWith(
            "wiretext: mute=down: silence: tip and sleeve are joined\n",
            ran.Error,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Response_Json_HasEveryCurveWithItsStateAndPeak()
    {
        var ran = Ran.Of("response", Example, "--at", "sel=neck,vol=7.5", "--at", "mute=down", "--format", "json");

        var json = JsonDocument.Parse(ran.Output).RootElement;
        Assert.Equal(1, json.GetProperty("version").GetInt32());
        Assert.Equal(400, json.GetProperty("hertz").GetArrayLength());
        Assert.Equal(470e-12, json.GetProperty("load").GetProperty("cableFarads").GetDouble());
        var neck = json.GetProperty("curves")[0];
        Assert.Equal("sel=neck vol=7.5", neck.GetProperty("label").GetString());
        Assert.Equal("neck", neck.GetProperty("positions").GetProperty("sel").GetString());
        Assert.Equal(7.5, neck.GetProperty("dials").GetProperty("vol").GetDouble());
        Assert.Equal("sound", neck.GetProperty("outcome").GetString());
        Assert.Equal(400, neck.GetProperty("decibels").GetArrayLength());
        var mute = json.GetProperty("curves")[1];
        Assert.Equal("silence", mute.GetProperty("outcome").GetString());
        Assert.Equal(JsonValueKind.Null, mute.GetProperty("decibels").ValueKind);
        Assert.Equal(JsonValueKind.Null, mute.GetProperty("peak").ValueKind);
    }

    [Fact]
    public void Response_TargetsByTheirEnding_AreCharts()
    {
        var svg = Ran.Of("response", Example, "--sweep", "sel", "-o", folder["a.svg"], "--theme", "dark");
        var png = Ran.Of("response", Example, "--sweep", "sel", "-o", folder["a.png"], "--width", "640");

        Assert.Equal((0, 0), (svg.Code, png.Code));
        var root = XDocument.Parse(folder.Text("a.svg")).Root!;
        Assert.Equal("svg", root.Name.LocalName);
        Assert.Contains("sel=both: neck parallel bridge", root.Value, StringComparison.Ordinal);
        Assert.Equal(640, BinaryPrimitives.ReadInt32BigEndian(File.ReadAllBytes(folder["a.png"]).AsSpan(16)));
    }

    [Theory]
    [InlineData("--at", "sel=nekc", "'sel' has no position 'nekc'; did you mean 'neck'?")]
    [InlineData("--sweep", "tnoe", "no control is called 'tnoe'; did you mean 'tone'?")]
    [InlineData("--what-if", "drak=22n", "nothing called 'drak' has a value; did you mean 'dark'?")]
    [InlineData("--width", "640", "--width is for a PNG; add --format png or name a .png with -o")]
    [InlineData("--dpi", "300", "--dpi is for a PNG; add --format png or name a .png with -o")]
    [InlineData("-o", "a.gif", "'a.gif' ends in none of .csv, .json, .svg, .png and .pdf; say which with --format")]
    public void Response_WrongOption_Exits2AndOffersTheNearest(string option, string value, string message)
    {
        var ran = Ran.Of("response", Example, option, value);

        Assert.Equal((2, ""), (ran.Code, ran.Output));
        Assert.Contains(message, ran.Error, StringComparison.Ordinal);
    }

    /// <summary>What makes sense for both pictures is asked for in the same words, and gives the same of both.</summary>
    [Theory]
    [InlineData("draw")]
    [InlineData("response")]
    public void PictureOptions_OfBothCommands_AreAlike(string command)
    {
        var file = folder.Put("a.wiring", Sample.Right);

        var wide = Ran.Of(command, file, "-o", folder["wide.png"], "--width", "640", "--theme", "print");
        Ran.Of(command, file, "-o", folder["rough.png"], "--dpi", "50");
        Ran.Of(command, file, "-o", folder["fine.png"], "--dpi", "100");
        Ran.Of(command, file, "-o", folder["clear.png"], "--width", "640", "--theme", "print", "--transparent");
        Ran.Of(command, file, "-o", folder["a.pdf"]);
        var both = Ran.Of(command, file, "-o", folder["b.png"], "--width", "640", "--dpi", "100");

        Assert.Equal(0, wide.Code);
        Assert.EndsWith($"{folder["wide.png"]} is written\n", wide.Error, StringComparison.Ordinal);
        Assert.Equal(640, WidthOf("wide.png"));
        Assert.InRange(WidthOf("fine.png") - (2 * WidthOf("rough.png")), -2, 2);
        Assert.NotEqual(File.ReadAllBytes(folder["wide.png"]), File.ReadAllBytes(folder["clear.png"]));
        Assert.Equal("%PDF"u8.ToArray(), File.ReadAllBytes(folder["a.pdf"])[..4]);
        Assert.Equal(2, both.Code);
        Assert.Contains("--width and --dpi both say how large a PNG is", both.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Response_MoreCurvesThanCanBeToldApart_Exits2()
    {
        var ran = Ran.Of("response", Example, "--sweep", "sel", "--sweep", "tone=0..10:24");

        Assert.Equal((2, ""), (ran.Code, ran.Output));
        Assert.Contains("more than 24 curves", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Response_OnATerminal_IsASketch_AndElsewhereNumbers()
    {
        var file = folder.Put("a.wiring", Sample.Right);

        var shown = Ran.Of(new TestHost { IsTerminal = true }, "response", file);
        var asked = Ran.Of(new TestHost { IsTerminal = true }, "response", file, "--format", "csv");
        var piped = Ran.Of("response", file);

        Assert.InRange(shown.Output.Split('\n').Length, 10, 24);
        Assert.Contains("peak", shown.Output, StringComparison.Ordinal);
        Assert.Equal(piped.Output, asked.Output);
        Assert.Equal(402, piped.Output.Split('\n').Length);
    }

    [Fact]
    public void Response_WiringWithAMistake_IsComputedAsItIsWiredAndExits1()
    {
        var ran = Ran.Of(new TestHost(Sample.Wrong), "response", "-");

        Assert.Equal(1, ran.Code);
        Assert.StartsWith("Hz,rest\n", ran.Output, StringComparison.Ordinal);
    }

    /// <summary>In pixels, from the header of a PNG.</summary>
    private int WidthOf(string png) => BinaryPrimitives.ReadInt32BigEndian(File.ReadAllBytes(folder[png]).AsSpan(16));
}
