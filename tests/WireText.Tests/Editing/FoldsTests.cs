using WireText.Editing;
using WireText.Syntax.Parsing;
using WireText.Text;

namespace WireText.Tests.Editing;

public class FoldsTests
{
    [Fact]
    public void Folds_OfBlocksCommentsAndRuns_StartAtTheLineThatStays()
    {
        const string text = """
            # what it is
            # for whom
            circuit "Two"

            arrange
                neck out
                sel  vol
            wire a.1 to b.1 white
            wire a.2 to b.2 white # last but one
            wire a.3 to b.3 white

            wire a.4 to b.4 white
            wire a.5 to b.5 white
            """;

        Assert.Equal([new(1, 2, true), new(5, 7, false), new(8, 10, false)], FoldsOf(text));
    }

    [Fact]
    public void Folds_OfAnEmptyText_AreNone() => Assert.Empty(FoldsOf(""));

    private static IEnumerable<Fold> FoldsOf(string text) =>
        Folds.Of(WiringParser.Parse(new SourceText("a.wiring", text)));
}
