using WireText.Editing;
using WireText.Syntax.Parsing;
using WireText.Testing;
using WireText.Text;

namespace WireText.Tests.Editing;

public class OutlineTests
{
    [Fact]
    public void Outline_OfATextWithEachStatement_SaysWhatEachIsAbout()
    {
        var items = OutlineOf(
            """
            circuit "Two"
            pickup  neck  single-coil  dcr=6k # the slanted one
            splice  link  neck.hot
            wire    neck.hot to out.tip  white
            expect  out: sel=neck: neck, reads 6k
            expect  rest: silence
            positions sel a b c
            define switch tiny
                lugs 1 0,0
                position on 1+1
            colour  cream CR #efe3c2
            """
        );

        Assert.Equal(
            [
                "Two|circuit",
                "neck|pickup single-coil dcr=6k",
                "link|splice",
                "neck.hot – out.tip|white",
                "out: sel=neck|neck, reads 6k",
                "rest|silence",
                "sel|a b c",
                "tiny|switch",
                "cream|colour",
            ],
            items.Select(item => $"{item.Name}|{item.Detail}")
        );
    }

    [Fact]
    public void Item_OfEachExample_LiesWithinItsStatementAndBeforeTheNext()
    {
        Every.Item(
            Repository.RightAndWrongExamples,
            path =>
            {
                var items = OutlineOf(File.ReadAllText(path));
                Every.Item(
                    items,
                    item => Assert.True(item.Whole.Start <= item.At.Start && item.At.End <= item.Whole.End)
                );
                Assert.True(items.Zip(items.Skip(1)).All(pair => pair.First.Whole.End < pair.Second.Whole.Start));
            }
        );
    }

    private static IReadOnlyList<OutlineItem> OutlineOf(string text) =>
        Outline.Of(WiringParser.Parse(new SourceText("a.wiring", text)));
}
