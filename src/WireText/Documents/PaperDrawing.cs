using System.Collections.Immutable;
using System.Globalization;
using WireText.Drawing.Shapes;

namespace WireText.Documents;

/// <summary>A drawing on paper of a given size, at a scale that is kept: what is larger than a page goes over several.</summary>
public static class PaperDrawing
{
    /// <summary>Smaller letters are not read at the bench, in millimetres of size.</summary>
    private const double SmallestLetter = 2;

    /// <summary>Thinner wires lose their colour on a print, in millimetres.</summary>
    private const double ThinnestWire = 0.4;

    /// <summary>The pages, from left to right and from the top down.</summary>
    /// <param name="scale">Millimetres of paper for a millimetre of the picture.</param>
    public static ImmutableArray<Page> Of(Picture picture, double scale, Paper paper, string foot)
    {
        var caption = string.Create(
            CultureInfo.InvariantCulture,
            $"Seen from behind, {scale * 100:0.#} % of true size"
        );
        var drafts = FigurePages.Of(new Block.Figure(picture.Title, picture, caption), scale, paper);
        return PageFeet.Finish(drafts, picture.Title, foot, picture.Theme);
    }

    /// <summary>The scale at which the picture fits on one page; not above the one that is wanted.</summary>
    public static double ScaleToFit(Picture picture, double wanted, Paper paper) =>
        Math.Min(
            wanted,
            FigurePages
                .WindowsOf(paper)
                .Max(window => Math.Min(window.Width / picture.Page.Width, window.Height / picture.Page.Height))
        );

    /// <summary>Why a picture cannot be read at a scale; null when it can.</summary>
    public static string? TooSmall(Picture picture, double scale)
    {
        var letter = LettersOf(picture.Items, scale).DefaultIfEmpty(double.PositiveInfinity).Min();
        var wire = WiresOf(picture.Items, scale).DefaultIfEmpty(double.PositiveInfinity).Min();
        return letter < SmallestLetter
                ? string.Create(
                    CultureInfo.InvariantCulture,
                    $"letters would be {letter:0.0} mm large, and below {SmallestLetter:0} mm they are not read at the bench"
                )
            : wire < ThinnestWire
                ? string.Create(
                    CultureInfo.InvariantCulture,
                    $"wires would be {wire:0.00} mm wide, and below {ThinnestWire:0.0} mm they lose their colour"
                )
            : null;
    }

    private static IEnumerable<double> LettersOf(ImmutableArray<PictureItem> items, double scale) =>
        items.SelectMany(item =>
            item switch
            {
                TextItem text => [text.Size * scale],
                PictureGroup group => LettersOf(group.Items, scale),
                PictureView view => LettersOf(view.Items, scale * view.Scale),
                _ => Enumerable.Empty<double>(),
            }
        );

    private static IEnumerable<double> WiresOf(ImmutableArray<PictureItem> items, double scale) =>
        items.SelectMany(item =>
            item switch
            {
                PathShape { Class: "core" } core => [core.Paint.LineWidth * scale],
                PictureGroup group => WiresOf(group.Items, scale),
                PictureView view => WiresOf(view.Items, scale * view.Scale),
                _ => Enumerable.Empty<double>(),
            }
        );
}
