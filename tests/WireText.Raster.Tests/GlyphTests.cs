using System.Text;
using System.Xml.Linq;
using SkiaSharp;
using WireText.Drawing.Faces;
using WireText.Drawing.Layout;
using WireText.Drawing.Pictures;
using WireText.Output;
using WireText.Raster.Fonts;
using WireText.Testing;
using WireText.Text;

namespace WireText.Raster;

public class GlyphTests
{
    public static TheoryData<string> Circuits =>
        Rows.Of(Repository.RightAndWrongExamples.Select(path => Path.GetRelativePath(Repository.Root, path)));

    [Theory, MemberData(nameof(Circuits))]
    public void Picture_OfAnExample_UsesOnlyCharactersThatTheTypefaceHas(string path)
    {
        using var font = new SKFont(InterTypefaces.OfWeight(400), 10);
        var texts = XDocument
            .Parse(Draw(path))
            .Descendants()
            .Where(e => e.Name.LocalName == "text")
            .Select(e => e.Value);
        Every.Item(
            string.Concat(texts).EnumerateRunes(),
            rune => Assert.True(font.ContainsGlyph(rune.Value), $"U+{rune.Value:X4}")
        );
    }

    [Fact]
    public void Picture_OfAnExample_ShowsItsTextAsInk()
    {
        var svg = Draw(Path.Combine("examples", "1-one-pickup.wiring"));

        using var bitmap = SKBitmap.Decode(PngRenderer.Render(svg, new PngOptions { Dpi = 254 }));
        var title = XDocument.Parse(svg).Descendants().First(e => (string?)e.Attribute("class") == "title");
        var (x, y) = ((double)title.Attribute("x")!, (double)title.Attribute("y")!);
        var width = (double)title.Attribute("textLength")!;
        var ink = 0;
        for (var column = (int)(x * 10); column < (x + width) * 10; column++)
        {
            var isInked = Enumerable.Range((int)(y * 10) - 40, 40).Any(row => bitmap.GetPixel(column, row).Red < 96);
            ink += isInked ? 1 : 0;
        }

        // Letters and the gaps between them: well over half of the columns of a line of type hold ink.
        Assert.InRange(ink, width * 10 * 0.6, width * 10);
    }

    /// <summary>A mistake is drawn too, with its mark.</summary>
    private static string Draw(string path)
    {
        var source = new SourceText(path, File.ReadAllText(Repository.PathOf(path), Encoding.UTF8));
        var result = Compilation.Of(source, SourcesBeside.File(Repository.PathOf(path)));
        var circuit = result.Circuit!;
        var layout = LayoutEngine.Lay(FaceBuilder.BuildProblem(circuit), LayoutEffort.Quick);
        var options = new PictureOptions { FileName = path, Findings = result.Findings };
        return SvgWriter.Write(PictureBuilder.Build(circuit, layout, options));
    }
}
