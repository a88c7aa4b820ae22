using WireText.Circuits;
using WireText.Drawing.Faces;
using WireText.Drawing.Layout;
using WireText.Drawing.Pictures;
using WireText.Output;
using WireText.Text;

namespace WireText.Tests.Drawing;

/// <summary>Draws a text, the quick way unless asked for more.</summary>
internal static class Drawings
{
    public static Circuit CircuitOf(string text) =>
        WiringCompiler.Check(new SourceText("test.wiring", text), NoSources.Instance).Circuit!;

    public static Picture PictureOf(string text, Theme? theme = null, LayoutEffort effort = LayoutEffort.Quick)
    {
        var result = WiringCompiler.Check(new SourceText("test.wiring", text), NoSources.Instance);
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
}
