using WireText.Text;

namespace WireText.Syntax.Parsing;

/// <summary>Says what a line lacks: everything that could have stood at the furthest place that was reached.</summary>
internal static class LineExplanation
{
    /// <summary>A longer word is cut in a message, in UTF-16 units: it still shows which one is meant.</summary>
    private const int LongestShown = 40;

    public static Finding Of(LineReading reading)
    {
        var word = reading.Wrong.Text;
        var expected = OneOf(reading.Expected);
        var near = word.Length == 0 ? null : DidYouMean.Nearest(word, Literals(reading.Expected), allowed: 1);
        var message =
            reading.Reason
            ?? (word.Length == 0 ? $"expected {expected}" : $"expected {expected}, not '{Shorten(word)}'");
        var help =
            reading.Help is { } written ? written
            : near is not null ? $"did you mean '{near}'?"
            : reading.Reason is not null && expected.Length > 0 ? $"write {expected} here"
            : null;
        return LineFindings.Expected.At(PlaceOf(reading), message, help);
    }

    /// <summary>A word as a message shows it.</summary>
    public static string Shorten(string word) => word.Length <= LongestShown ? word : $"{word[..(LongestShown - 3)]}…";

    /// <summary>A line that ended too soon is marked at its last word.</summary>
    private static SourceLocation PlaceOf(LineReading reading)
    {
        if (reading.Wrong.Span.Length > 0)
        {
            return reading.Wrong;
        }

        var line = reading.Content.Text;
        return reading.Content.Within(line.LastIndexOfAny([' ', '\t']) + 1, line.Length);
    }

    private static string OneOf(IReadOnlyList<string> expected) =>
        expected.Count switch
        {
            0 => "",
            1 => expected[0],
            _ => $"{string.Join(", ", expected.Take(expected.Count - 1))} or {expected[^1]}",
        };

    /// <summary>What of the expected could be typed just so.</summary>
    private static IEnumerable<string> Literals(IEnumerable<string> expected) =>
        expected
            .Where(what => what.StartsWith('\'') && what.IndexOf('\'', 1) > 0)
            .Select(what => what[1..what.IndexOf('\'', 1)]);
}
