using System.Collections.Immutable;
using System.Text.RegularExpressions;
using WireText.Circuits.Binding;
using WireText.Syntax.Parsing;
using WireText.Testing;
using WireText.Tests.Checks;
using WireText.Text;

namespace WireText.Tests;

/// <summary>Wrong lines that a beginner writes into a right file: what is said of each, and that what is offered reads.</summary>
public partial class BeginnerLineTests
{
    private const string Right = """
        pickup neck single-coil
        pickup bridge single-coil
        switch sel lever-3way
        pot vol 250k audio
        pot tone 250k audio
        pot duo concentric 250k audio
        cap dark 22n from tone.2 to tone.case
        jack out mono
        metal saddle
        metal plate

        """;

    /// <summary>A line with the place that is blamed, how much it weighs, words of the message, words of the help.</summary>
    public static TheoryData<string, string, string, string> WrongLines { get; } =
        new()
        {
            // The form of a wire.
            { "wire vol.2 [|out.tip|] red", "error", "expected 'to'", "write: wire vol.2 to out.tip red" },
            { "wire vol.2 [|->|] out.tip red", "error", "expected 'to'", "write: wire vol.2 to out.tip red" },
            { "wire vol.2 [|→|] out.tip red", "error", "expected 'to'", "write: wire vol.2 to out.tip red" },
            { "wire vol.2 [|->|] out.tip red white", "error", "expected 'to'", "wire vol.2 to out.tip red/white" },
            { "wire [|vol.2->out.tip|] red", "error", "a name has letters", "write: wire vol.2 to out.tip red" },
            { "wire vol.2 to [|black|]", "error", "the lug before the colour is missing", "before 'black'" },
            {
                "wire vol.2 to [|black out.tip|]",
                "error",
                "the colour stands behind the last lug",
                "write: wire vol.2 to out.tip black"
            },
            {
                "wire vol.2 [|red|] to out.tip",
                "error",
                "the colour stands behind the last lug",
                "write: wire vol.2 to out.tip red"
            },
            {
                "wire red [|vol.2|] to out.tip",
                "error",
                "the colour stands behind the last lug",
                "write: wire vol.2 to out.tip red"
            },
            {
                "wire vol.2 to out.tip red [|white|]",
                "error",
                "two colours without a slash",
                "write: wire vol.2 to out.tip red/white"
            },
            { "wire saddle [|plate|] black", "error", "expected 'to'", "write: wire saddle to plate black" },
            { "wire vol [|2|] to out tip red", "error", "joined to its part's by a dot", "wire vol.2 to out.tip red" },
            { "wire vol.2 to [|out.tip|]", "error", "the wire has no colour", "red … or bare" },
            { "[|vol.2|] to out.tip red", "error", "no statement starts with 'vol.2'", "wire vol.2 to out.tip red" },
            { "[|connect|] vol.2 to out.tip red", "error", "starts with 'connect'", "wire vol.2 to out.tip red" },
            { "[|wrie|] vol.2 to out.tip red", "error", "no statement starts with 'wrie'", "did you mean 'wire'?" },
            { "wire [|neck.hot to bridge.hot|] white", "error", "two leads meet in a splice", "write: splice" },
            // Colours.
            {
                "wire vol.2 to out.tip [|red-white|]",
                "error",
                "'red-white' is no colour",
                "did you mean 'red/white'?"
            },
            { "wire vol.2 to out.tip [|cream|]", "error", "'cream' is no colour", "colour cream CR #efe3c2" },
            { "wire vol.2 to out.tip [|natural|]", "error", "'natural' is no colour", "colour natural NA #efe3c2" },
            { "wire vol.2 to out.tip [|cloth|]", "error", "'cloth' is no colour", "colour cloth CL #efe3c2" },
            { "wire vol.2 to out.tip [|rde|]", "error", "'rde' is no colour", "did you mean 'red'?" },
            // Names and lugs.
            { "wire [|volume|].2 to out.tip red", "error", "no part is named 'volume'", "did you mean 'vol'?" },
            { "wire vol.[|4|] to out.tip red", "error", "no lug '4' on 'vol'", "did you mean '3'?" },
            { "wire [|vol|] to out.tip red", "error", "'vol' has several lugs", "vol.1–vol.3, vol.case" },
            { "wire duo.[|2|] to out.tip red", "error", "a concentric pot", "duo.top.2 or duo.bottom.2" },
            { "wire saddle.[|1|] to vol.case black", "error", "'saddle' is its own lug", "write 'saddle' alone" },
            { "pot [|tone|] 500k audio", "error", "'tone' is the name of another part", "such as tone2" },
            { "jack [|to|] mono", "error", "'to' means something else", "" },
            // Parts and their models.
            { "switch lever [|3way|]", "error", "no switch is called '3way'", "'lever-3way' or 'toggle-3way'" },
            { "switch lever [|5-way|]", "error", "no switch is called '5-way'", "'lever-5way' or 'lever-5way-4pole'" },
            { "switch lever [|five-pole|]", "error", "no switch is called 'five-pole'", "define switch five-pole" },
            { "switch [|lever|]", "error", "'lever' needs its model", "write one of lever-3way" },
            { "pickup middle [|single|]", "error", "'single' says nothing", "'single-coil' or 'single-coil-cover'" },
            { "pickup middle [|staple|]", "error", "'staple' says nothing", "the models are single-coil" },
            { "[|capacitor|] bright 22n", "error", "no kind of part is called 'capacitor'", "did you mean 'cap'?" },
            { "[|potentiometer|] mix 250k audio", "error", "called 'potentiometer'", "did you mean 'pot'?" },
            { "pot mix [|250|] audio", "error", "'250' needs", "write '250k'" },
            { "cap bright [|.022|]", "error", "'.022' needs", "write '.022u'" },
            { "pot mix 250k [|auido|]", "error", "'auido' says nothing about a pot", "did you mean 'audio'?" },
            { "pot mix 250k [|A|]", "note", "A and B swap meaning", "audio or linear" },
            // Claims and positions.
            { "positions sel [|neck bridge|]", "error", "'sel' has 3 positions; 2 are named", "in the order 1, 2, 3" },
            {
                "expect sel=2: neck [|+|] bridge",
                "error",
                "said by a word",
                "write: expect sel=2: neck parallel bridge"
            },
            { "expect sel=2: [|neck+bridge|]", "error", "said by a word", "or: expect sel=2: neck series bridge" },
            { "expect sel=2: neck [|and|] bridge", "error", "said by a word", "expect sel=2: neck parallel bridge" },
            { "expect sel=2: [|silent|]", "error", "no part is named 'silent'", "did you mean 'silence'?" },
            { "expect sel=2 [|neck|]", "error", "a colon stands before", "write: expect sel=2: neck" },
            { "expect sel=[|middle|]: neck", "error", "'sel' has no position 'middle': it has 1, 2, 3", "" },
            { "expect [|duo|]=5: neck", "error", "'duo' has no positions", "duo.top or duo.bottom" },
            // Quotes and edges.
            { "title [|\"One pickup\"|]", "error", "stands behind 'circuit'", "write: circuit \"One pickup\"" },
            { "wiring [|\"One pickup\"|]", "error", "stands behind 'circuit'", "write: circuit \"One pickup\"" },
            { "pickup [|\"neck\"|]", "error", "a name starts with a letter", "" },
            { "circuit [|“One|] pickup”", "error", "straight quotes", "write: circuit \"One pickup\"" },
            { "note [|\"never closed|]", "error", "does not end on this line", "write the closing quote" },
            { "    [|jack|] low mono", "error", "an indented line belongs to", "move it to the left edge" },
        };

    public static TheoryData<string> Lines => Rows.Of([.. WrongLines.Select(row => (string)row[0])]);

    [Fact]
    public void WrongLines_OfTheTable_AreFortyAtLeast() => Assert.True(WrongLines.Count >= 40);

    [Theory]
    [MemberData(nameof(WrongLines))]
    public void WrongLine_InARightFile_IsSaidOnceAndShortly(string line, string severity, string words, string help)
    {
        var (text, spans) = MarkedText.Parse(Right + line);

        var finding = Assert.Single(FindingsOf(text));

        Assert.Equal(spans.Single(), finding.Location.Span);
        Assert.Equal(severity, finding.Severity.ToString(), ignoreCase: true);
        Assert.Contains(words, finding.Message, StringComparison.Ordinal);
        Assert.Contains(help, finding.Help ?? "", StringComparison.Ordinal);
        ShortWords.Hold([finding]);
    }

    /// <summary>What six ends on a lug set off elsewhere is the same slip, and is not said again.</summary>
    [Fact]
    public void SixLeads_OnOneLug_AreOneFinding()
    {
        var (text, spans) = MarkedText.Parse(
            """
            pickup a humbucker-4
            pickup b single-coil
            pickup c single-coil
            pot vol 250k audio
            jack out mono
            wire a.s-start to [|vol.1|] green
            wire a.shield to vol.1 bare
            wire b.ground to vol.1 black
            wire c.ground to vol.1 black
            splice link a.n-finish a.s-finish
            wire a.n-start to vol.3 red
            wire b.hot to vol.3 white
            wire c.hot to vol.3 white
            wire vol.2 to out.tip white
            wire vol.1 to out.sleeve black
            wire vol.1 to vol.case bare
            """
        );
        var compilation = Compilation.Of(new SourceText("six.wiring", text), NoSources.Instance);

        var finding = Assert.Single(compilation.Findings, found => found.Severity > Severity.Right);

        Assert.Equal("crowded-lug", finding.Id);
        Assert.Equal(spans.Single(), finding.Location.Span);
    }

    /// <summary>Each line that is offered stands for the wrong one, each word for the marked one, and a colour or a definition above it.</summary>
    [Theory]
    [MemberData(nameof(Lines))]
    public void WhatTheHelpOffers_Pasted_ReadsWithoutAFinding(string line)
    {
        var (text, _) = MarkedText.Parse(Right + line);
        var finding = FindingsOf(text).Single();

        foreach (var offered in Pasted(text, finding))
        {
            Assert.Empty(FindingsOf(offered));
        }
    }

    /// <summary>The rows above whose help can be pasted as it stands.</summary>
    [Fact]
    public void WhatTheHelpOffers_OverTheTable_IsMostlyTextToPaste() =>
        Assert.True(
            WrongLines.Count(row =>
            {
                var (text, _) = MarkedText.Parse(Right + (string)row[0]);
                return Pasted(text, FindingsOf(text).Single()).Any();
            }) >= 30
        );

    [Theory]
    [MemberData(nameof(Lines))]
    public void Edits_OfAWrongLine_LeaveNoFinding(string line)
    {
        var (text, _) = MarkedText.Parse(Right + line);
        var edits = FindingsOf(text).Single().Edits;

        Assert.True(edits.IsEmpty || FindingsOf(TextEdit.Apply(text, edits)).IsEmpty);
    }

    private static ImmutableArray<Finding> FindingsOf(string text)
    {
        var tree = WiringParser.Parse(new SourceText("beginner.wiring", text));
        return [.. tree.Findings, .. Binder.Bind(tree, NoSources.Instance).Findings];
    }

    private static IEnumerable<string> Pasted(string text, Finding finding)
    {
        var help = finding.Help ?? "";
        foreach (Match match in OfferedLine().Matches(help))
        {
            yield return Right + match.Groups["line"].Value;
        }

        foreach (Match match in OfferedColour().Matches(help))
        {
            yield return $"{match.Groups["line"].Value}\n{text}";
        }

        foreach (Match match in QuotedWord().Matches(OfferedWord().IsMatch(help) ? help : ""))
        {
            yield return TextEdit.Apply(text, [new TextEdit(finding.Location, match.Groups["word"].Value)]);
        }

        if (help.IndexOf("\ndefine ", StringComparison.Ordinal) is >= 0 and var start)
        {
            yield return $"{help[(start + 1)..]}\n{text}";
        }
    }

    [GeneratedRegex("^(?:write|or): (?<line>.+)$", RegexOptions.Multiline | RegexOptions.ExplicitCapture)]
    private static partial Regex OfferedLine();

    [GeneratedRegex("^or name your own in a line: (?<line>.+)$", RegexOptions.Multiline | RegexOptions.ExplicitCapture)]
    private static partial Regex OfferedColour();

    [GeneratedRegex("^(?:did you mean|write) '[^']+'(?:, '[^']+'| or '[^']+')*\\??$")]
    private static partial Regex OfferedWord();

    [GeneratedRegex("'(?<word>[^']+)'", RegexOptions.ExplicitCapture)]
    private static partial Regex QuotedWord();
}
