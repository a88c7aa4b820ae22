using System.Buffers.Binary;
using System.Diagnostics;
using System.Text;
using SkiaSharp;

namespace WireText.Raster;

public class PngRendererTests
{
    [Fact]
    public void Render_AtDotsPerInch_RoundsThePixelsUpAndRecordsTheResolution()
    {
        var png = PngRenderer.Render(Svg("", width: "100.2", height: "50"), new PngOptions { Dpi = 254 });

        using var bitmap = SKBitmap.Decode(png);
        Assert.Equal((1002, 500), (bitmap.Width, bitmap.Height));
        // PNG specification, 11.3.5.3: pHYs holds pixels per metre; 254 dots per inch are 10 000.
        Assert.Equal("pHYs", Encoding.ASCII.GetString(png, 37, 4));
        Assert.Equal(10_000u, BinaryPrimitives.ReadUInt32BigEndian(png.AsSpan(41)));
        Assert.Equal(10_000u, BinaryPrimitives.ReadUInt32BigEndian(png.AsSpan(45)));
        Assert.Equal(1, png[49]);
    }

    [Theory]
    [InlineData(333, 333, 167)]
    [InlineData(1, 1, 1)]
    public void Render_ToAWidth_HasThatWidthAndRoundsTheHeightUp(int asked, int width, int height)
    {
        using var bitmap = SKBitmap.Decode(
            PngRenderer.Render(Svg("", "100", "50"), new PngOptions { WidthPixels = asked })
        );

        Assert.Equal((width, height), (bitmap.Width, bitmap.Height));
    }

    [Theory]
    [InlineData(1_000_000.0, null)]
    [InlineData(0.0, null)]
    [InlineData(double.NaN, null)]
    [InlineData(double.PositiveInfinity, null)]
    [InlineData(96.0, 0)]
    [InlineData(96.0, -3)]
    [InlineData(96.0, int.MaxValue)]
    public void Render_BeyondTheLimits_SaysSo(double dpi, int? width) =>
        Assert.Throws<PictureSizeException>(() =>
            PngRenderer.Render(Svg("", "100", "50"), new PngOptions { Dpi = dpi, WidthPixels = width })
        );

    [Fact]
    public void Render_TooLarge_NamesASizeThatWorks()
    {
        var refusal = Assert.Throws<PictureSizeException>(() =>
            PngRenderer.Render(Svg("", "20000", "20000"), new PngOptions { Dpi = 300 })
        );

        Assert.Contains(
            "up to 10 dots per inch, or 8000 pixels across, will do",
            refusal.Message,
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData("not XML")]
    [InlineData("<svg xmlns='http://www.w3.org/2000/svg' width='10' height='10'/>")]
    [InlineData("<svg xmlns='http://www.w3.org/2000/svg' width='-1mm' height='10mm'/>")]
    public void Render_OfSomethingElse_SaysSo(string text) =>
        Assert.Throws<ArgumentException>(() => PngRenderer.Render(text, new PngOptions()));

    [Fact]
    public void Render_Transparent_LeavesThePaperOut()
    {
        var svg = Svg("<rect class='paper' width='100' height='50' fill='#FCFBF8'/>", "100", "50");

        using var paper = SKBitmap.Decode(PngRenderer.Render(svg, new PngOptions { WidthPixels = 20 }));
        using var none = SKBitmap.Decode(
            PngRenderer.Render(svg, new PngOptions { WidthPixels = 20, IsTransparent = true })
        );
        Assert.Equal(new SKColor(0xFC, 0xFB, 0xF8), paper.GetPixel(5, 5));
        Assert.Equal(0, none.GetPixel(5, 5).Alpha);
    }

    [Fact]
    public void Render_OfText_PutsInkWhereItStands()
    {
        using var bitmap = SKBitmap.Decode(
            PngRenderer.Render(Svg(Text("Inter, sans-serif", "HHH"), "100", "50"), new PngOptions { WidthPixels = 200 })
        );

        // Three capitals of 0.73 × 10 mm standing on y = 30 from x = 10: 2 pixels a millimetre.
        Assert.InRange(Ink(bitmap, SKRectI.Create(20, 44, 50, 18)), 90, 400);
        Assert.Equal(0, Ink(bitmap, SKRectI.Create(0, 64, 200, 36)));
    }

    [Theory]
    [InlineData("serif")]
    [InlineData("'DejaVu Sans'")]
    [InlineData("'No such family'")]
    public void Render_InAnyFamily_DrawsThePackagedTypeface(string family) =>
        Assert.Equal(
            PngRenderer.Render(Svg(Text("Inter", "Agf 5"), "100", "50"), new PngOptions()),
            PngRenderer.Render(Svg(Text(family, "Agf 5"), "100", "50"), new PngOptions())
        );

    [Fact]
    public void Render_WithoutAnyFontOnTheMachine_GivesTheSameBytes()
    {
        // The sharp and the character after it are in fonts of many machines, but not in ours.
        var svg = Svg(Text("Inter, sans-serif", "Agf ♯ 漢 🎸"), "100", "50");

        var here = RenderElsewhere(svg, noFonts: false);
        var bare = RenderElsewhere(svg, noFonts: true);

        Assert.Equal(here, bare);
        Assert.Equal(here, PngRenderer.Render(svg, new PngOptions { WidthPixels = 600 }));
    }

    private static byte[] RenderElsewhere(string svg, bool noFonts)
    {
        var start = new ProcessStartInfo("dotnet", [typeof(Program).Assembly.Location])
        {
            UseShellExecute = false,
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            StandardInputEncoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false),
        };
        if (noFonts)
        {
            start.Environment["FONTCONFIG_FILE"] = "/dev/null";
            start.Environment["FONTCONFIG_PATH"] = "/dev/null";
            start.Environment["HOME"] = "/dev/null";
        }

        using var process = Process.Start(start)!;
        process.StandardInput.Write(svg);
        process.StandardInput.Close();
        using var png = new MemoryStream();
        process.StandardOutput.BaseStream.CopyTo(png);
        process.WaitForExit();
        Assert.Equal(0, process.ExitCode);
        return png.ToArray();
    }

    private static int Ink(SKBitmap bitmap, SKRectI box)
    {
        var ink = 0;
        for (var y = box.Top; y < box.Bottom; y++)
        {
            for (var x = box.Left; x < box.Right; x++)
            {
                ink += bitmap.GetPixel(x, y).Red < 128 ? 1 : 0;
            }
        }

        return ink;
    }

    private static string Text(string family, string text) =>
        $"<text x='10' y='30' font-size='10' font-family=\"{family}\">{text}</text>";

    private static string Svg(string content, string width, string height) =>
        $"<svg xmlns='http://www.w3.org/2000/svg' width='{width}mm' height='{height}mm' viewBox='0 0 {width} {height}'>{content}</svg>";
}
