using WireText.Text;

namespace WireText.Tests.Text;

public class SourceTextTests
{
    [Fact]
    public void PositionOf_MixedLineEndings_CountsEachOnce()
    {
        var source = new SourceText("a.wiring", "one\r\ntwo\nthree\rfour");

        Assert.Equal(4, source.LineCount);
        Assert.Equal((2, 1), source.PositionOf(5));
        Assert.Equal((4, 2), source.PositionOf(16));
        Assert.Equal("three", source.Slice(source.LineSpan(3)));
    }

    [Fact]
    public void LineSpan_EmptyText_IsOneEmptyLine()
    {
        var source = new SourceText("a.wiring", "");

        Assert.Equal(1, source.LineCount);
        Assert.Equal(new TextSpan(0, 0), source.LineSpan(1));
    }
}
