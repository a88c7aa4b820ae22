namespace WireText.Raster;

/// <summary>Draws an SVG from standard input as a PNG on standard output, so that a test can do it in a process whose fonts it decides.</summary>
internal static class Program
{
    public static int Main()
    {
        using var output = Console.OpenStandardOutput();
        output.Write(PngRenderer.Render(Console.In.ReadToEnd(), new PngOptions { WidthPixels = 600 }));
        return 0;
    }
}
