using System.Globalization;
using System.Text;
using WireText.Drawing.Layout;
using WireText.Testing;

namespace WireText.Tests.Drawing.Layout;

/// <summary>Writes the table of docs/layout.md from measured drawings, and holds the targets that were reached.</summary>
public class LayoutPageTests
{
    private const string Page = "docs/layout.md";
    private const string Begin = "<!-- measured: begin -->\n";
    private const string End = "<!-- measured: end -->";

    [Theory]
    [InlineData("c1-one-pickup", true, 2)]
    [InlineData("c2-duo-lever-mute", true, 7)]
    [InlineData("c3-trio-fiveway", true, 13)]
    [InlineData("c4-twin-hb-pushpull", true, 18)]
    [InlineData("c5-dense-fourpole", true, 46)]
    [InlineData("c1-one-pickup", false, 1)]
    [InlineData("c2-duo-lever-mute", false, 5)]
    [InlineData("c3-trio-fiveway", false, 10)]
    [InlineData("c4-twin-hb-pushpull", false, 8)]
    [InlineData("c5-dense-fourpole", false, 42)]
    public void Lay_LayoutCaseAtFullEffort_CrossesNoMoreThanItsTarget(string name, bool isGiven, int target)
    {
        var measure = FullDrawings.OfCase(name, isGiven);

        Assert.InRange(measure.Crossings, 0, target);
        Assert.InRange(measure.LengthRatio, 1, 1.35);
    }

    [Fact]
    public void LayoutPage_Table_IsWhatIsMeasured()
    {
        var text = File.ReadAllText(Repository.PathOf("docs", "layout.md"));
        var (from, to) = (text.IndexOf(Begin, StringComparison.Ordinal), text.IndexOf(End, StringComparison.Ordinal));

        AcceptedFile.Check(Page, text[..(from + Begin.Length)] + Table() + text[to..]);
    }

    private static string Table()
    {
        var table = new StringBuilder();
        table.Append("| case | places | effort | crossings | bends | length ÷ lower bound | tags | faults |\n");
        table.Append("| --- | --- | --- | --- | --- | --- | --- | --- |\n");
        foreach (var name in LayoutCase.Names)
        {
            foreach (var (isGiven, effort) in Runs())
            {
                var m =
                    effort == LayoutEffort.Full
                        ? FullDrawings.OfCase(name, isGiven)
                        : new LayoutMeasure(LayoutEngine.Lay(LayoutCase.Read(name, isGiven), effort));
                var places = isGiven ? "given" : "searched";
                table.Append(
                    CultureInfo.InvariantCulture,
                    $"| {name} | {places} | {(effort == LayoutEffort.Full ? "full" : "quick")} | {m.Crossings} | {m.Bends} | {m.LengthRatio:0.00} | {m.TagsPlaced}/{m.TagsWanted} | {m.Faults.Count} |\n"
                );
            }
        }

        return table.ToString();
    }

    private static IEnumerable<(bool IsGiven, LayoutEffort Effort)> Runs() =>
        [
            (true, LayoutEffort.Quick),
            (true, LayoutEffort.Full),
            (false, LayoutEffort.Quick),
            (false, LayoutEffort.Full),
        ];
}
