using System.Text;
using WireText.Checks;
using WireText.Testing;
using WireText.Text;

namespace WireText.Tests;

/// <summary>What <c>check --fix</c> does to a text: the finding goes, no error comes, and the rest of the text stays.</summary>
public class MenderTests
{
    private static readonly string Right = File.ReadAllText(Repository.PathOf("examples", "1-one-pickup.wiring"));

    /// <summary>The mistakes, and the wrong example of every finding.</summary>
    public static TheoryData<string, string> WrongTexts => Rows.Of([.. MistakeTexts(), .. BadExamples()]);

    public static TheoryData<string> RightExamples => Rows.Of(Repository.ExampleNames);

    [Theory]
    [MemberData(nameof(WrongTexts))]
    public void Mend_AnyMistake_TakesItsFindingsOutAndBringsNoError(string name, string text)
    {
        var before = Check(text).Findings;

        var result = Mend(text);

        Assert.Empty(result.Mended.Select(KeyOf).Intersect(result.Left.Findings.Select(KeyOf)));
        // While a line cannot be read no check looks at the circuit: what it would have said is no new error.
        if (!result.Mended.Any(IsOfReading))
        {
            Assert.Empty(
                result
                    .Left.Findings.Where(finding => finding.Severity == Severity.Error)
                    .Select(KeyOf)
                    .Except(before.Select(KeyOf))
            );
        }

        if (result.Mended.IsEmpty)
        {
            Assert.Equal(text, result.Source.Content);
        }

        var again = Mend(result.Source.Content);
        Assert.True(again.Mended.IsEmpty, $"{name} is mended twice: {string.Join(", ", again.Mended)}");
        Assert.Equal(result.Source.Content, again.Source.Content);
    }

    /// <summary>Mistakes that can be mended without asking, and ones that cannot: the rows above hold something of both.</summary>
    [Fact]
    public void Mend_OfAllMistakes_MendsSomeAndLeavesSome() =>
        Assert.Equal([false, true], WrongTexts.Select(row => Mend((string)row[1]).Mended.IsEmpty).Distinct().Order());

    /// <summary>The pieces of the text between the edits, put together by hand.</summary>
    [Theory]
    [MemberData(nameof(WrongTexts))]
    public void Edits_OfAnyMistake_LeaveTheRestOfTheTextAsItIs(string name, string text)
    {
        foreach (var finding in Check(text).Findings.Where(finding => !finding.Edits.IsEmpty))
        {
            var expected = new StringBuilder();
            var at = 0;
            foreach (var edit in finding.Edits.OrderBy(edit => edit.At.Span.Start))
            {
                Assert.True(edit.At.Span.Start >= at, $"{name}: edits overlap");
                expected.Append(text, at, edit.At.Span.Start - at).Append(edit.NewText);
                at = edit.At.Span.End;
            }

            expected.Append(text, at, text.Length - at);
            Assert.Equal(expected.ToString(), TextEdit.Apply(text, finding.Edits));
        }
    }

    /// <summary>Mended by the very word that was there before the slip, or left for the author to choose.</summary>
    [Theory]
    [MemberData(nameof(RightExamples))]
    public void Mend_SlipsInAWord_GivesTheTextBack(string example)
    {
        var text = File.ReadAllText(Repository.PathOf("examples", example));
        var mended = 0;
        foreach (var start in WordStarts(text).Where((_, i) => i % 7 == 0))
        {
            var slip = string.Concat(
                text.AsSpan(0, start + 1),
                text.AsSpan(start + 2, 1),
                text.AsSpan(start + 1, 1),
                text.AsSpan(start + 3)
            );
            if (slip == text || !Check(slip).HasErrors)
            {
                continue;
            }

            var result = Mend(slip);
            if (!result.Mended.IsEmpty && !result.Left.HasErrors)
            {
                Assert.Equal(text, result.Source.Content);
                mended++;
            }
        }

        Assert.NotEqual(0, mended);
    }

    /// <summary>A4 is as near to A0 as to A3: which is meant, the author knows.</summary>
    [Fact]
    public void Edits_OfAGuess_AreNone()
    {
        var text = File.ReadAllText(Repository.PathOf("examples", "mistakes", "no-such-lug.wiring"));

        var finding = Check(text).Findings.Single(one => one.Id == "unknown-lug");

        Assert.StartsWith("did you mean", finding.Help, StringComparison.Ordinal);
        Assert.Empty(finding.Edits);
    }

    [Theory]
    [InlineData("\n")]
    [InlineData("\r\n")]
    public void Mend_TheOneRepair_ChangesAWordAndKeepsColumnsAndComment(string lineEnd)
    {
        var line = Right.Split('\n').Single(line => line.StartsWith("wire    vol.2 ", StringComparison.Ordinal));
        var commented = Right
            .Replace(line, line + "  # to the tip", StringComparison.Ordinal)
            .Replace("\n", lineEnd, StringComparison.Ordinal);
        var wrong = commented.Replace("wire    vol.2 ", "wire    vol.3 ", StringComparison.Ordinal);
        Assert.NotEqual(commented, wrong);

        var result = Mend(wrong);

        Assert.Equal(["unconnected-lug"], result.Mended.Select(finding => finding.Id));
        Assert.Equal(commented, result.Source.Content);
        Assert.Empty(result.Left.Findings);
    }

    /// <summary>Of each, a wire to ground is offered, and a wire that is there may be the one that went astray.</summary>
    [Theory]
    // A braid on the hot lug: a ground wire on it would short the jack.
    [InlineData(
        """
            pickup neck single-coil
            pot vol 250k audio
            jack out
            cable neck.hot to vol.3 white braid cut to vol.3
            wire neck.ground to vol.case black
            wire vol.1 to vol.case bare
            wire vol.2 to out.tip white
            wire vol.case to out.sleeve black

            """
    )]
    // The saddle's wire on the tip: found there too, and half of the mend alone.
    [InlineData(
        """
            pickup neck single-coil
            metal saddle
            jack out
            wire neck.hot to out.tip white
            wire neck.ground to out.sleeve black
            wire out.tip to out.sleeve black

            """
    )]
    // The saddle's wire on a throw that nothing else is on.
    [InlineData(
        """
            pickup neck single-coil
            metal saddle
            switch sel dpdt
            jack out
            wire neck.hot to sel.A1 to sel.A2 white
            wire sel.A0 to out.tip white
            wire neck.ground to out.sleeve black
            wire saddle to sel.B1 black

            """
    )]
    public void Mend_WhatMayBeAWireAstray_IsLeftToThePerson(string text)
    {
        var result = Mend(text);

        Assert.Empty(result.Mended);
        Assert.Equal(text, result.Source.Content);
        Assert.Contains(result.Left.Findings, finding => finding.Id == "floating-ground");
    }

    [Theory]
    [InlineData("\n")]
    [InlineData("\r\n")]
    [InlineData("")]
    public void Mend_TwoFloatingCases_AddsALineEachBelowTheLastWire(string lastLineEnd)
    {
        var lineEnd = lastLineEnd.Length == 0 ? "\n" : lastLineEnd;
        string[] lines =
        [
            "pickup neck single-coil",
            "jack out",
            "metal saddle",
            "metal plate",
            "wire neck.hot to out.tip white",
            "wire neck.ground to out.sleeve black # last",
        ];

        var result = Mend(string.Join(lineEnd, lines) + lastLineEnd);

        Assert.Equal(2, result.Mended.Length);
        var now = result.Source.Content.Split(lineEnd).Where(line => line.Length > 0).ToList();
        Assert.Equal(lines, now.Take(lines.Length));
        Assert.Equal(
            ["wire plate", "wire saddle"],
            now.Skip(lines.Length).Select(line => line.Split(" to ")[0]).Order()
        );
        Assert.Equal(lastLineEnd.Length > 0, result.Source.Content.EndsWith(lineEnd, StringComparison.Ordinal));
        Assert.Empty(result.Left.Findings);
    }

    [Theory]
    [InlineData("allow wire-twice \"why\"\n", "")]
    [InlineData("  allow wire-twice \"why # so\"  # a comment\n", "    # a comment\n")]
    public void Mend_UnusedAllowance_TakesTheLineOutAndKeepsItsComment(string line, string left)
    {
        const string right = "pickup neck single-coil\njack out\nwire neck.hot to out.tip white\n";

        var result = Mend(right + line.TrimStart(' ') + "wire neck.ground to out.sleeve black\n");

        Assert.Equal(["allow-unused"], result.Mended.Select(finding => finding.Id));
        Assert.Equal(
            right + left.Replace("    #", "  #", StringComparison.Ordinal) + "wire neck.ground to out.sleeve black\n",
            result.Source.Content
        );
    }

    [Fact]
    public void Mend_TheSameUnusedAllowanceThreeTimes_TakesEachOut()
    {
        const string right =
            "pickup neck single-coil\njack out\nwire neck.hot to out.tip white\nwire neck.ground to out.sleeve black\n";
        const string allow = "allow wire-twice \"why\"\n";

        var result = Mend(allow + right + allow + allow);

        Assert.Equal(3, result.Mended.Length);
        Assert.Equal(right, result.Source.Content);
    }

    /// <summary>Two slips that hide what the checks would say: both words are mended, and then it is said.</summary>
    [Fact]
    public void Mend_SlipThatHidesAMistake_ShowsIt()
    {
        var result = Mend(
            "pickup bridge single-coil\njack out\nwire brigde.hot to out.tip whtie\nwire out.tip to out.sleeve black\n"
        );

        Assert.Equal(["unknown-part", "unknown-colour"], result.Mended.Select(finding => finding.Id));
        Assert.Contains(result.Left.Findings, finding => finding.Severity == Severity.Error && !IsOfReading(finding));
    }

    /// <summary>A slip in every line of wire at once: each word is the one that was there before.</summary>
    [Theory]
    [MemberData(nameof(RightExamples))]
    public void Mend_SlipsInManyLines_GivesTheTextBack(string example)
    {
        var text = File.ReadAllText(Repository.PathOf("examples", example));
        var lines = text.Split('\n');
        var slipped = lines.ToArray();
        foreach (var number in Enumerable.Range(0, lines.Length))
        {
            if (SlipThatIsMended(text, lines, number) is { } slip)
            {
                slipped[number] = slip;
            }
        }

        var result = Mend(string.Join('\n', slipped));

        Assert.Equal(text, result.Source.Content);
        Assert.Equal(lines.Where((line, i) => line != slipped[i]).Count(), result.Mended.Length);
        Assert.NotEmpty(result.Mended);
    }

    /// <summary>One of many slips hides a second in its line: its edit alone makes nothing better, and must not keep the others back.</summary>
    [Fact]
    public void Mend_OneOfManySlipsThatItsEditDoesNotMend_MendsTheOthers()
    {
        const int Slips = 50;
        const string stubborn = "pikcup mid nomodel\n";
        var around = string.Concat(Enumerable.Range(0, Slips / 2).Select(i => $"resitsor r{i} 10k\n"));
        Assert.NotEmpty(Check(Right + stubborn).Findings.Single().Edits);

        var result = Mend(Right + around + stubborn + around.Replace(" r", " s", StringComparison.Ordinal));

        Assert.Equal(Slips, result.Mended.Length);
        Assert.DoesNotContain("resitsor", result.Source.Content, StringComparison.Ordinal);
        Assert.Contains(stubborn, result.Source.Content, StringComparison.Ordinal);
    }

    /// <summary>A thousand slips are mended together, and not with a check of the whole text each.</summary>
    [Fact]
    public void Mend_ManySlips_WorkGrowsWithTheText() =>
        Growth.AssertIsLinear(
            125,
            many => Right + string.Concat(Enumerable.Range(0, many).Select(i => $"resitsor r{i} 10k\n")),
            text => Assert.False(Mend(text).Mended.IsEmpty)
        );

    [Fact]
    public void Mend_ManyAllowancesThatAllowNothing_WorkGrowsWithTheText() =>
        Growth.AssertIsLinear(
            125,
            many => Right + string.Concat(Enumerable.Range(0, many).Select(i => $"allow wire-twice \"reason {i}\"\n")),
            text => Assert.False(Mend(text).Mended.IsEmpty)
        );

    /// <summary>What a check says is mended alone: of a long text so many times as the bound holds its lines.</summary>
    [Fact]
    public void Mend_MoreThanTheBoundHolds_LeavesTheRest()
    {
        const int Tries = 10;
        var cases = string.Concat(Enumerable.Range(0, Tries + 2).Select(i => $"metal saddle{i}\n"));
        var blank = new string('\n', (Mender.MostLines / Tries) - 100);

        var result = Mend(
            $"pickup neck single-coil\njack out\n{cases}wire neck.hot to out.tip white\nwire neck.ground to out.sleeve black\n{blank}"
        );

        Assert.Equal(Tries, result.Mended.Length);
        Assert.Equal(2, result.Left.Findings.Count(finding => finding.Id == "floating-ground"));
    }

    /// <summary>The line with two letters of a word exchanged, where that is a mistake that is mended by itself; null when no word of it is.</summary>
    private static string? SlipThatIsMended(string text, string[] lines, int number)
    {
        var start = string.Join('\n', lines.Take(number)).Length + (number == 0 ? 0 : 1);
        foreach (var at in WordStarts(text).Where(at => at > start && at < start + lines[number].Length))
        {
            var slip = string.Concat(
                text.AsSpan(0, at + 1),
                text.AsSpan(at + 2, 1),
                text.AsSpan(at + 1, 1),
                text.AsSpan(at + 3)
            );
            if (slip != text && Check(slip).HasErrors && Mend(slip).Source.Content == text)
            {
                return slip.Split('\n')[number];
            }
        }

        return null;
    }

    private static IEnumerable<(string Name, string Text)> MistakeTexts() =>
        Repository.Mistakes.Select(path => (Path.GetFileName(path), File.ReadAllText(path)));

    private static IEnumerable<(string Name, string Text)> BadExamples() =>
        Every
            .Of(FindingCatalogue.All.Where(one => one.HasExamples))
            .Select(description => (description.Id, MarkedText.Parse(description.Bad).Text));

    /// <summary>Where a word of four letters or more starts in a line of wire.</summary>
    private static IEnumerable<int> WordStarts(string text)
    {
        var isComment = false;
        var isWire = false;
        for (var i = 0; i + 4 < text.Length; i++)
        {
            if (i == 0 || text[i - 1] == '\n')
            {
                isComment = false;
                isWire = text[i..].StartsWith("wire", StringComparison.Ordinal);
            }

            isComment |= text[i] is '#' or '"';
            var isStart = i == 0 || !char.IsLetter(text[i - 1]);
            if (isWire && !isComment && isStart && text[i..(i + 4)].All(char.IsAsciiLetter))
            {
                yield return i;
            }
        }
    }

    private static bool IsOfReading(Finding finding) =>
        FindingCatalogue.OfReading.Any(one => one.Id == finding.Id && one.Severity == Severity.Error);

    private static (string Id, string Message) KeyOf(Finding finding) => (finding.Id, finding.Message);

    private static Compilation Check(string text) =>
        Compilation.Of(new SourceText("a.wiring", text), NoSources.Instance);

    private static MendResult Mend(string text) => Mender.Mend(Check(text));
}
