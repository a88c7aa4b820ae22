using System.Collections.Immutable;
using System.Globalization;
using WireText.Geometry;
using WireText.Text;

namespace WireText.Documents;

/// <summary>A sheet of paper, upright.</summary>
/// <param name="Size">In millimetres.</param>
public sealed record Paper(string Name, Size Size)
{
    private const double Shortest = 100;
    private const double Longest = 2000;

    /// <summary>ISO 216.</summary>
    public static readonly Paper A4 = new("a4", new Size(210, 297));

    /// <summary>The named sizes: ISO 216, and ANSI/ASME Y14.1 in inches of 25.4 mm.</summary>
    public static ImmutableArray<Paper> Named { get; } =
    [
        A4,
        new("letter", new Size(8.5 * 25.4, 11 * 25.4)),
        new("a3", new Size(297, 420)),
        new("tabloid", new Size(11 * 25.4, 17 * 25.4)),
    ];

    /// <summary>A name, or a width and a height in millimetres such as <c>210x297</c>.</summary>
    public static Read<Paper> Read(string text)
    {
        if (Named.FirstOrDefault(paper => Naming.Alike(paper.Name, text)) is { } named)
        {
            return Text.Read.Good(named);
        }

        var sides = text.Split('x', 'X');
        return sides.Length == 2 && Side(sides[0]) is { } width && Side(sides[1]) is { } height
            ? Text.Read.Good(new Paper(text, new Size(width, height)))
            : Text.Read.Bad<Paper>(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"paper is {string.Join(", ", Named.Select(paper => paper.Name))}, or its width and height in millimetres from {Shortest:0} to {Longest:0}, such as 210x297"
                )
            );
    }

    private static double? Side(string text) =>
        double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var side)
        && side is >= Shortest and <= Longest
            ? side
            : null;
}
