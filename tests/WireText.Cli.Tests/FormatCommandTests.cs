using System.Runtime.Versioning;
using System.Text;

namespace WireText.Cli.Tests;

public sealed class FormatCommandTests : IDisposable
{
    private const string Ragged =
        "jack out mono   # the only one\npickup neck single-coil\nwire neck.hot to out.tip white\n";

    private static readonly byte[] Mark = [0xEF, 0xBB, 0xBF];

    private readonly TestFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Format_RaggedFile_IsRewrittenOnceAndKeepsItsWords()
    {
        var file = folder.Put("a.wiring", Ragged);

        var first = Ran.Of("format", file);
        var formatted = folder.Text("a.wiring");
        var again = Ran.Of("format", file, "--check");

        Assert.Equal((0, 0), (first.Code, again.Code));
        Assert.NotEqual(Ragged, formatted);
        Assert.Equal(Words(Ragged), Words(formatted));
        Assert.Equal(["a.wiring"], folder.Names);
    }

    [Fact]
    public void Format_CheckOfARaggedFile_NamesItAndExits1()
    {
        var file = folder.Put("a.wiring", Ragged);

        var ran = Ran.Of("format", "--check", file);

        Assert.Equal(1, ran.Code);
        Assert.Equal($"{file} would change\n", ran.Output);
        Assert.Equal(Ragged, folder.Text("a.wiring"));
    }

    [Fact]
    public void Format_StandardInput_GoesToStandardOutput()
    {
        var ran = Ran.Of(new TestHost(Ragged), "format", "-");

        Assert.Equal(0, ran.Code);
        Assert.Equal(Words(Ragged), Words(ran.Output));
    }

    [Fact]
    public void Format_ByteOrderMarkAndLineEnds_Stay()
    {
        var ragged = Ragged.ReplaceLineEndings("\r\n");
        Ran.Of("format", folder.Put("plain.wiring", Ragged));
        byte[] expected = [.. Mark, .. Encoding.UTF8.GetBytes(folder.Text("plain.wiring").ReplaceLineEndings("\r\n"))];

        var file = folder.Put("a.wiring", [.. Mark, .. Encoding.UTF8.GetBytes(ragged)]);
        var input = Ran.Of(new TestHost(File.ReadAllBytes(file)), "format", "-");
        var ran = Ran.Of("format", file);

        Assert.Equal(0, ran.Code);
        Assert.Equal(expected, File.ReadAllBytes(file));
        Assert.Equal(expected, input.OutputBytes);
        Assert.Equal(0, Ran.Of("format", "--check", file).Code);
    }

    [Fact]
    public void Format_LineThatCannotBeRead_StaysAndExits1()
    {
        var file = folder.Put("a.wiring", Ragged + "wire   neck.ground   too   out.sleeve\n");

        var ran = Ran.Of("format", file);

        Assert.Equal(1, ran.Code);
        Assert.Contains("a.wiring:4:", ran.Error, StringComparison.Ordinal);
        Assert.EndsWith("wire   neck.ground   too   out.sleeve\n", folder.Text("a.wiring"), StringComparison.Ordinal);
    }

    [Fact]
    public void Format_MissingFileAmongOthers_StillFormatsThem()
    {
        var file = folder.Put("a.wiring", Ragged);

        var ran = Ran.Of("format", folder["none.wiring"], file);

        Assert.Equal(2, ran.Code);
        Assert.NotEqual(Ragged, folder.Text("a.wiring"));
    }

    [Fact]
    [UnsupportedOSPlatform("windows")]
    public void Format_ReadOnlyFile_Exits2AndStays()
    {
        var file = folder.Put("a.wiring", Ragged);
        File.SetUnixFileMode(file, UnixFileMode.UserRead);

        var ran = Ran.Of("format", file);

        Assert.Equal(2, ran.Code);
        Assert.Contains("cannot write", ran.Error, StringComparison.Ordinal);
        Assert.Equal(Ragged, folder.Text("a.wiring"));
    }

    private static string[] Words(string text) => text.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries);
}
