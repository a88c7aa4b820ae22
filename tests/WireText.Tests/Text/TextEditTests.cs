using WireText.Text;

namespace WireText.Tests.Text;

public class TextEditTests
{
    [Theory]
    [InlineData("one\ntwo\nthree", "one\nthree")]
    [InlineData("one\r\ntwo\r\nthree", "one\r\nthree")]
    [InlineData("one\n  two\t# why\nthree", "one\n  \t# why\nthree")]
    [InlineData("one\ntwo \"# no comment\"\nthree", "one\nthree")]
    public void WithoutStatement_OnALine_TakesAllButItsComment(string text, string left) =>
        Assert.Equal(left, Applied(text, TextEdit.WithoutStatement));

    [Theory]
    [InlineData("one\ntwo\nthree", "one\nA\nB\nthree")]
    [InlineData("one\r\n\ttwo  # why\r\nthree", "one\r\n\tA\r\nB  # why\r\nthree")]
    [InlineData("one\ntwo \"a # b\" # c", "one\nA\nB # c")]
    public void Statement_WithOtherLines_KeepsItsCommentAndLineEnds(string text, string now) =>
        Assert.Equal(now, Applied(text, place => TextEdit.Statement(place, ["A", "B"])));

    [Fact]
    public void Statement_BehindAByteOrderMark_KeepsIt()
    {
        var source = new SourceText("a.wiring", "\uFEFFtwo # why");

        var edit = TextEdit.Statement(new SourceLocation(source, new TextSpan(1, 3)), ["A"]);

        Assert.Equal("\uFEFFA # why", TextEdit.Apply(source.Content, [edit]));
    }

    [Theory]
    [InlineData("one\ntwo\nthree", "one\ntwo\nA\nthree")]
    [InlineData("one\r\ntwo # why\r\nthree", "one\r\ntwo # why\r\nA\r\nthree")]
    [InlineData("one\ntwo", "one\ntwo\nA")]
    public void LineBelow_HasTheLineEndsOfTheText(string text, string now) =>
        Assert.Equal(now, Applied(text, place => TextEdit.LineBelow(place, "A")));

    /// <summary>The text with an edit at the word "two".</summary>
    private static string Applied(string text, Func<SourceLocation, TextEdit> edit)
    {
        var source = new SourceText("a.wiring", text);
        var place = new SourceLocation(source, new TextSpan(text.IndexOf("two", StringComparison.Ordinal), 3));
        return TextEdit.Apply(text, [edit(place)]);
    }
}
