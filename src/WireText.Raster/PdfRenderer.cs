using System.Collections.Immutable;
using System.Globalization;
using SkiaSharp;
using WireText.Documents;
using WireText.Output;

namespace WireText.Raster;

/// <summary>Draws an SVG of ours as a PDF of one page in its true size. Text stays text and lines stay lines: same SVG, same bytes.</summary>
public static class PdfRenderer
{
    /// <summary>The longest side of a page in millimetres: 14,400 points (PDF 1.7, ISO 32000-1, annex C.2).</summary>
    public const double LongestSide = 14_400 / PointsPerInch * SvgSheet.MillimetresPerInch;

    private const double PointsPerInch = 72;

    /// <summary>Renders a whole SVG whose root gives its width and height in millimetres.</summary>
    /// <remarks>No date is written.</remarks>
    /// <exception cref="PictureSizeException">The page is longer than <see cref="LongestSide"/>.</exception>
    /// <exception cref="ArgumentException">The text is not such an SVG.</exception>
    public static byte[] Render(string svg) =>
        Render(
            [SvgSheet.Read(svg)],
            [
                [],
            ]
        );

    /// <summary>Renders the pages of a document, their headings as bookmarks; the title is that of the first.</summary>
    /// <inheritdoc cref="Render(string)"/>
    public static byte[] Render(ImmutableArray<Page> pages) =>
        Render(
            [.. pages.Select(page => SvgSheet.Read(SvgWriter.Write(page.Picture)))],
            [.. pages.Select(page => page.Bookmarks)]
        );

    private static byte[] Render(SvgSheet[] sheets, ImmutableArray<Bookmark>[] bookmarks)
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
            foreach (var (sheet, loaded) in sheets.Zip(Load(sheets)))
            {
                DrawPage(pdf, sheet, loaded.GetAwaiter().GetResult());
            }

            pdf.Close();
        }

        return PdfSupplement.Add(
            content.ToArray(),
            [
                .. sheets.Select(
                    (sheet, i) => (Points(sheet.Width), Points(sheet.Height), (IReadOnlyList<Bookmark>)bookmarks[i])
                ),
            ]
        );
    }

    private static void DrawPage(SKDocument pdf, SvgSheet sheet, (SKPicture Drawing, double UnitsPerMillimetre) loaded)
    {
        using var drawing = loaded.Drawing;
        var canvas = pdf.BeginPage((float)Points(sheet.Width), (float)Points(sheet.Height));
        canvas.Scale((float)Points(1 / loaded.UnitsPerMillimetre));
        canvas.DrawPicture(drawing);
        pdf.EndPage();
    }

    /// <summary>Pages know nothing of each other: they are read side by side.</summary>
    private static Task<(SKPicture Drawing, double UnitsPerMillimetre)>[] Load(SvgSheet[] sheets) =>
        [.. sheets.Select(sheet => Task.Run(sheet.LoadExactly))];

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

    internal static double Points(double millimetres) => millimetres / SvgSheet.MillimetresPerInch * PointsPerInch;
}
