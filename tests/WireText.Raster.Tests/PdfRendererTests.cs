using System.Diagnostics;
using System.Globalization;
using System.Text;
using System.Xml.Linq;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using WireText.Testing;

namespace WireText.Raster;

/// <summary>PDFs read back by a library that had no part in writing them.</summary>
public class PdfRendererTests
{
    private const double MillimetresPerPoint = 25.4 / 72;

    public static TheoryData<string> Drawings =>
        Rows.Of(Repository.ExampleNames.Select(name => Path.ChangeExtension(name, ".svg")));

    [Theory, MemberData(nameof(Drawings))]
    public void Render_OfAnExample_HasItsSizeAndItsWordsWhereTheyStand(string name)
    {
        var svg = File.ReadAllText(Repository.PathOf("examples", name));
        var drawing = XDocument.Parse(svg).Root!;
        using var pdf = PdfDocument.Open(PdfRenderer.Render(svg));
        var page = pdf.GetPages().Single();

        Assert.Equal(Millimetres(drawing, "width") / MillimetresPerPoint, page.MediaBox.Bounds.Width, 0.01);
        Assert.Equal(Millimetres(drawing, "height") / MillimetresPerPoint, page.MediaBox.Bounds.Height, 0.01);
        AssertWordsStandAs(drawing, page, scale: 1);
        Assert.Empty(page.GetImages());
        Assert.Equal(drawing.Elements().Single(e => e.Name.LocalName == "title").Value, pdf.Information.Title);
    }

    [Fact]
    public void Render_AtAnotherSize_ScalesThePageAndWhatIsOnIt()
    {
        var half = Small(paperWidth: "50.1", paperHeight: "25.05");
        using var pdf = PdfDocument.Open(PdfRenderer.Render(half));
        var page = pdf.GetPages().Single();

        Assert.Equal(50.1 / MillimetresPerPoint, page.Width, 0.01);
        AssertWordsStandAs(XDocument.Parse(half).Root!, page, scale: 0.5);
    }

    [Fact]
    public void Render_Again_GivesTheSameBytesAndNoDate()
    {
        var svg = File.ReadAllText(Repository.PathOf("examples", "2-two-pickups-mute.svg"));
        var first = PdfRenderer.Render(svg);

        Assert.Equal(first, PdfRenderer.Render(svg));
        Assert.Equal(first, RenderElsewhere(svg));
        using var pdf = PdfDocument.Open(first);
        Assert.Null(pdf.Information.CreationDate);
        Assert.Null(pdf.Information.ModifiedDate);
        Assert.DoesNotContain("Date", Encoding.Latin1.GetString(first), StringComparison.Ordinal);
    }

    [Fact]
    public void Render_LongerThanAPage_SaysWhatWouldDo()
    {
        var refusal = Assert.Throws<PictureSizeException>(() => PdfRenderer.Render(Small("5081", "20")));

        Assert.Contains("up to 5080 mm will do", refusal.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("not XML")]
    [InlineData("<svg xmlns='http://www.w3.org/2000/svg' width='10' height='10' viewBox='0 0 10 10'/>")]
    [InlineData("<svg xmlns='http://www.w3.org/2000/svg' width='10mm' height='10mm'/>")]
    [InlineData("<svg xmlns='http://www.w3.org/2000/svg' width='10mm' height='10mm' viewBox='5 0 10 10'/>")]
    public void Render_OfSomethingElse_SaysSo(string text) =>
        Assert.Throws<ArgumentException>(() => PdfRenderer.Render(text));

    /// <summary>
    /// Every word of the drawing is text of the page, in the same order, and those that start at their place start there: to
    /// 0.05 mm across. Upwards the page's height is rounded to points, so to half a point.
    /// </summary>
    private static void AssertWordsStandAs(XElement drawing, Page page, double scale)
    {
        var letters = page.Letters.Where(letter => !string.IsNullOrWhiteSpace(letter.Value)).ToList();
        var next = 0;
        foreach (var text in drawing.Descendants().Where(element => element.Name.LocalName == "text"))
        {
            var word = text.Value.Replace(" ", "", StringComparison.Ordinal);
            Assert.Equal(word, string.Concat(letters.Skip(next).Take(word.Length).Select(letter => letter.Value)));
            if (text.Attribute("text-anchor") is null)
            {
                var at = letters[next].StartBaseLine;
                Assert.Equal(Number(text, "x") * scale, at.X * MillimetresPerPoint, 0.05);
                Assert.Equal(
                    Number(text, "y") * scale,
                    (page.Height - at.Y) * MillimetresPerPoint,
                    0.5 * MillimetresPerPoint
                );
            }

            next += word.Length;
        }

        Assert.Equal(letters.Count, next);
    }

    private static byte[] RenderElsewhere(string svg)
    {
        using var process = Process.Start(
            new ProcessStartInfo("dotnet", [typeof(Program).Assembly.Location, "pdf"])
            {
                UseShellExecute = false,
                RedirectStandardInput = true,
                RedirectStandardOutput = true,
                StandardInputEncoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false),
            }
        )!;
        process.StandardInput.Write(svg);
        process.StandardInput.Close();
        using var pdf = new MemoryStream();
        process.StandardOutput.BaseStream.CopyTo(pdf);
        process.WaitForExit();
        return pdf.ToArray();
    }

    private static string Small(string paperWidth, string paperHeight) =>
        $"""
            <svg xmlns='http://www.w3.org/2000/svg' width='{paperWidth}mm' height='{paperHeight}mm' viewBox='0 0 100.2 50.1' style="font-variant-ligatures:none;font-feature-settings:'kern' 0,'liga' 0,'calt' 0">
            <title>small</title><text x='80' y='40' font-size='4' font-family='Inter'>→ 10 %</text>
            </svg>
            """;

    private static double Millimetres(XElement drawing, string name) =>
        double.Parse(((string)drawing.Attribute(name)!)[..^"mm".Length], CultureInfo.InvariantCulture);

    private static double Number(XElement element, string name) =>
        double.Parse((string)element.Attribute(name)!, CultureInfo.InvariantCulture);
}
