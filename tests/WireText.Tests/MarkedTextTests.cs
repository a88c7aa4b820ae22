using WireText.Testing;
using WireText.Text;

namespace WireText.Tests;

public class MarkedTextTests
{
    [Fact]
    public void Parse_TwoMarks_GivesTheTextWithoutThemAndTheirPlaces()
    {
        var marked = MarkedText.Parse("a [|bc|] d[||]e");

        Assert.Equal("a bc de", marked.Text);
        Assert.Equal([new TextSpan(2, 2), new TextSpan(6, 0)], marked.Spans);
    }
}
