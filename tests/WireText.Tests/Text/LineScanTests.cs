using WireText.Text;

namespace WireText.Tests.Text;

public class LineScanTests
{
    [Theory]
    [InlineData("wire a to b", "wire|a|to|b")]
    [InlineData("  wire\ta \t to  b  ", "wire|a|to|b")]
    [InlineData("wire a # to b", "wire|a")]
    [InlineData("wire a #to b", "wire|a")]
    [InlineData("wire a#to b", "wire|a#to|b")]
    [InlineData("note \"one  two\"", "note|\"one  two\"")]
    [InlineData("note \"a # b\" # c", "note|\"a # b\"")]
    [InlineData("note \"a\tb\"", "note|\"a\tb\"")]
    [InlineData("note \"a\"#b", "note|\"a\"#b")]
    [InlineData("note x\"a b\"y z", "note|x\"a b\"y|z")]
    [InlineData("note \"a b # c  ", "note|\"a b # c  ")]
    [InlineData("", "")]
    [InlineData(" \t ", "")]
    [InlineData("# only a comment", "")]
    public void Words_OfALine_StandApartByBlanksOutsideQuotes(string line, string words) =>
        Assert.Equal(
            words,
            string.Join('|', LineScan.WordsOf(line).Select(word => line.Substring(word.Start, word.Length)))
        );

    [Fact]
    public void Words_WithMarks_HaveEachMarkByItself()
    {
        const string line = "expect sel=a:b,( c )\"(d, e)\"";

        var words = LineScan.WordsIn(line, new TextSpan(0, line.Length), hasMarks: true);

        Assert.Equal(
            ["expect", "sel=a", ":", "b", ",", "(", "c", ")", "\"(d, e)\""],
            words.Select(word => line.Substring(word.Start, word.Length))
        );
    }

    [Theory]
    [InlineData("wire a", -1)]
    [InlineData("wire a # b # c", 7)]
    [InlineData("# b", 0)]
    [InlineData("  # b", 2)]
    [InlineData("wire a#b", -1)]
    [InlineData("note \"a # b", -1)]
    [InlineData("note \"#\" #", 9)]
    public void Comment_StartsWhereAWordCould(string line, int at)
    {
        var scan = Scan(line);

        Assert.Equal((at, at >= 0), (scan.CommentStart, scan.HasComment));
    }

    [Theory]
    [InlineData("note \"a\"", -1)]
    [InlineData("note \"a", 5)]
    [InlineData("note \"a\" b\"c", 10)]
    [InlineData("note \"a\" \"", 9)]
    [InlineData("note # \"a", -1)]
    public void OpenQuote_OnlyWhereTheLineDoesNotCloseIt(string line, int at) => Assert.Equal(at, Scan(line).OpenQuote);

    [Fact]
    public void OpenQuote_TakesTheBlanksBehindIt() => Assert.Equal(new TextSpan(1, 9), Scan(" note \"a  ").Content);

    [Theory]
    [InlineData("wire \u200ba", 5)]
    [InlineData("wire\u00a0a", 4)]
    [InlineData("note \"a\u00a0b\"", -1)]
    [InlineData("note \"a\u202eb\"", 7)]
    [InlineData("wire \ud83c\udfb8 a", -1)]
    [InlineData("wire a\u0007b\u0007", 6)]
    [InlineData("wire a # \u200b", -1)]
    public void Stray_IsTheFirstCharacterThatCannotBeSeen(string line, int at) => Assert.Equal(at, Scan(line).Stray);

    /// <summary>No attribute can hold such a string.</summary>
    [Fact]
    public void Stray_HalfACharacter_IsOne()
    {
        Assert.Equal(5, Scan("wire \ud83c a").Stray);
        Assert.Equal(5, Scan("wire \udfb8 a").Stray);
    }

    [Theory]
    [InlineData("pot vol", false)]
    [InlineData("\tpot vol", true)]
    [InlineData(" # comment", false)]
    [InlineData("   ", false)]
    public void Indented_OnlyWithWordsBehindBlanks(string line, bool isIndented) =>
        Assert.Equal(isIndented, Scan(line).IsIndented);

    /// <summary>Line ends, of whatever kind, belong to no line; nor does a byte order mark.</summary>
    [Theory]
    [InlineData("\uFEFFone # 1\r\n\ttwo\n")]
    [InlineData("one # 1\r\ttwo")]
    public void Scan_OfALineByItsNumber_LeavesOutWhatIsNoText(string text)
    {
        var source = new SourceText("a.wiring", text);

        var (first, second) = (LineScan.Of(source, 1), LineScan.Of(source, 2));

        Assert.Equal(("one", "two"), (source.Slice(first.Content), source.Slice(second.Content)));
        Assert.Equal((false, true), (first.IsIndented, second.IsIndented));
        Assert.Equal('#', text[first.CommentStart]);
    }

    private static LineScan Scan(string line) => LineScan.Of(line, new TextSpan(0, line.Length));
}
