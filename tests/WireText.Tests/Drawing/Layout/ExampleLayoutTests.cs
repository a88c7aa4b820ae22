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
}
