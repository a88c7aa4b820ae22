using WireText.Syntax;
using WireText.Syntax.Parsing;
using WireText.Testing;
using WireText.Text;

namespace WireText.Tests.Syntax;

public class FormatterTests
{
    public static TheoryData<string> Files => Rows.Of(Repository.WiringFiles);

    [Theory]
    [MemberData(nameof(Files))]
    public void Format_CommittedFile_ChangesNothing(string path)
    {
        var text = File.ReadAllText(path);

        var formatted = Format(text);

        if (AcceptedFile.IsAccepting)
        {
            File.WriteAllText(path, formatted);
        }
        else
        {
            Assert.Equal(text, formatted);
        }
    }

    [Fact]
    public void Format_UnevenLines_StandInColumns()
    {
        var text = Format(
            "wire a.1 to   b.2 red # one\nwire longer.name to b.3 to c white\n\n\npot vol 250k audio\r\npot tone-neck   250k audio"
        );

        Assert.Equal(
            """
            wire    a.1          to b.2       red  # one
            wire    longer.name  to b.3 to c  white


            pot     vol        250k audio
            pot     tone-neck  250k audio

            """,
            text
        );
    }

    [Fact]
    public void Format_FoundLines_StandInColumnsBehindTheColon()
    {
        var text = Format(
            "found worked\nfound sel=neck turning vol : at most 64.2k\nfound out :sel=a:heard neck and bridge.n ,thin # so\nfound lead: good\n"
        );

        Assert.Equal(
            """
            found   worked
            found   sel=neck turning vol:  at most 64.2k
            found   out: sel=a:            heard neck and bridge.n, thin  # so
            found   lead:                  good

            """,
            text
        );
        Assert.Equal(text, Format(text));
    }

    /// <summary>Those of the first line: an editor that mixes them in shows both as one.</summary>
    [Theory]
    [InlineData("jack out\r\njack   in  \r\n\r\n", "jack    out\r\njack    in\r\n")]
    [InlineData("jack out\r\nwire  bad\njack   in", "jack    out\r\nwire  bad\r\njack    in\r\n")]
    [InlineData("jack out\njack   in\r\n", "jack    out\njack    in\n")]
    [InlineData("\r\n\r\n", "")]
    public void Format_LineEndsOfTheFile_Stay(string text, string formatted) => Assert.Equal(formatted, Format(text));

    /// <summary>A tab in a quoted text takes as many columns where the comment is looked for as where it is put.</summary>
    [Theory]
    [InlineData("note \"a\tb\" # why")]
    [InlineData("note \"long before the tab\t\tb\"     # why\nmetal plate \"x\ty\"# why")]
    public void Format_TabInAText_FormattingTwiceChangesNothing(string text)
    {
        var once = Format(text);

        Assert.Equal(once, Format(once));
    }

    [Fact]
    public void Format_LineWithAFinding_StaysAsItIs()
    {
        var text = Format("wire   a.1   b.2\njack   out");

        Assert.Equal("wire   a.1   b.2\njack    out\n", text);
    }

    [Fact]
    public void Format_ExpectWithAJack_KeepsItWithTheState() =>
        Assert.Equal(
            "expect  rest:             neck\nexpect  main: sel=a b=1:  neck\n",
            Format("expect rest:neck\nexpect main :sel=a  b=1 : neck")
        );

    [Fact]
    public void Format_ExpectWithBrackets_ClosesThemUp() =>
        Assert.Equal(
            "expect  sel=a:  (a series b) parallel c, reads 6k ±1%\n",
            Format("expect sel=a :( a series b )parallel c ,reads 6k ±1%")
        );

    [Fact]
    public void Format_ManyWires_WorkGrowsWithTheText() =>
        Growth.AssertIsLinear(
            250,
            count => string.Concat(Enumerable.Range(0, count).Select(i => $"wire a{i}.1 to b{i}.2 red\n")),
            text => Format(text)
        );

    private static string Format(string text) =>
        Formatter.Format(WiringParser.Parse(new SourceText("test.wiring", text)));
}
