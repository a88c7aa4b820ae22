using WireText.Drawing.Layout;
using WireText.Geometry;
using WireText.Testing;

namespace WireText.Tests.Drawing.Layout;

/// <summary>The layouts of the drawings beside the examples, as text: when an SVG changed and its layout did not, the painting did.</summary>
public class ExampleLayoutTests
{
    [Theory, MemberData(nameof(ExampleDrawingTests.Examples), MemberType = typeof(ExampleDrawingTests))]
    public void Layout_OfEachExample_IsTheAcceptedOne(string name) =>
        Snap.Match(LayoutText.Of(FullDrawings.Of(name).Layout!), $"{Path.GetFileNameWithoutExtension(name)}.layout");

    // A joint is drawn 1.9 mm wide and a wire 1.4 mm with its casing: nearer than 1.65 mm they would touch, and the wire look
    // soldered on. Layout keeps 1.6 mm between lines; the rest is less than the line round a joint.
    [Theory, MemberData(nameof(ExampleDrawingTests.Examples), MemberType = typeof(ExampleDrawingTests))]
    public void Wire_OfEachExample_TouchesNoForeignJoint(string name)
    {
        var layout = FullDrawings.Of(name).Layout!;
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

    // Between a gap and a lug 1.8 mm of bared end and half a gap would leave nothing of a wire's colour to see.
    [Theory, MemberData(nameof(ExampleDrawingTests.Examples), MemberType = typeof(ExampleDrawingTests))]
    public void Gap_InAWireOfAnExample_IsNotWhereThatWireEnds(string name)
    {
        const double EndInSight = 4.5;
        var wires = FullDrawings.Of(name).Layout!.Wires;
        foreach (var over in wires)
        {
            foreach (var at in over.Gaps)
            {
                var under = wires.Single(wire => wire != over && LayoutMeasure.Apart(at, wire.Points) < 1e-6);
                var left = ToItsEnd(under, at);
                Assert.True(
                    left >= EndInSight || left >= ToItsEnd(over, at),
                    $"{under.Wire.Id} has a gap {left:0.0} mm before it ends"
                );
            }
        }

        static double ToItsEnd(RoutedWire wire, Point at) =>
            Math.Min(Distance(wire.Points[0], at), Distance(wire.Points[^1], at));

        static double Distance(Point a, Point b) => Math.Sqrt(Math.Pow(a.X - b.X, 2) + Math.Pow(a.Y - b.Y, 2));
    }
}
