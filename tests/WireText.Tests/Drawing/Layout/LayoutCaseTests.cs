using WireText.Drawing.Layout;
using Xunit.Abstractions;

namespace WireText.Tests.Drawing.Layout;

public class LayoutCaseTests(ITestOutputHelper output)
{
    public static TheoryData<string, bool, LayoutEffort> Runs()
    {
        var runs = new TheoryData<string, bool, LayoutEffort>();
        foreach (var name in LayoutCase.Names)
        {
            foreach (var isGiven in new[] { true, false })
            {
                runs.Add(name, isGiven, LayoutEffort.Quick);
                runs.Add(name, isGiven, LayoutEffort.Full);
            }
        }

        return runs;
    }

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
