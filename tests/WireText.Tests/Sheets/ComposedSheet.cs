using WireText.Building;
using WireText.Documents;
using WireText.Drawing.Layout;
using WireText.Drawing.Lettering;
using WireText.Electrical.BenchPlans;
using WireText.Output;
using WireText.Sheets;
using WireText.Testing;
using WireText.Text;

namespace WireText.Tests.Sheets;

/// <summary>Build sheets of texts and examples.</summary>
internal static class ComposedSheet
{
    public static SheetContents ContentsOf(string text, string name = "bench.wiring", int count = 1)
    {
        var compiled = Compilation.Of(new SourceText(name, text), NoSources.Instance);
        var order = WorkOrder.Of(compiled.Circuit!);
        var options = new DrawOptions(LayoutEffort.Quick, Theme.Print, name) { Joints = order.Joints };
        return new SheetContents(
            compiled.Circuit!,
            order,
            compiled.PictureFor(options),
            compiled.PlanFor(LayoutEffort.Quick)!.Layout,
            name,
            count
        )
        {
            BenchTest = compiled.Study is { } study ? BenchBlocks.Of(BenchPlan.Of(study)) : [],
        };
    }

    public static Document Of(string text, int count = 1) => BuildSheet.Compose(ContentsOf(text, count: count));

    public static Document OfExample(string name) =>
        BuildSheet.Compose(ContentsOf(File.ReadAllText(Repository.PathOf("examples", name)), name));
}
