using WireText.Circuits;
using WireText.Drawing.Faces;
using WireText.Drawing.Layout;
using WireText.Drawing.Lettering;
using WireText.Drawing.Pictures;
using WireText.Drawing.Shapes;
using WireText.Measuring;
using WireText.Output;
using WireText.Testing;
using WireText.Text;

namespace WireText.Tests.Drawing;

/// <summary>Draws a text, the quick way unless asked for more.</summary>
internal static class Drawings
{
    public static Circuit CircuitOf(string text) =>
        Compilation.Of(new SourceText("test.wiring", text), NoSources.Instance).Circuit!;

    public static Picture PictureOf(string text, Theme? theme = null, LayoutEffort effort = LayoutEffort.Quick)
    {
        var result = Compilation.Of(new SourceText("test.wiring", text), NoSources.Instance);
        var layout = LayoutEngine.Lay(FaceBuilder.BuildProblem(result.Circuit!), effort);
        var options = new PictureOptions
        {
            Theme = theme ?? Theme.Light,
            FileName = "test.wiring",
            Findings = result.Findings,
        };
        return PictureBuilder.Build(result.Circuit!, layout, options);
    }

    public static string SvgOf(string text, Theme? theme = null) => SvgWriter.Write(PictureOf(text, theme));

    /// <summary>The finished SVG, measured against the wires of its circuit; one that cannot be measured fails the test.</summary>
    public static PictureMeasure MeasureOf(Drawn drawn)
    {
        var circuit = drawn.Compiled.Circuit!;
        var measure = PictureMeasurer.Measure(
            drawn.Svg!,
            [.. circuit.Wires.Select(wire => new ExpectedWire(wire.Id, NameOf(wire.From), NameOf(wire.To)))]
        );
        Assert.True(measure.Error is null, $"{measure.Error}\n{drawn.Compiled.Tree.ToText()}");
        return measure;

        string? NameOf(int lug) => lug < 0 ? null : circuit.NameOf(lug);
    }
}
