namespace WireText.Raster;

/// <summary>Draws an SVG from standard input as a PNG, or a PDF when asked for, on standard output, so that a test can do it in a process whose fonts it decides.</summary>
internal static class Program
{
    public static int Main(string[] args)
    {
        using var output = Console.OpenStandardOutput();
        var svg = Console.In.ReadToEnd();
        output.Write(
            args is ["pdf"] ? PdfRenderer.Render(svg) : PngRenderer.Render(svg, new PngOptions { WidthPixels = 600 })
        );
        return 0;
    }
}
