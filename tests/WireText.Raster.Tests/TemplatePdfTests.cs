using UglyToad.PdfPig;
using UglyToad.PdfPig.Core;
using WireText.Documents;
using WireText.Templates;
using WireText.Testing;
using WireText.Text;

namespace WireText.Raster;

/// <summary>A template, read back by a library that had no part in writing it: what is measured on the print is what the file says.</summary>
public class TemplatePdfTests
{
    private const double MillimetresPerPoint = 25.4 / 72;
    private const double Tolerance = 0.1;

    private const string Plate = """
        circuit "Plate"
        switch sel lever-3way
        pot vol 250k audio
        pot tone 250k audio hole=8mm
        jack out mono hole=12.3
        place sel at 30,30
        place vol at 75,31
        place tone at 105.5,30
        place out at 140,60 turned 90
        """;

    /// <summary>The round holes of the plate, from the file: names are for who reads the test.</summary>
    private static readonly (double X, double Y, double Diameter)[] Round =
    [
        (30 - 20.6, 30, 3.5),
        (30 + 20.6, 30, 3.5),
        (75, 31, 10),
        (105.5, 30, 8),
        (140, 60, 12.3),
    ];

    [Theory]
    [InlineData(TemplateSide.Behind, 1, "a4")]
    [InlineData(TemplateSide.Front, -1, "a4")]
    [InlineData(TemplateSide.Front, -1, "letter")]
    public void Holes_OnThePage_AreTrueToATenthOfAMillimetre(TemplateSide side, int sign, string paper)
    {
        var expected = Round.Select(hole => (X: sign * hole.X, hole.Y, hole.Diameter)).ToList();
        using var pdf = PdfDocument.Open(Render(Plate, side, Paper.Read(paper).Value!));

        var circles = CirclesOf(pdf.GetPage(2));

        var found = expected
            .Select(hole =>
                Assert.Single(
                    circles,
                    circle => Math.Abs(circle.Diameter - hole.Diameter) < Tolerance && IsAt(circle, hole)
                )
            )
            .ToList();
        Assert.Equal(Round.Length, found.Count);

        bool IsAt((double X, double Y, double Diameter) circle, (double X, double Y, double Diameter) hole)
        {
            // Whatever the template's place on the page: by the way from the hole that no other is as large as.
            var first = circles.Single(one => Math.Abs(one.Diameter - 12.3) < Tolerance);
            return Math.Abs(circle.X - first.X - (hole.X - expected[^1].X)) < Tolerance
                && Math.Abs(circle.Y - first.Y - (hole.Y - expected[^1].Y)) < Tolerance;
        }
    }

    [Fact]
    public void Slot_OnThePage_IsTrueToATenthOfAMillimetre()
    {
        using var pdf = PdfDocument.Open(Render(Plate, TemplateSide.Front, Paper.A4));

        Assert.Contains(
            BoxesOf(pdf.GetPage(2)),
            box => Math.Abs(box.Width - 26) < Tolerance && Math.Abs(box.Height - 2.5) < Tolerance
        );
    }

    [Theory]
    [InlineData(TemplateSide.Front, "Seenfromthefront:mirrored")]
    [InlineData(TemplateSide.Behind, "Seenfrombehind,asthedrawing")]
    public void Pages_SayTheirSideAndProveTheirScale(TemplateSide side, string words)
    {
        using var pdf = PdfDocument.Open(Render(Plate, side, Paper.A4));

        var template = pdf.GetPage(2);
        Assert.Equal(2, pdf.NumberOfPages);
        Assert.Contains(words, Words(template.Text), StringComparison.Ordinal);
        Assert.Contains("50mm:measureit", Words(template.Text), StringComparison.Ordinal);
        Assert.Contains(
            BoxesOf(template),
            box => Math.Abs(box.Width - 50) < Tolerance && Math.Abs(box.Height - 1.6) < Tolerance
        );
        Every.Item(
            pdf.GetPages(),
            page =>
            {
                Assert.Equal(210, Math.Min(page.Width, page.Height) * MillimetresPerPoint, 0.1);
                Assert.Equal(297, Math.Max(page.Width, page.Height) * MillimetresPerPoint, 0.1);
            }
        );
        Every.Item(
            pdf.GetPages().SelectMany(page => page.Letters),
            letter => Assert.True(letter.PointSize * MillimetresPerPoint >= 2 - 0.01, letter.Value)
        );
    }

    /// <summary>Two holes 400 mm apart, on two pages that overlap.</summary>
    [Fact]
    public void Template_LargerThanThePaper_GoesOverSeveralPages()
    {
        const string Long = "pot a 250k audio\npot b 250k audio\nplace a at 0,0\nplace b at 400,0\n";
        using var pdf = PdfDocument.Open(Render(Long, TemplateSide.Behind, Paper.A4));

        Assert.Equal(3, pdf.NumberOfPages);
        Every.Item(
            pdf.GetPages().Skip(1),
            page =>
            {
                Assert.Contains("cutatthemarks", Words(page.Text), StringComparison.Ordinal);
                Assert.Contains("seenfrombehind", Words(page.Text), StringComparison.Ordinal);
                Assert.Contains(CirclesOf(page), circle => Math.Abs(circle.Diameter - 10) < Tolerance);
            }
        );
    }

    [Fact]
    public void Bytes_AreTheSameEachTime() =>
        Assert.Equal(Render(Plate, TemplateSide.Front, Paper.A4), Render(Plate, TemplateSide.Front, Paper.A4));

    private static byte[] Render(string text, TemplateSide side, Paper paper)
    {
        var circuit = Compilation.Of(new SourceText("plate.wiring", text), NoSources.Instance).Circuit!;
        var document = DrillingTemplate.Compose(circuit, TemplateHoles.Of(circuit, side), "plate.wiring");
        return PdfRenderer.Render(DocumentSetter.Set(document, paper));
    }

    /// <summary>What is as wide as high and round, in millimetres from the page's upper left corner; the line has no width in it.</summary>
    private static List<(double X, double Y, double Diameter)> CirclesOf(UglyToad.PdfPig.Content.Page page) =>
        [
            .. page
                .Paths.Where(path =>
                    path.SelectMany(sub => sub.Commands).Any(command => command is PdfSubpath.CubicBezierCurve)
                )
                .Select(path => path.GetBoundingRectangle())
                .OfType<PdfRectangle>()
                .Where(box => Math.Abs(box.Width - box.Height) < 0.01)
                .Select(box =>
                    (
                        box.Centroid.X * MillimetresPerPoint,
                        (page.Height - box.Centroid.Y) * MillimetresPerPoint,
                        box.Width * MillimetresPerPoint
                    )
                ),
        ];

    private static List<(double Width, double Height)> BoxesOf(UglyToad.PdfPig.Content.Page page) =>
        [
            .. page
                .Paths.Select(path => path.GetBoundingRectangle())
                .OfType<PdfRectangle>()
                .Select(box => (box.Width * MillimetresPerPoint, box.Height * MillimetresPerPoint)),
        ];

    private static string Words(string text) => text.Replace(" ", "", StringComparison.Ordinal);
}
