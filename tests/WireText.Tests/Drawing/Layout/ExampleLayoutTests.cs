using WireText.Testing;

namespace WireText.Tests.Drawing.Layout;

/// <summary>The layouts of the drawings beside the examples, as text: when an SVG changed and its layout did not, the painting did.</summary>
public class ExampleLayoutTests
{
    [Theory, MemberData(nameof(ExampleDrawingTests.Examples), MemberType = typeof(ExampleDrawingTests))]
    public void Layout_OfEachExample_IsTheAcceptedOne(string name) =>
        Snap.Match(
            LayoutText.Of(FullDrawings.Of(name).Laid.Layout!),
            $"{Path.GetFileNameWithoutExtension(name)}.layout"
        );

    // A joint is drawn 1.9 mm wide and a wire 1.4 mm with its casing: nearer than 1.65 mm they would touch, and the wire look
    // soldered on. Layout keeps 1.6 mm between lines; the rest is less than the line round a joint.
    [Theory, MemberData(nameof(ExampleDrawingTests.Examples), MemberType = typeof(ExampleDrawingTests))]
    public void Wire_OfEachExample_TouchesNoForeignJoint(string name)
    {
        var layout = FullDrawings.Of(name).Laid.Layout!;
        var lugs = layout
            .Parts.SelectMany(part => part.Part.Lugs.Select(lug => (lug.Id, At: part.OnPage(lug.At))))
            .ToArray();
        Assert.NotEmpty(lugs);

        foreach (var wire in layout.Wires)
        {
            foreach (var (id, at) in lugs.Where(lug => lug.Id != wire.Wire.From && lug.Id != wire.Wire.To))
            {
                var distance = LayoutMeasure.Apart(at, wire.Points);
                Assert.True(distance >= 1.6 - 1e-6, $"{wire.Wire.Id} passes {id} at {distance:0.00} mm");
            }
        }
    }
}
