using System.Globalization;
using WireText.Text;

namespace WireText.Frames;

/// <summary>How large the pictures of a video are, in pixels.</summary>
public sealed record FrameSize(int Width, int Height)
{
    private const int Longest = 4096;

    /// <summary>From here on a frame is tall: its column lies under the drawing.</summary>
    private const double TallRatio = 1.5;

    /// <summary>On anything smaller the words leave the drawing no room.</summary>
    private static readonly FrameSize SmallestWide = new(960, 720);
    private static readonly FrameSize SmallestTall = new(720, 1280);

    public static readonly FrameSize FullHd = new(1920, 1080);

    internal bool IsTall => Height >= TallRatio * Width;

    /// <summary>A width and a height in pixels, such as <c>1280x720</c>.</summary>
    public static Read<FrameSize> Read(string text)
    {
        var sides = text.Split('x', 'X');
        return
            sides.Length == 2
            && Side(sides[0]) is { } width
            && Side(sides[1]) is { } height
            && new FrameSize(width, height) is var size
            && size.HoldsItsWords
            ? Text.Read.Good(size)
            : Text.Read.Bad<FrameSize>(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"a size is a width and a height in pixels such as {FullHd}: from {SmallestWide}, or tall from {SmallestTall}, to {Longest} on a side"
                )
            );
    }

    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Width}x{Height}");

    private bool HoldsItsWords
    {
        get
        {
            var least = IsTall ? SmallestTall : SmallestWide;
            return Width >= least.Width && Height >= least.Height;
        }
    }

    private static int? Side(string text) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var side) && side is > 0 and <= Longest
            ? side
            : null;
}
