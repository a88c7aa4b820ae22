using System.Text.Json;
using WireText.Testing;

namespace WireText.Cli.Tests;

public sealed class CheckCommandTests : IDisposable
{
    private readonly TestFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Theory]
    [InlineData(Sample.Right, 0, 0)]
    [InlineData(Sample.Doubtful, 0, 1)]
    [InlineData(Sample.Wrong, 1, 1)]
    public void Check_ByWhatIsFound_ExitsWith(string wiring, int code, int strictCode)
    {
        var file = folder.Put("a.wiring", wiring);

        Assert.Equal(code, Ran.Of("check", file).Code);
        Assert.Equal(strictCode, Ran.Of("check", file, "--strict").Code);
    }

    [Fact]
    public void Check_Error_ShowsPlaceLineCaretAndSummary()
    {
        var file = folder.Put("a.wiring", Sample.Wrong);

        var ran = Ran.Of("check", file);

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
        var file = folder.Put("picture.svg", picture);

        var lines = Ran.Of("check", file).Output.Split('\n');

        Assert.Equal(
            12,
            lines.Count(line => line.StartsWith($"{file}:", StringComparison.Ordinal) && line.Contains("error:"))
        );
        Assert.Contains($"{file}: 488 more [unknown-statement]", lines);
        Assert.Equal("500 errors", lines[^2]);
        Assert.Equal(500, Ran.Of("check", file, "--format", "github").Output.Split("::error").Length - 1);
    }

    [Theory]
    [InlineData(Sample.Right, true)]
    [InlineData(Sample.Right + "\nexpect rest: neck\n", false)]
    [InlineData(Sample.Wrong, false)]
    public void Check_CircuitThatNothingHoldsToWhatItDoes_IsOfferedLines(string wiring, bool isOffered)
    {
        var file = folder.Put("a.wiring", wiring);

        var ran = Ran.Of("check", file);

        Assert.Equal(isOffered, ran.Output.Contains($"'wiretext positions {file} --expect'", StringComparison.Ordinal));
    }

    /// <summary>What is as it should be is told once, behind the count, and by no other command.</summary>
    [Theory]
    [InlineData(Sample.Right, "nothing found")]
    [InlineData(Sample.Doubtful, "1 warning")]
    public void WhatIsRight_IsToldByCheckAlone_BehindTheCount(string wiring, string count)
    {
        var mute = $"{wiring}\nbutton mute momentary\nwire mute.1 to out.tip white\nwire mute.2 to out.sleeve black\n";
        var file = folder.Put("a.wiring", mute);

        var lines = Ran.Of("check", file).Output.TrimEnd('\n').Split('\n');

        Assert.Equal(count, lines[^2]);
        Assert.StartsWith($"{file}:", lines[^1], StringComparison.Ordinal);
        Assert.EndsWith(
            ": right: 'mute' mutes as it should: it shorts the signal at the jack  [mute]",
            lines[^1],
            StringComparison.Ordinal
        );
        Assert.Single(lines, line => line.Contains("[mute]", StringComparison.Ordinal));
        foreach (var command in new[] { "draw", "positions", "arrange", "response" })
        {
            var ran = Ran.Of(command, file);
            Assert.DoesNotContain("right:", ran.Output + ran.Error, StringComparison.Ordinal);
            Assert.DoesNotContain("as it should", ran.Output + ran.Error, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("text")]
    [InlineData("json")]
    public void Check_Harmless_TellWhatDoesNoHarmAndNeverWeigh(string format)
    {
        const string twisted = """
            pickup neck single-coil
            jack   out  mono
            metal  saddle
            cable  neck.hot to out.tip white and neck.ground to out.sleeve black twisted
            wire   saddle to out.sleeve black
            """;
        var file = folder.Put("a.wiring", twisted);

        var unasked = Ran.Of("check", file, "--format", format);
        var asked = Ran.Of("check", file, "--format", format, "--harmless", "--strict");

        Assert.DoesNotContain("twisted-pair", unasked.Output, StringComparison.Ordinal);
        Assert.Contains("twisted-pair", asked.Output, StringComparison.Ordinal);
        Assert.Equal((0, 0), (unasked.Code, asked.Code));
    }

    [Fact]
    public void Check_SeveralFiles_ComeInTheOrderGivenWithOneSummary()
    {
        var b = folder.Put("b.wiring", Sample.Wrong);
        var a = folder.Put("a.wiring", Sample.Doubtful);

        var ran = Ran.Of("check", b, a);

        Assert.True(ran.Output.IndexOf(b, StringComparison.Ordinal) < ran.Output.IndexOf(a, StringComparison.Ordinal));
        Assert.EndsWith("1 error and 1 warning in 2 files\n", ran.Output, StringComparison.Ordinal);
        Assert.Equal(1, ran.Code);
    }

    /// <summary>A dead centre holds back what is said of the volume, and the report says that it does.</summary>
    [Fact]
    public void Check_WhatWaitsForAMend_IsCountedAndNamed()
    {
        var file = folder.Put("dead.wiring", Sample.Waiting);

        var ran = Ran.Of("check", file);

        Assert.Contains(
            $"{file}: 1 more check waits until this is mended: volume-not-silent\n",
            ran.Output,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Check_StandardInput_IsCalledMinus()
    {
        var ran = Ran.Of(new TestHost(Sample.Wrong), "check", "-");

        Assert.Equal(1, ran.Code);
        Assert.StartsWith("-:4:37: error: ", ran.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_Json_HoldsFilesInOrderWithTheirFindings()
    {
        var right = folder.Put("right.wiring", Sample.Right);
        var wrong = folder.Put("wrong.wiring", Sample.Wrong);

        var ran = Ran.Of("check", "--format", "json", wrong, right);

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
        var wrong = folder.Put("wrong.wiring", Sample.Wrong);

        var ran = Ran.Of("check", folder["none.wiring"], wrong);

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
        var file = folder.Put("a.wiring", Sample.Wrong);
        var host = new TestHost { IsTerminal = isTerminal };
        if (noColour is not null)
        {
            host.With("NO_COLOR", noColour);
        }

        Assert.Equal(isColoured, Ran.Of(host, "check", file).Output.Contains('\u001b', StringComparison.Ordinal));
    }

    [SkippableTheory]
    [InlineData("dumb")]
    [InlineData("")]
    public void Check_TerminalThatTakesNoCodes_GetsNone(string terminal)
    {
        Skip.If(OperatingSystem.IsWindows(), "its console takes codes whatever it is called");
        var file = folder.Put("a.wiring", Sample.Wrong);
        var other = folder.Put("b.wiring", Sample.Wrong);
        var host = new TestHost { IsTerminal = true, IsErrorTerminal = true }.With("TERM", terminal);

        var ran = Ran.Of(host, "check", file, other);

        Assert.DoesNotContain('\u001b', ran.Output + ran.Error);
        Assert.DoesNotContain('\r', ran.Output + ran.Error);
    }

    [Fact]
    public void Check_ByteOrderMark_IsNoCharacterOfTheLine()
    {
        var file = folder.Put("a.wiring", [0xEF, 0xBB, 0xBF, .. "jock out mono\n"u8]);

        var ran = Ran.Of("check", file);

        Assert.StartsWith($"{file}:1:1: error: ", ran.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_OtherCulture_WritesTheSame()
    {
        var file = folder.Put("a.wiring", Sample.Doubtful.Replace("250k", "250", StringComparison.Ordinal));
        var expected = Ran.Of("check", file).Output;

        Assert.Equal(expected, OtherCulture.Run(() => Ran.Of("check", file).Output));
    }

    [Fact]
    public void Check_Include_ReadsBelowItsOwnFolderAndFromPartsFolders()
    {
        const string bench1 =
            "define resistor bench-1 \"found in a drawer\"\n    body     box 8,3\n    leads    a -6,0  b 6,0\n    resistor a b 10k\n";
        folder.Put("shop/own.wiring", bench1);
        var file = folder.Put("guitars/a.wiring", "include \"own.wiring\"\n" + Sample.Right);

        var without = Ran.Of("check", file);
        var with = Ran.Of("check", file, "--parts", folder["shop"]);

        Assert.Equal(1, without.Code);
        Assert.Contains("[cannot-include]", without.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("[cannot-include]", with.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("../secret.wiring")]
    [InlineData("sub/../../secret.wiring")]
    public void Check_IncludeOutsideItsFolder_IsRefused(string path)
    {
        folder.Put("secret.wiring", "define resistor bench-1 \"x\"\n");
        var file = folder.Put("guitars/a.wiring", $"include \"{path}\"\n" + Sample.Right);

        var ran = Ran.Of("check", file);

        Assert.Equal(1, ran.Code);
        Assert.Contains("[cannot-include]", ran.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_LinkThatLeavesTheFolder_IsRefused()
    {
        var secret = folder.Put("secret.wiring", "define resistor bench-1 \"x\"\n");
        var file = folder.Put("guitars/a.wiring", "include \"link.wiring\"\n" + Sample.Right);
        File.CreateSymbolicLink(folder["guitars/link.wiring"], secret);

        var ran = Ran.Of("check", file);

        Assert.Equal(1, ran.Code);
        Assert.Contains("[cannot-include]", ran.Output, StringComparison.Ordinal);
    }
}
