using WireText.Syntax.Nodes;
using WireText.Syntax.Parsing;
using WireText.Testing;
using WireText.Text;

namespace WireText.Tests.Syntax.Parsing;

public class WiringParserTests
{
    private const string TwentyBadLines = """
        circuit [|Workhorse|]
        note [|"never closed|]
        [|wrie|] neck.hot to sel.A1 white
        pickup [|1neck|] single-coil
        pickup neck single-coil [|dcr=|]
        switch sel lever-3way from sel.A1 [|sel.A2|]
        jack out mono
        wire neck.hot [|sel.A1|] white
        wire neck.hot to [|sel..A1|] white
        wire neck.hot to [|sel.A1|]
        wire neck.hot to sel.A1 white [|colour|]
        cable neck.hot to sel.A1 white [|tiwsted|]
        cable neck.hot to sel.A1 white braid neck.ground to[| |]
        touch [|vol.case|]
        positions [|sel|]
        place vol at [|12|]
        place vol at 1,2 turned [|left|]
            [|wire|] vol.2 to out.tip red
        [|body|] box 1,2
        expect sel=neck [|neck|]
        expect sel=neck: neck series a [|parallel|] b
        allow wire-twice at [|out.tip|]
        """;

    [Fact]
    public void Parse_TwentyBadLines_GivesTwentyFindingsEachAtItsPlace()
    {
        // The end of a line that stopped too soon is marked at its last word.
        var (text, spans) = MarkedText.Parse(TwentyBadLines.Replace("to[| |]", "[|to|]", StringComparison.Ordinal));

        var found = Parse(text).Findings;

        Assert.True(spans.Count >= 20);
        Assert.Equal(spans, found.Select(f => f.Location.Span));
        Assert.Equal(found.Length, found.Select(f => f.Location.Position.Line).Distinct().Count());
    }

    [Theory]
    [InlineData("wire a.1 b.2 red", "expected 'to' between the two ends of the wire, not 'b.2'", null)]
    [InlineData("wrie a.1 to b.2 red", "no statement starts with 'wrie'", "did you mean 'wire'?")]
    [InlineData("cable a.1 to b.2 white twited", "'twisted'", "did you mean 'twisted'?")]
    [InlineData("pickup to single-coil", "'to' means something else", null)]
    [InlineData(
        "expect rest: a series b parallel c",
        "in two ways: (a series b) parallel c, or a series (b parallel c)",
        "write the one that is meant, with its brackets"
    )]
    [InlineData(
        "expect rest: reversed a parallel (b series c) parallel d series e through mix",
        "(reversed a parallel (b series c) parallel d) series e through mix, or reversed a parallel (b series c) parallel (d series e through mix)",
        null
    )]
    [InlineData("expect rest: (a series b parallel c) series d", "in two ways: (a series b) parallel c, or", null)]
    [InlineData("expect rest: a series b parallel", "(a series b) parallel ..., or a series (b parallel ...)", null)]
    public void Parse_ASlip_SaysWhatWasExpected(string line, string message, string? help)
    {
        var finding = Parse(line).Findings.Single();

        Assert.Contains(message, finding.Message, StringComparison.Ordinal);
        if (help is not null)
        {
            Assert.Equal(help, finding.Help);
        }
    }

    [Fact]
    public void Parse_BrokenPart_KeepsItsName()
    {
        var part = Assert.IsType<PartSyntax>(Parse("pickup neck single-coil dcr=").Statements.Single());

        Assert.True(part.IsBroken);
        Assert.Equal("neck", part.Name.Text);
    }

    [Theory]
    [InlineData("pickup neck single-coil \"open")]
    [InlineData("pickup neck single-coil \u200Bdcr=6k")]
    [InlineData("splice neck a.b \"open")]
    public void Check_PartOnALineThatCannotBeRead_IsReportedOnce(string line)
    {
        var source = new SourceText(
            "test.wiring",
            $"{line}\njack out\nwire neck.hot to out.tip red\nwire neck to out.sleeve red"
        );

        Assert.Single(Compilation.Of(source, NoSources.Instance).Findings);
    }

    [Fact]
    public void Parse_DefineThatCannotBeRead_KeepsItsLinesToItself()
    {
        var tree = Parse(
            """
            define switch one
                lugs a 0,0 b 5,0
            define switch two "open
                lugs c 0,0 d 5,0
            arrange
                out
            jack out "open
                stray
            """
        );

        Assert.Equal(["unclosed-text", "unclosed-text", "stray-indent"], tree.Findings.Select(f => f.Id));
        Assert.Single(tree.Statements.OfType<DefineSyntax>().First().Lines);
        Assert.True(tree.Statements.OfType<DefineSyntax>().Last().IsBroken);
        Assert.Single(tree.Statements.OfType<ArrangeSyntax>().Single().Rows);
    }

    [Theory]
    [InlineData("\uFEFFjack out\r\n\tjack two\rjack three")]
    [InlineData("# only a comment")]
    [InlineData("")]
    [InlineData("\n\n")]
    [InlineData("jack out # not\tkept apart\n\0\u0007\ud800")]
    public void ToText_AnySource_IsTheSourceAgain(string text) => Assert.Equal(text, Parse(text).ToText());

    [Fact]
    public void Parse_ByteOrderMarkAndMixedLineEndings_AreNoSlips()
    {
        var tree = Parse("\uFEFFjack out\r\njack two\rarrange\n\tout\ttwo\n");

        Assert.Empty(tree.Findings);
        Assert.Equal(3, tree.Statements.Length);
    }

    [Fact]
    public void Parse_HashInsideAWordOrQuotes_StartsNoComment()
    {
        var tree = Parse("note \"a # b\" # c");

        Assert.Equal("a # b", Assert.IsType<RemarkSyntax>(tree.Statements.Single()).Words.Value);
        Assert.Equal(13, tree.Lines[0].CommentStart);
    }

    [Theory]
    [InlineData(WiringParser.MaxLength, false)]
    [InlineData(WiringParser.MaxLength + 1, true)]
    public void Parse_SourceUpToTheLimit_IsRead(int length, bool isTooLarge) =>
        Assert.Equal(isTooLarge, Parse(new string(' ', length)).Findings.Any(f => f.Id == "too-large"));

    [Theory]
    [InlineData(WiringParser.MaxLines, false)]
    [InlineData(WiringParser.MaxLines + 1, true)]
    public void Parse_LinesUpToTheLimit_AreRead(int lines, bool isTooLarge) =>
        Assert.Equal(isTooLarge, Parse(new string('\n', lines - 1)).Findings.Any(f => f.Id == "too-large"));

    [Fact]
    public void Parse_BracketsAThousandDeep_AreRefusedNotFollowed() =>
        Assert.Equal(
            "too-deep",
            Parse($"expect rest: {new string('(', 1000)}a{new string(')', 1000)}").Findings.Single().Id
        );

    private static WiringTree Parse(string text) => WiringParser.Parse(new SourceText("test.wiring", text));
}
