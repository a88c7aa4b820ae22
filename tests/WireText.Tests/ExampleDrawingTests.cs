using WireText.Drawing.Layout;
using WireText.Drawing.Lettering;
using WireText.Testing;
using WireText.Tests.Drawing;
using WireText.Text;

namespace WireText.Tests;

/// <summary>The drawings that are committed beside the examples.</summary>
public class ExampleDrawingTests
{
    public static TheoryData<string> Examples => Rows.Of(Repository.ExampleNames);

    [Theory]
    [MemberData(nameof(Examples))]
    public void Drawing_OfEachExample_IsFresh(string name) =>
        AcceptedFile.Check($"examples/{Path.ChangeExtension(name, ".svg")}", FullDrawings.Of(name).Svg!);

    /// <summary>Read by the measuring tool from the finished picture alone.</summary>
    [Theory]
    [MemberData(nameof(Examples))]
    public void Drawing_OfEachExample_HasEveryWireAndNoFault(string name) => AssertIsWhole(FullDrawings.Of(name));

    [Theory]
    [MemberData(nameof(Examples))]
    public void Drawing_OfEachExampleAtQuickEffort_HasEveryWireAndNoFault(string name) => AssertIsWhole(Draw(name));

    [Theory]
    [MemberData(nameof(Examples))]
    public void Drawing_UnderAnotherCulture_HasTheSameBytes(string name) =>
        Assert.Equal(Draw(name).Svg, OtherCulture.Run(() => Draw(name).Svg));

    [Fact]
    public void Drawing_OfEveryMistake_IsMarkedNotRefused()
    {
        foreach (var path in Repository.Mistakes)
        {
            var drawn = Drawn.Of(
                new SourceText(Path.GetFileName(path), File.ReadAllText(path)),
                new DrawOptions(LayoutEffort.Quick, Theme.Light, null)
            );

            Assert.Contains("class=\"finding", drawn.Svg!, StringComparison.Ordinal);
        }
    }

    private static void AssertIsWhole(Drawn drawn)
    {
        var measure = Drawings.MeasureOf(drawn);

        Assert.NotEqual(0, measure.WiresInPicture);
        Assert.Equal(measure.WiresInSource, measure.WiresInPicture);
        Assert.True(measure.IsClean, measure.ToJson());
    }

    private static Drawn Draw(string name) =>
        Drawn.Of(
            new SourceText(name, File.ReadAllText(Repository.PathOf("examples", name))),
            new DrawOptions(LayoutEffort.Quick, Theme.Light, name)
        );
}
