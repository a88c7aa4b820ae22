using System.Globalization;
using WireText.Cli.Hosting;

namespace WireText.Cli.Arguments;

/// <summary>Reads a scale as it stands on a drawing, paper to real thing: 1:1 is full size, 1:2 half of it, 2:1 twice (ISO 5455).</summary>
internal static class ScaleRatio
{
    private const int Most = 100;

    /// <summary>Millimetres of paper for a millimetre of the real thing.</summary>
    /// <exception cref="CannotException">The text is no such scale; the message says what would be.</exception>
    public static double Read(string text)
    {
        var sides = text.Split(':');
        return sides.Length == 2 && Side(sides[0]) is { } paper && Side(sides[1]) is { } real
            ? (double)paper / real
            : throw new CannotException(
                $"--scale {text}: a scale is PAPER:REAL, two whole numbers from 1 to {Most}; write 1:1 for true size, 1:2 for half of it, 2:1 for twice"
            );
    }

    private static int? Side(string text) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var value) && value is >= 1 and <= Most
            ? value
            : null;
}
