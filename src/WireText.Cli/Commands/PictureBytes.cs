using System.Text;
using WireText.Cli.Arguments;
using WireText.Cli.Hosting;
using WireText.Raster;

namespace WireText.Cli.Commands;

/// <summary>A picture as the bytes of a file.</summary>
internal static class PictureBytes
{
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
