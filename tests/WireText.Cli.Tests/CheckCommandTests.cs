using System.Text.Json;
using WireText.Testing;

namespace WireText.Cli.Tests;

public sealed class CheckCommandTests : IDisposable
{
    private readonly Bench bench = new();

    public void Dispose() => bench.Dispose();

    [Theory]
    [InlineData(Bench.Right, 0, 0)]
    [InlineData(Bench.Doubtful, 0, 1)]
    [InlineData(Bench.Wrong, 1, 1)]
    public void Check_ByWhatIsFound_ExitsWith(string wiring, int code, int strictCode)
    {
        var file = bench.Put("a.wiring", wiring);

        Assert.Equal(code, Bench.Run("check", file).Code);
        Assert.Equal(strictCode, Bench.Run("check", file, "--strict").Code);
    }

    [Fact]
    public void Check_Error_ShowsPlaceLineCaretAndSummary()
    {
        var file = bench.Put("a.wiring", Bench.Wrong);

        var ran = Bench.Run("check", file);

        var lines = ran.Output.Split('\n');
        Assert.StartsWith($"{file}:4:37: error: ", lines[0], StringComparison.Ordinal);
        Assert.Equal("  4 | wire    neck.ground  to out.sleeve  blakc", lines[1]);
        Assert.Equal("    | " + new string(' ', 36) + "^^^^^", lines[2]);
        Assert.Equal("1 error", lines[^2]);
        Assert.Empty(ran.Error);
    }

    [Fact]
    public void Check_AFileOfAnotherKind_ShowsAFewOfItsErrorsAndCountsTheRest()
    {
        var picture = string.Concat(Enumerable.Repeat("<path d=\"M0 0 L1 1\"/>\n", 500));
        var file = bench.Put("picture.svg", picture);

        var lines = Bench.Run("check", file).Output.Split('\n');

        Assert.Equal(
            12,
            lines.Count(line => line.StartsWith($"{file}:", StringComparison.Ordinal) && line.Contains("error:"))
        );
        Assert.Contains($"{file}: 488 more [unknown-statement]", lines);
        Assert.Equal("500 errors", lines[^2]);
        Assert.Equal(500, Bench.Run("check", file, "--format", "github").Output.Split("::error").Length - 1);
    }

    [Theory]
    [InlineData(Bench.Right, true)]
    [InlineData(Bench.Right + "\nexpect rest: neck\n", false)]
    [InlineData(Bench.Wrong, false)]
    public void Check_CircuitThatNothingHoldsToWhatItDoes_IsOfferedLines(string wiring, bool isOffered)
    {
        var file = bench.Put("a.wiring", wiring);

        var ran = Bench.Run("check", file);

        Assert.Equal(isOffered, ran.Output.Contains($"'wiretext positions {file} --expect'", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("text")]
    [InlineData("json")]
    public void Check_Notes_TellWhatDoesNoHarmAndNeverWeigh(string format)
    {
        const string twisted = """
            pickup neck single-coil
            jack   out  mono
            metal  saddle
            cable  neck.hot to out.tip white and neck.ground to out.sleeve black twisted
            wire   saddle to out.sleeve black
            """;
        var file = bench.Put("a.wiring", twisted);

        var unasked = Bench.Run("check", file, "--format", format);
        var asked = Bench.Run("check", file, "--format", format, "--notes", "--strict");

        Assert.DoesNotContain("twisted-pair", unasked.Output, StringComparison.Ordinal);
        Assert.Contains("twisted-pair", asked.Output, StringComparison.Ordinal);
        Assert.Equal((0, 0), (unasked.Code, asked.Code));
    }

    [Fact]
    public void Check_SeveralFiles_ComeInTheOrderGivenWithOneSummary()
    {
        var b = bench.Put("b.wiring", Bench.Wrong);
        var a = bench.Put("a.wiring", Bench.Doubtful);

        var ran = Bench.Run("check", b, a);

        Assert.True(ran.Output.IndexOf(b, StringComparison.Ordinal) < ran.Output.IndexOf(a, StringComparison.Ordinal));
        Assert.EndsWith("1 error and 1 warning in 2 files\n", ran.Output, StringComparison.Ordinal);
        Assert.Equal(1, ran.Code);
    }

    [Fact]
    public void Check_StandardInput_IsCalledMinus()
    {
        var ran = Bench.Run(new TestHost(Bench.Wrong), "check", "-");

        Assert.Equal(1, ran.Code);
        Assert.StartsWith("-:4:37: error: ", ran.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_Json_HoldsFilesInOrderWithTheirFindings()
    {
        var right = bench.Put("right.wiring", Bench.Right);
        var wrong = bench.Put("wrong.wiring", Bench.Wrong);

        var ran = Bench.Run("check", "--format", "json", wrong, right);

        using var document = JsonDocument.Parse(ran.Output);
        var files = document.RootElement.GetProperty("files");
        Assert.Equal(2, files.GetArrayLength());
        Assert.Equal(wrong, files[0].GetProperty("path").GetString());
        var finding = Assert.Single(files[0].GetProperty("findings").EnumerateArray());
        Assert.Equal("error", finding.GetProperty("severity").GetString());
        Assert.Equal(4, finding.GetProperty("line").GetInt32());
        Assert.Empty(files[1].GetProperty("findings").EnumerateArray());
        Assert.Equal(1, ran.Code);
    }

    [Fact]
    public void Check_MissingFileAmongOthers_StillChecksThem()
    {
        var wrong = bench.Put("wrong.wiring", Bench.Wrong);

        var ran = Bench.Run("check", bench["none.wiring"], wrong);

        Assert.Equal(2, ran.Code);
        Assert.Contains("there is no such file", ran.Error, StringComparison.Ordinal);
        Assert.EndsWith("1 error\n", ran.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(true, null, true)]
    [InlineData(false, null, false)]
    [InlineData(true, "1", false)]
    [InlineData(true, "", true)] // no-color.org: when present and not an empty string
    public void Check_Colour_OnlyOnATerminalAndWhereWanted(bool isTerminal, string? noColour, bool isColoured)
    {
        var file = bench.Put("a.wiring", Bench.Wrong);
        var host = new TestHost { IsTerminal = isTerminal };
        if (noColour is not null)
        {
            host.With("NO_COLOR", noColour);
        }

        Assert.Equal(isColoured, Bench.Run(host, "check", file).Output.Contains('\u001b', StringComparison.Ordinal));
    }

    [Fact]
    public void Check_ByteOrderMark_IsNoCharacterOfTheLine()
    {
        var file = bench.Put("a.wiring", [0xEF, 0xBB, 0xBF, .. "jock out mono\n"u8]);

        var ran = Bench.Run("check", file);

        Assert.StartsWith($"{file}:1:1: error: ", ran.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_OtherCulture_WritesTheSame()
    {
        var file = bench.Put("a.wiring", Bench.Doubtful.Replace("250k", "250", StringComparison.Ordinal));
        var expected = Bench.Run("check", file).Output;

        Assert.Equal(expected, OtherCulture.Run(() => Bench.Run("check", file).Output));
    }

    [Fact]
    public void Check_Include_ReadsBelowItsOwnFolderAndFromPartsFolders()
    {
        const string bench1 =
            "define resistor bench-1 \"found in a drawer\"\n    body     box 8,3\n    leads    a -6,0  b 6,0\n    resistor a b 10k\n";
        bench.Put("shop/own.wiring", bench1);
        var file = bench.Put("guitars/a.wiring", "include \"own.wiring\"\n" + Bench.Right);

        var without = Bench.Run("check", file);
        var with = Bench.Run("check", file, "--parts", bench["shop"]);

        Assert.Equal(1, without.Code);
        Assert.Contains("[cannot-include]", without.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("[cannot-include]", with.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("../secret.wiring")]
    [InlineData("sub/../../secret.wiring")]
    public void Check_IncludeOutsideItsFolder_IsRefused(string path)
    {
        bench.Put("secret.wiring", "define resistor bench-1 \"x\"\n");
        var file = bench.Put("guitars/a.wiring", $"include \"{path}\"\n" + Bench.Right);

        var ran = Bench.Run("check", file);

        Assert.Equal(1, ran.Code);
        Assert.Contains("[cannot-include]", ran.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_LinkThatLeavesTheFolder_IsRefused()
    {
        var secret = bench.Put("secret.wiring", "define resistor bench-1 \"x\"\n");
        var file = bench.Put("guitars/a.wiring", "include \"link.wiring\"\n" + Bench.Right);
        File.CreateSymbolicLink(bench["guitars/link.wiring"], secret);

        var ran = Bench.Run("check", file);

        Assert.Equal(1, ran.Code);
        Assert.Contains("[cannot-include]", ran.Output, StringComparison.Ordinal);
    }
}
