using System.Text.RegularExpressions;
using WireText.Testing;

namespace WireText.Cli.Tests;

/// <summary><c>wiretext.toml</c>: which one holds, what it changes, and what is said of mistakes in it.</summary>
public sealed partial class SettingsTests : IDisposable
{
    private const string Floating = Sample.Right + "metal   saddle\n";

    private readonly TestFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Theory]
    [InlineData("", 0, "warning")]
    [InlineData("[checks]\n", 0, "warning")]
    [InlineData("[checks]\nfloating-ground = \"error\"\n", 1, "error")]
    [InlineData("[checks]\n\"floating-ground\" = 'note' # quoted\n", 0, "note")]
    [InlineData("checks.floating-ground = \"error\"\n", 1, "error")]
    [InlineData("checks = { floating-ground = \"error\", part-unused = \"off\" }\n", 1, "error")]
    [InlineData("[checks]\r\npart-unused = \"error\"\r\n", 0, "warning")]
    public void Weight_OfACheck_IsThatOfItsFindings(string toml, int code, string word)
    {
        folder.Put("wiretext.toml", toml);

        var ran = Run(folder.Put("a.wiring", Floating));

        Assert.Equal(code, ran.Code);
        Assert.StartsWith($"a.wiring:5:9: {word}: ", Relative(ran.Output), StringComparison.Ordinal);
        Assert.Empty(ran.Error);
    }

    [Theory]
    [InlineData("[faults]\njoint = [1, 2.5]\ncoil-open = 3\n", "")]
    [InlineData("faults = { joint = 1 }\n", "")]
    [InlineData("[faults]\njiont = 1\n", "2:1: no fault is called 'jiont'; did you mean 'joint'?")]
    [InlineData("[faults]\njoint = -1\n", "2:9: write a number from 0 on, or two")]
    [InlineData("[faults]\njoint = [1, 2, 3]\n", "2:9: write a number from 0 on, or two")]
    [InlineData("[faults]\njoint = \"often\"\n", "2:9: write a number from 0 on, or two")]
    [InlineData("faults = 3\n", "1:1: a line in [faults] is the name of a fault")]
    public void Faults_OfTheShop_AreWeightsByName(string toml, string problem)
    {
        folder.Put("wiretext.toml", toml);

        var ran = Run(folder.Put("a.wiring", Sample.Right));

        Assert.Equal(problem.Length == 0 ? 0 : 2, ran.Code);
        Assert.Contains(problem, ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Off_LeavesTheFindingOutInEveryFormatAndTheUnusedAllowanceToo()
    {
        folder.Put("wiretext.toml", "[checks]\nfloating-ground = \"off\"\n");
        var plain = folder.Put("a.wiring", Floating);
        var allowed = folder.Put("b.wiring", Sample.Right + "allow floating-ground \"nothing of metal\"\n");

        foreach (var format in new[] { "text", "json", "sarif", "github" })
        {
            var ran = Ran.Of("check", "--strict", "--format", format, plain, allowed);

            Assert.Equal(0, ran.Code);
            Assert.DoesNotContain("floating-ground", ran.Output, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("", null, 595.276)]
    [InlineData("paper = \"letter\"\n[checks]\nheat = \"off\"\n", null, 612)]
    [InlineData("paper = \"200x300\"\n", null, 566.929)]
    [InlineData("paper = \"letter\"\n", "a4", 595.276)]
    public void Paper_OfTheShop_IsPrintedOnWhereNothingElseIsSaid(string toml, string? asked, double width)
    {
        folder.Put("wiretext.toml", toml);
        string[] option = asked is null ? [] : ["--paper", asked];

        Ran.Of(["positions", folder.Put("a.wiring", Sample.Right), "-o", folder["a.pdf"], .. option]);

        using var pdf = UglyToad.PdfPig.PdfDocument.Open(folder["a.pdf"]);
        Assert.Equal(width, pdf.GetPage(1).Width, 0.01);
    }

    [Fact]
    public void NearestFile_HoldsAlone()
    {
        folder.Put("wiretext.toml", "[checks]\nfloating-ground = \"error\"\npart-unused = \"error\"\n");
        folder.Put("old/wiretext.toml", "[checks]\npart-unused = \"note\"\n");
        var above = folder.Put("a.wiring", Floating);
        var below = folder.Put("new/deep/a.wiring", Floating);
        var own = folder.Put("old/a.wiring", Floating);

        Assert.Equal(1, Run(above).Code);
        Assert.Equal(1, Run(below).Code);
        Assert.Equal(0, Run(own).Code);
    }

    [Fact]
    public void StandardInput_HasTheSettingsOfTheFolderOfTheRun()
    {
        folder.Put("wiretext.toml", "[checks]\nfloating-ground = \"error\"\n");

        Assert.Equal(1, Ran.Of(new TestHost(Floating) { WorkingFolder = folder.Root }, "check", "-").Code);
    }

    [Fact]
    public void OtherCommands_ShowTheSameFindings()
    {
        var file = folder.Put("a.wiring", Floating);
        Assert.Contains("floating-ground", Ran.Of("positions", file).Error, StringComparison.Ordinal);
        Assert.Contains("floating-ground", Ran.Of("draw", file).Error, StringComparison.Ordinal);

        folder.Put("wiretext.toml", "[checks]\nfloating-ground = \"off\"\n");

        Assert.DoesNotContain("floating-ground", Ran.Of("positions", file).Error, StringComparison.Ordinal);
        Assert.DoesNotContain("floating-ground", Ran.Of("draw", file).Error, StringComparison.Ordinal);
        Assert.DoesNotContain("floating-ground", Ran.Of("draw", file).Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(
        "[checks]\nfloating-gruond = \"off\"",
        "2:1: no check is called 'floating-gruond'; did you mean 'floating-ground'?"
    )]
    [InlineData(
        "[checks]\n  Floating-Ground = \"off\"",
        "2:3: no check is called 'Floating-Ground'; did you mean 'floating-ground'?"
    )]
    [InlineData("[checks]\nqqqqqqqq = \"off\"", "2:1: no check is called 'qqqqqqqq'")]
    [InlineData("[checks]\nunknown-lug = \"off\"", "2:1: 'unknown-lug' cannot be set: the line itself must change")]
    [InlineData("[checks]\nheat = \"warn\"", "2:8: 'warn' is none of error, warning, note and off")]
    [InlineData(
        "[checks]\nheat = \"eror\"",
        "2:8: 'eror' is none of error, warning, note and off; did you mean 'error'?"
    )]
    [InlineData("[checks]\nheat = false", "2:8: write \"error\", \"warning\", \"note\" or \"off\", in quotes")]
    [InlineData("# shop\n[check]\nheat = \"off\"", "2:2: there are no settings called 'check'; did you mean 'checks'?")]
    [InlineData("checks = \"off\"", "1:1: a line in [checks] is the name of a check and one word")]
    [InlineData("[[checks]]\nheat = \"off\"", "1:3: a line in [checks] is the name of a check and one word")]
    [InlineData("[checks]\nheat = \"off\"\nheat = \"note\"", "3:1: ")]
    [InlineData("paper = 4", "1:9: write the paper in quotes: paper = \"letter\"")]
    [InlineData(
        "paper = \"foolscap\"",
        "1:9: paper is a4, letter, a3, tabloid, or its width and height in millimetres"
    )]
    [InlineData("papr = \"a4\"", "1:1: there are no settings called 'papr'; did you mean 'paper'?")]
    [InlineData("[checks]\nheat \"off\"", "2:6: ")]
    [InlineData("[checks\nheat = \"off\"", "1:8: ")]
    public void Mistake_InTheFile_IsToldByLineAndColumn(string toml, string problem)
    {
        folder.Put("wiretext.toml", toml);

        var ran = Run(folder.Put("a.wiring", Floating));

        Assert.Equal(2, ran.Code);
        Assert.Empty(ran.Output);
        Assert.StartsWith($"wiretext: wiretext.toml:{problem}", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Mistakes_InTheFile_AreAllToldAndOnceForManyFiles()
    {
        folder.Put("shop/wiretext.toml", "[checks]\nheta = \"off\"\nfloating-ground = \"of\"\n");
        var files = Enumerable.Range(0, 3).Select(i => folder.Put($"shop/{i}/a.wiring", Floating)).ToArray();
        var fine = folder.Put("a.wiring", Sample.Wrong);

        var ran = Ran.Of(new TestHost { WorkingFolder = folder.Root }, ["check", .. files, fine]);

        Assert.Equal(2, ran.Code);
        Assert.Equal(
            "wiretext: shop/wiretext.toml:2:1: no check is called 'heta'; did you mean 'heat'?\n"
                + "shop/wiretext.toml:3:19: 'of' is none of error, warning, note and off; did you mean 'off'?\n",
            ran.Error
        );
        Assert.EndsWith("1 error\n", ran.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("[", "]", 64)]
    [InlineData("[", "]", 100_000)]
    [InlineData("{a=", "}", 100)]
    public void Brackets_WithinBracketsWithoutEnd_AreToldInOneLine(string open, string close, int depth)
    {
        var nested = string.Concat(Enumerable.Repeat(open, depth)) + string.Concat(Enumerable.Repeat(close, depth));
        folder.Put("wiretext.toml", $"[checks]\nheat = {nested}\n");

        var ran = Run(folder.Put("a.wiring", Floating));

        Assert.Equal(2, ran.Code);
        Assert.Equal("wiretext: wiretext.toml: its brackets are nested too deeply\n", ran.Error);
    }

    /// <summary>As findings are: whoever hands over a file of another kind sees what is wrong, and how much.</summary>
    [Fact]
    public void Mistakes_PastADozen_AreCounted()
    {
        folder.Put("wiretext.toml", string.Concat(Enumerable.Range(0, 1000).Select(i => $"key-{i} = 1\n")));

        var lines = Run(folder.Put("a.wiring", Floating)).Error.Split('\n');

        Assert.Equal(14, lines.Length);
        Assert.StartsWith("wiretext.toml:12:1: ", lines[11], StringComparison.Ordinal);
        Assert.Equal(["wiretext.toml: 988 more", ""], lines[12..]);
    }

    [Fact]
    public void FileThatIsNoText_IsAClearError()
    {
        folder.Put("wiretext.toml", [0xFF, 0xFE, 0x00]);

        var ran = Run(folder.Put("a.wiring", Floating));

        Assert.Equal(2, ran.Code);
        Assert.Contains("wiretext.toml': it is not text in UTF-8", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Page_ShowsWhatIsSaid()
    {
        var fences = Fence().Matches(File.ReadAllText(Repository.PathOf("docs", "settings.md"))).ToList();
        folder.Put("wiretext.toml", Fenced("toml"));
        var file = folder.Put("guitar.wiring", Fenced("wiring"));

        var ran = Run(file);
        folder.Put(
            "wiretext.toml",
            Fenced("toml").Replace("floating-ground", "floating-gruond", StringComparison.Ordinal)
        );
        var broken = Run(file);

        Assert.Equal(1, ran.Code);
        Assert.Equal(Fenced("text"), Relative(ran.Output));
        Assert.Equal(2, broken.Code);
        Assert.Equal(fences[^1].Groups["text"].Value, broken.Error);

        string Fenced(string kind) => fences.First(fence => fence.Groups["kind"].Value == kind).Groups["text"].Value;
    }

    private Ran Run(string file) => Ran.Of(new TestHost { WorkingFolder = folder.Root }, "check", file);

    private string Relative(string output) => output.Replace(folder.Root + "/", "", StringComparison.Ordinal);

    [GeneratedRegex("```(?<kind>\\w+)\n(?<text>.*?)```", RegexOptions.Singleline, 2000)]
    private static partial Regex Fence();
}
