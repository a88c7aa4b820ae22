using System.Text;
using System.Text.Json.Nodes;

namespace WireText.Cli.Tests;

/// <summary><c>check --fix</c>: what it writes, and what it says.</summary>
public sealed class FixTests : IDisposable
{
    private const string Floating = Sample.Right + "metal   saddle\n";

    private const string Mended = """
        pickup  neck  single-coil  dcr=6k l=2.4H c=100p
        jack    out   mono
        wire    neck.hot     to out.tip     white
        wire    neck.ground  to out.sleeve  black
        wire saddle to out.sleeve black
        metal   saddle

        """;

    private readonly TestFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Fix_WhatIsCertain_IsWrittenAndCounted()
    {
        var file = folder.Put("a.wiring", Floating);
        var wrong = folder.Put("b.wiring", Sample.Wrong);

        var ran = Ran.Of("check", "--fix", file, wrong);

        Assert.Equal(0, ran.Code);
        Assert.Equal(Mended, folder.Text("a.wiring"));
        Assert.Equal(Sample.Wrong.Replace("blakc", "black", StringComparison.Ordinal), folder.Text("b.wiring"));
        Assert.EndsWith("nothing found in 2 files\n2 mended\n", ran.Output, StringComparison.Ordinal);
        Assert.Equal(["a.wiring", "b.wiring"], folder.Names);
    }

    [Fact]
    public void Fix_AgainAndWithoutIt_ChangesNothing()
    {
        var file = folder.Put("a.wiring", Floating);

        Ran.Of("check", file);
        Assert.Equal(Floating, folder.Text("a.wiring"));
        Ran.Of("check", "--fix", file);
        var again = Ran.Of("check", "--fix", file);

        Assert.Equal(Mended, folder.Text("a.wiring"));
        Assert.EndsWith("0 mended\n", again.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Fix_WhatIsLeft_IsShownAndDecidesTheExitCode()
    {
        var file = folder.Put("a.wiring", Floating + "wire out.tip to out.sleeve red\n");

        var ran = Ran.Of("check", "--fix", file);

        Assert.Equal(1, ran.Code);
        Assert.Contains("[shorted-output]", ran.Output, StringComparison.Ordinal);
    }

    /// <summary>Byte order mark, line ends and blanks at line ends are the author's.</summary>
    [Fact]
    public void Fix_FileWithAMarkAndOtherLineEnds_KeepsThem()
    {
        byte[] mark = [0xEF, 0xBB, 0xBF];
        var text = Floating
            .Replace("mono\n", "mono  \t\n", StringComparison.Ordinal)
            .Replace("\n", "\r\n", StringComparison.Ordinal);
        var mended = Mended
            .Replace("mono\n", "mono  \t\n", StringComparison.Ordinal)
            .Replace("\n", "\r\n", StringComparison.Ordinal);
        var file = folder.Put("a.wiring", [.. mark, .. Encoding.UTF8.GetBytes(text)]);

        Ran.Of("check", "--fix", file);

        Assert.Equal([.. mark, .. Encoding.UTF8.GetBytes(mended)], File.ReadAllBytes(file));
    }

    [Fact]
    public void Fix_InAnotherFormat_WritesThatFormatAlone()
    {
        var ran = Ran.Of("check", "--fix", "--format", "json", folder.Put("a.wiring", Floating));

        Assert.Empty(JsonNode.Parse(ran.Output)!["files"]![0]!["findings"]!.AsArray());
        Assert.Equal("1 mended\n", ran.Error);
    }

    [Fact]
    public void Fix_StandardInput_Exits2()
    {
        var ran = Ran.Of(new TestHost(Floating), "check", "--fix", "-");

        Assert.Equal(2, ran.Code);
        Assert.Contains("standard input cannot be mended", ran.Error, StringComparison.Ordinal);
    }

    /// <summary>A file that others include is not written through one of them.</summary>
    [Fact]
    public void Fix_MistakeInAnIncludedFile_IsLeft()
    {
        const string part = "define resistor bench-1 \"x\"\n    body boxx 8,3\n";
        folder.Put("part.wiring", part);
        var file = folder.Put("a.wiring", "include \"part.wiring\"\n" + Sample.Right);

        Ran.Of("check", "--fix", file);

        Assert.Equal(part, folder.Text("part.wiring"));
    }

    [Fact]
    public void Fix_FileThatMayNotBeWritten_Exits2AndStays()
    {
        var file = folder.Put("a.wiring", Floating);
        File.SetAttributes(file, FileAttributes.ReadOnly);

        var ran = Ran.Of("check", "--fix", file);

        Assert.Equal(2, ran.Code);
        Assert.StartsWith($"wiretext: cannot write '{file}'", ran.Error, StringComparison.Ordinal);
        Assert.Equal(Floating, folder.Text("a.wiring"));
        File.SetAttributes(file, FileAttributes.Normal);
    }
}
