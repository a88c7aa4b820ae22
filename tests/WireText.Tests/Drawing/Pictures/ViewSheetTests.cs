using WireText.Drawing.Faces;
using WireText.Drawing.Layout;
using WireText.Drawing.Pictures;
using WireText.Drawing.Shapes;
using WireText.Electrical.Networks;
using WireText.Electrical.Studies;
using WireText.Geometry;
using WireText.Output;
using WireText.Testing;
using WireText.Text;

namespace WireText.Tests.Drawing.Pictures;

public class ViewSheetTests
{
    public static TheoryData<string> Examples => Rows.Of(Repository.ExampleNames);

    [Theory]
    [MemberData(nameof(Examples))]
    public void Sheet_OfAnExample_HasItsViewsBesideEachOtherAndOnThePage(string example)
    {
        var text = File.ReadAllText(Repository.PathOf("examples", example));
        var circuit = Compilation.Of(new SourceText(example, text), NoSources.Instance).Circuit!;
        var layout = LayoutEngine.Lay(FaceBuilder.BuildProblem(circuit), LayoutEffort.Quick);
        var network = Network.Of(circuit)!;

        var sheet = ViewSheet.Build(
            circuit,
            layout,
            new PictureOptions(),
            PositionViews.Of(circuit, Study.Of(network))
        );

        var views = sheet.Items.OfType<PictureView>().ToList();
        var boxes = views.ConvertAll(view => new Box(
            view.At.X,
            view.At.Y,
            layout.Extent.Width * view.Scale,
            layout.Extent.Height * view.Scale
        ));
        Assert.Equal(Study.Of(network).Positions.Rows.Length, views.Count);
        Every.Item(views, view => Assert.InRange(view.Scale, 0.5, 1));
        Every.Item(boxes, box => Assert.True(box.Right <= sheet.Page.Width && box.Bottom <= sheet.Page.Height));
        Assert.DoesNotContain(
            boxes.SelectMany((box, i) => boxes.Skip(i + 1).Select(other => (Box: box, Other: other))),
            pair => Overlap(pair.Box, pair.Other)
        );
        Every.Item(sheet.Items.OfType<TextItem>(), item => Assert.True(item.Bounds.Right <= sheet.Page.Width));
    }

    private static bool Overlap(Box a, Box b) => a.X < b.Right && b.X < a.Right && a.Y < b.Bottom && b.Y < a.Bottom;
}
