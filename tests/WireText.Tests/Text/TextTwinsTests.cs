using WireText.Text;

namespace WireText.Tests.Text;

public class TextTwinsTests
{
    [Theory]
    [InlineData("wire a b", "wire a b # why")]
    [InlineData("wire a b # why", "wire a b    # why not")]
    [InlineData("wire a b", "wire a b\n\n# the end\n")]
    [InlineData("# one\nwire a b", "# another\nwire a b")]
    [InlineData("\nwire a b", "# above\nwire a b")]
    [InlineData("wire a b\r\n", "wire a b\n")]
    [InlineData("note \"a # b\" # c", "note \"a # b\" # d")]
    public void Are_TextsWithOtherComments_IsTrue(string one, string other) =>
        Assert.True(TextTwins.Are(Source(one), Source(other)) && TextTwins.Are(Source(other), Source(one)));

    [Theory]
    [InlineData("wire a b", "wire a c")]
    [InlineData("wire a b", "wire  a b")]
    [InlineData("wire a b", " wire a b")]
    [InlineData("wire a b", "# above\nwire a b")]
    [InlineData("wire a b", "#wire a b")]
    [InlineData("wire a b", "wire a b\nwire c d")]
    [InlineData("wire a#1 b", "wire a#2 b")]
    [InlineData("note \"a # b\"", "note \"a # c\"")]
    [InlineData("note \"a # b", "note \"a # c")]
    public void Are_TextsWithOtherWordsOrPlaces_IsFalse(string one, string other) =>
        Assert.False(TextTwins.Are(Source(one), Source(other)) || TextTwins.Are(Source(other), Source(one)));

    [Fact]
    public void Are_TextsOfTwoFiles_IsFalse() =>
        Assert.False(TextTwins.Are(Source("wire a b"), new SourceText("b.wiring", "wire a b")));

    [Fact]
    public void In_APlaceBelowAChangedComment_HoldsTheSameWords()
    {
        var (one, other) = (
            Source("# short\r\nwire a b # x\r\nwire c d"),
            Source("# much longer\nwire a b\nwire c d # y")
        );
        var place = new SourceLocation(one, new TextSpan(one.Content.IndexOf("c d", StringComparison.Ordinal), 3));

        var moved = TextTwins.In(other, place);

        Assert.Equal("c d", moved.Text);
        Assert.Equal(place.Position, moved.Position);
    }

    private static SourceText Source(string text) => new("a.wiring", text);
}
