using WireText.Documents;
using WireText.Drawing.Lettering;
using WireText.Drawing.Shapes;
using WireText.Geometry;

namespace WireText.Tests.Documents;

/// <summary>How small a picture may become: no letter below 2 mm, no wire below 0.4 mm.</summary>
public class PaperDrawingTests
{
    /// <summary>The thinnest core that is drawn, in millimetres.</summary>
    private const double Core = 0.6;

    [Theory]
    [InlineData(1, 1, false)]
    [InlineData(1, 0.67, false)] // 0.402 mm
    [InlineData(1, 0.66, true)] // 0.396 mm
    [InlineData(0.8, 1, false)] // shown smaller on the sheet: 0.48 mm
    [InlineData(0.8, 0.8, true)] // 0.384 mm
    public void AWire_BelowFourTenths_IsTooThin(double view, double scale, bool isTooSmall)
    {
        var told = PaperDrawing.TooSmall(PictureOf(view, letters: 4), scale);

        Assert.Equal(isTooSmall, told is not null);
        Assert.True(!isTooSmall || told!.StartsWith("wires would be 0.", StringComparison.Ordinal), told);
    }

    [Theory]
    [InlineData(0.84, false)] // 2.016 mm
    [InlineData(0.83, true)] // 1.992 mm
    public void ALetter_BelowTwoMillimetres_IsTooSmall(double scale, bool isTooSmall)
    {
        var told = PaperDrawing.TooSmall(PictureOf(view: 1, letters: 2.4), scale);

        Assert.Equal(isTooSmall, told is not null);
        Assert.True(!isTooSmall || told!.StartsWith("letters would be ", StringComparison.Ordinal), told);
    }

    /// <summary>What is no wire may be thinner.</summary>
    [Fact]
    public void ALineThatIsNoWire_MayBeThinner()
    {
        var line = PathShape.Through("detail", Paint.Stroked(Theme.Print.Ink, 0.2), new Point(0, 0), new Point(5, 0));

        Assert.Null(PaperDrawing.TooSmall(Picture(line), 1));
    }

    private static Picture PictureOf(double view, double letters)
    {
        var core = PathShape.Through("core", Paint.Stroked(Theme.Print.Ink, Core), new Point(0, 0), new Point(5, 0));
        var text = TextItem.Start("name", "vol", new Point(0, 5), TextWeight.Regular, letters, Theme.Print.Ink);
        return Picture(new PictureView("view", new Point(0, 0), view, [new PictureGroup("wire", [core])]), text);
    }

    private static Picture Picture(params PictureItem[] items) =>
        new(new Size(10, 10), "Test", "", Theme.Print, [.. items]);
}
