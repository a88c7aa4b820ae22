using System.Text;
using WireText.Cli.Arguments;
using WireText.Cli.Hosting;
using WireText.Documents;
using WireText.Drawing.Shapes;
using WireText.Raster;

namespace WireText.Cli.Commands;

/// <summary>A picture as the bytes of a file.</summary>
internal static class PictureBytes
{
    /// <summary>On pages of paper, as a PDF.</summary>
    /// <exception cref="CannotException">What was asked to fit would be too small to read.</exception>
    public static byte[] OnPaper(Picture picture, Paper paper, DrawRequest request, string foot)
    {
        var scale = request.IsFitted ? PaperDrawing.ScaleToFit(picture, request.Scale, paper) : request.Scale;
        if (request.IsFitted && PaperDrawing.TooSmall(picture, scale) is { } problem)
        {
            throw new CannotException(
                $"--fit: {problem}; leave --fit out for several pages at true size, or take larger paper"
            );
        }

        return PdfRenderer.Render(PaperDrawing.Of(picture, scale, paper, foot));
    }

    /// <exception cref="CannotException">It would be too large.</exception>
    public static byte[] Of(string svg, OutputFormat format, PngOptions png)
    {
        try
        {
            return format switch
            {
                OutputFormat.Png => PngRenderer.Render(svg, png),
                OutputFormat.Pdf => PdfRenderer.Render(svg),
                _ => Encoding.UTF8.GetBytes(svg),
            };
        }
        catch (PictureSizeException e)
        {
            throw new CannotException(e.Message);
        }
    }
}
