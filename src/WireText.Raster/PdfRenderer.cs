using System.Globalization;
using SkiaSharp;

namespace WireText.Raster;

/// <summary>Draws an SVG of ours as a PDF of one page in its true size. Text stays text and lines stay lines: same SVG, same bytes.</summary>
public static class PdfRenderer
{
    /// <summary>The longest side of a page in millimetres: 14,400 points (PDF 1.7, ISO 32000-1, annex C.2).</summary>
    public const double LongestSide = 14_400 / PointsPerInch * SvgSheet.MillimetresPerInch;

    private const double PointsPerInch = 72;

    /// <summary>Renders a whole SVG whose root gives its width and height in millimetres.</summary>
    /// <remarks>No date is written, and the page's size is rounded to whole points by the PDF library; what is on it is not.</remarks>
    /// <exception cref="PictureSizeException">The page is longer than <see cref="LongestSide"/>.</exception>
    /// <exception cref="ArgumentException">The text is not such an SVG.</exception>
    public static byte[] Render(string svg) => Render([SvgSheet.Read(svg)]);

    /// <summary>Renders several, each as a page; the title is that of the first.</summary>
    /// <inheritdoc cref="Render(string)"/>
    public static byte[] Render(IEnumerable<string> pages) => Render([.. pages.Select(SvgSheet.Read)]);

    private static byte[] Render(SvgSheet[] sheets)
    {
        foreach (var sheet in sheets)
        {
            RefuseTooLarge(sheet);
        }

        using var content = new MemoryStream();
        using (var stream = new SKManagedWStream(content))
        using (
            var pdf = SKDocument.CreatePdf(
                stream,
                new SKDocumentPdfMetadata { Title = sheets[0].Title, Producer = "WireText" }
            )
        )
        {
            foreach (var sheet in sheets)
            {
                DrawPage(pdf, sheet);
            }

            pdf.Close();
        }

        return content.ToArray();
    }

    private static void DrawPage(SKDocument pdf, SvgSheet sheet)
    {
        var (drawing, unitsPerMillimetre) = sheet.LoadExactly();
        using var shapes = drawing;
        var canvas = pdf.BeginPage(Points(sheet.Width), Points(sheet.Height));
        canvas.Scale(Points(1 / unitsPerMillimetre));
        canvas.DrawPicture(shapes.Picture);
        pdf.EndPage();
    }

    private static void RefuseTooLarge(SvgSheet sheet)
    {
        if (Math.Max(sheet.Width, sheet.Height) > LongestSide)
        {
            throw new PictureSizeException(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"a page of {sheet.Width:F0} × {sheet.Height:F0} mm is too large for a PDF; up to {LongestSide:F0} mm will do"
                )
            );
        }
    }

    private static float Points(double millimetres) =>
        (float)(millimetres / SvgSheet.MillimetresPerInch * PointsPerInch);
}
