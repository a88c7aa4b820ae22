using System.Buffers;

namespace WireText.Measuring;

/// <summary>Where the ink of a text is: the drawing states the width, the letters say whether any hangs below the line.</summary>
internal static class TextBounds
{
    /// <summary>The height of a capital or a tall letter, in font sizes; common to sans-serif faces.</summary>
    private const double Rise = 0.75;

    /// <summary>How far a letter such as g hangs below the line, in font sizes.</summary>
    private const double Drop = 0.2;

    private static readonly SearchValues<char> Hanging = SearchValues.Create("gjpqyQµμ,;()[]{}|/_");

    /// <exception cref="UnreadablePictureException">It has no width, or a transform other than a quarter turn to the left.</exception>
    public static Frame Of(Element text, string content)
    {
        var at = new Spot(text.Number("x"), text.Number("y"));
        var size = text.Size("font-size");
        var width = text.Size("textLength");
        var left = text.Value("text-anchor") switch
        {
            "middle" => -width / 2,
            "end" => -width,
            _ => 0,
        };
        var drop = content.AsSpan().ContainsAny(Hanging) ? Drop * size : 0;
        var level = new Frame(at.X + left, at.Y - (Rise * size), at.X + left + width, at.Y + drop);
        return PivotOf(text) is { } pivot ? TurnedLeft(level, pivot) : level;
    }

    private static Frame TurnedLeft(Frame frame, Spot pivot) =>
        new(
            pivot.X + frame.Top - pivot.Y,
            pivot.Y + pivot.X - frame.Right,
            pivot.X + frame.Bottom - pivot.Y,
            pivot.Y + pivot.X - frame.Left
        );

    private static Spot? PivotOf(Element text)
    {
        if (text.Value("transform") is not { } transform)
        {
            return null;
        }

        if (
            transform.StartsWith("rotate(", StringComparison.Ordinal)
            && transform.EndsWith(')')
            && transform["rotate(".Length..^1].Split([' ', ','], StringSplitOptions.RemoveEmptyEntries)
                is [var angle, var x, var y]
            && Millimetres.Parse(angle) == -90
        )
        {
            return new Spot(Millimetres.Parse(x), Millimetres.Parse(y));
        }

        throw new UnreadablePictureException($"a text has the transform '{transform}'; only rotate(-90 x y) is read");
    }
}
