using System.Collections.Immutable;
using System.Globalization;
using WireText.Text;

namespace WireText.Parts;

/// <summary>Reads a taper: a word, or points such as <c>0:0%,5:20%,10:100%</c>.</summary>
public static class TaperReader
{
    /// <summary>What the trade says for some of them as well.</summary>
    private static readonly ImmutableArray<(string Said, Taper Taper)> AlsoSaid =
    [
        ("log", Taper.Audio),
        ("logarithmic", Taper.Audio),
        ("lin", Taper.Linear),
        ("reverse-log", Taper.ReverseAudio),
        ("antilog", Taper.ReverseAudio),
    ];

    /// <summary>The words for tapers, one for each.</summary>
    public static IEnumerable<string> Words => Taper.Named.Select(t => t.Name);

    /// <summary>True for a word that means a taper by itself.</summary>
    public static bool IsWord(string text) => ByWord(text) is not null;

    /// <param name="problem">What is wrong; null when the taper could be read.</param>
    public static Taper? Read(string text, out string? problem)
    {
        problem = null;
        if (ByWord(text) is { } named)
        {
            return named;
        }

        if (!text.Contains(':', StringComparison.Ordinal))
        {
            var near = DidYouMean.Nearest(text, Words);
            problem =
                $"'{text}' is no taper; the words are {string.Join(", ", Words.Select(w => $"'{w}'"))}"
                + (near is null ? "" : $"; did you mean '{near}'?");
            return null;
        }

        return ReadPoints(text, out problem);
    }

    private static Taper? ByWord(string text) =>
        Taper.Named.FirstOrDefault(taper => Naming.Alike(taper.Name, text))
        ?? AlsoSaid.FirstOrDefault(word => Naming.Alike(word.Said, text)).Taper;

    private static Taper? ReadPoints(string text, out string? problem)
    {
        var points = ImmutableArray.CreateBuilder<TaperPoint>();
        foreach (var item in text.Split(','))
        {
            var halves = item.Split(':');
            if (
                halves.Length != 2
                || !TryNumber(halves[0], 10, out var travel)
                || !halves[1].EndsWith('%')
                || !TryNumber(halves[1][..^1], 100, out var percent)
            )
            {
                problem = $"'{item}' is no point of a taper; '5:20%' is 20 % at half travel";
                return null;
            }

            points.Add(new TaperPoint(travel, percent / 100));
        }

        var rises = Enumerable.Range(1, points.Count - 1).All(i => points[i].Travel > points[i - 1].Travel);
        if (points.Count < 2 || !rises || points[0].Travel != 0 || points[^1].Travel != 10)
        {
            problem = $"'{text}' must go from travel 0 to travel 10 in order, as in '0:0%,5:20%,10:100%'";
            return null;
        }

        problem = null;
        return new Taper(text, points.ToImmutable(), null, false);
    }

    private static bool TryNumber(string text, double most, out double number) =>
        double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out number)
        && number <= most;
}
