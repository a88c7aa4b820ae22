using WireText.Drawing.Layout;
using WireText.Testing;
using Xunit.Abstractions;

namespace WireText.Tests.Drawing.Layout;

public class LayoutCaseTests(ITestOutputHelper output)
{
    public static TheoryData<string, bool, LayoutEffort> Runs =>
        Rows.Of(
            from name in LayoutCase.Names
            from isGiven in new[] { true, false }
            from effort in new[] { LayoutEffort.Quick, LayoutEffort.Full }
            select (name, isGiven, effort)
        );

    [Theory, MemberData(nameof(Runs))]
    public void Lay_LayoutCase_HasNoHardFault(string name, bool isGiven, LayoutEffort effort)
    {
        var problem = LayoutCase.Read(name, isGiven);

        var measure = new LayoutMeasure(LayoutEngine.Lay(problem, effort));

        output.WriteLine(
            $"{measure.Crossings} crossings, {measure.Bends} bends, {measure.LengthRatio:0.00}, tags {measure.TagsPlaced}/{measure.TagsWanted}"
        );
        Assert.Empty(measure.Faults);
    }
}
