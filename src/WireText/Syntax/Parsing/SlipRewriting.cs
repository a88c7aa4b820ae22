using WireText.Quantities;
using WireText.Text;

namespace WireText.Syntax.Parsing;

/// <summary>Takes usual slips out of a line, each by itself. Whether the line then reads is for others to see.</summary>
internal static class SlipRewriting
{
    private static readonly string[] CurlyQuotes = ["“", "”", "„", "‟", "«", "»"];

    /// <summary>Longer ones first, since a shorter one may be a piece of them.</summary>
    private static readonly string[] Arrows = ["-->", "->", "=>", "→", "⟶"];

    /// <summary>Signs that stand between coils.</summary>
    private static readonly string[] JoinSigns = ["+", "&", "and"];

    public static string StraightenQuotes(string line) =>
        CurlyQuotes.Aggregate(line, (text, quote) => text.Replace(quote, "\"", StringComparison.Ordinal));

    public static string? PutToForArrows(string line)
    {
        if (
            StartsWith(line, Keywords.Expect)
            || !Array.Exists(Arrows, arrow => line.Contains(arrow, StringComparison.Ordinal))
        )
        {
            return null;
        }

        foreach (var arrow in Arrows)
        {
            for (
                var at = line.IndexOf(arrow, StringComparison.Ordinal);
                at >= 0;
                at = line.IndexOf(arrow, StringComparison.Ordinal)
            )
            {
                line = $"{line[..at].TrimEnd()} to {line[(at + arrow.Length)..].TrimStart()}";
            }
        }

        return line;
    }

    /// <summary>A word that starts no line, and words in quotes behind it: <c>title "my guitar"</c> is <c>circuit "my guitar"</c>.</summary>
    public static string? NameTheCircuit(string line)
    {
        var word = line[..line.TakeWhile(char.IsLetter).Count()];
        var rest = line[word.Length..].Trim();
        var isKnown = Keywords
            .Statements.Concat(Keywords.StandardKinds)
            .Contains(word, StringComparer.OrdinalIgnoreCase);
        return !isKnown && rest is ['"', .., '"'] ? $"circuit {rest}" : null;
    }

    /// <summary><c>vol 2</c> is <c>vol.2</c>.</summary>
    public static string? JoinByDots(string line)
    {
        var (words, colour) = WireWords(line);
        if (colour < 0)
        {
            return null;
        }

        if (!words.Exists(word => IsTo(line, word)))
        {
            return null;
        }

        // From the end, so that earlier places stay where they are.
        var end = colour;
        for (var i = colour - 1; i >= 0; i--)
        {
            if (i > 0 && !IsTo(line, words[i]))
            {
                continue;
            }

            var isLug = end - i == 3 && !HasDot(line, words[i + 1]) && !HasDot(line, words[i + 2]);
            if (isLug)
            {
                line = $"{line[..words[i + 1].End]}.{line[words[i + 2].Start..]}";
            }

            end = i;
        }

        return line;
    }

    /// <summary><c>red white</c> is <c>red/white</c>.</summary>
    public static string? JoinStripe(string line)
    {
        var (words, colour) = WireWords(line);
        return colour >= 0 && colour + 1 < words.Count && IsColour(line, words[colour + 1])
            ? $"{line[..words[colour].End]}/{line[words[colour + 1].Start..]}"
            : null;
    }

    /// <summary>Puts a colour that stands between the lugs, or before them, behind the last of them.</summary>
    public static string? MoveColourBack(string line)
    {
        var (words, colour) = WireWords(line);
        if (colour < 1 || words.Skip(colour + 1).Any(word => IsColour(line, word)))
        {
            return null;
        }

        var last = words.FindLastIndex(word => !IsTo(line, word) && HasNoMark(line, word));
        return last <= colour
            ? null
            : string.Concat(
                line.AsSpan(0, words[colour].Start),
                line.AsSpan(words[colour + 1].Start, words[last].End - words[colour + 1].Start),
                $" {line[words[colour].Start..words[colour].End]}{line[words[last].End..]}"
            );
    }

    /// <summary>Puts <c>to</c> between lugs that follow one another.</summary>
    /// <remarks>Where no word is a colour that every file knows, the last may be one of the file's own.</remarks>
    public static string? PutToBetweenLugs(string line)
    {
        var (words, colour) = WireWords(line);
        colour = colour < 0 ? words.FindLastIndex(word => HasNoMark(line, word) && !HasDot(line, word)) : colour;
        for (var i = colour - 1; i > 1; i--)
        {
            var (before, after) = (words[i - 1], words[i]);
            if (!IsTo(line, before) && !IsTo(line, after) && (HasDot(line, before) || HasDot(line, after)))
            {
                line = line.Insert(after.Start, "to ");
            }
        }

        return line;
    }

    /// <summary>Puts <c>to</c> between two names without a dot, which are all that stands before the colour.</summary>
    /// <returns>Null where the line has another form: what three names mean nobody can say.</returns>
    public static string? PutToBetweenNames(string line)
    {
        var (words, colour) = WireWords(line);
        return colour == 3 && !words[1..3].Exists(word => IsTo(line, word) || HasDot(line, word))
            ? line.Insert(words[2].Start, "to ")
            : null;
    }

    /// <summary>Puts the colon behind the state of a claim that has none.</summary>
    public static string? PutColonBehindState(string line)
    {
        if (!StartsWith(line, Keywords.Expect) || line.Contains(':', StringComparison.Ordinal))
        {
            return null;
        }

        var words = LineScan.WordsOf(line);
        var last = words.FindLastIndex(word => line[word.Start..word.End].Contains('=', StringComparison.Ordinal));
        var state = last > 0 ? last : 1;
        return state < words.Count ? line.Insert(words[state].End, ":") : null;
    }

    /// <summary>The claim with a word between its coils where a sign stands there.</summary>
    /// <returns>Null where the line is no claim, or has no such sign.</returns>
    public static string? JoinCoils(string line, string word)
    {
        var colon = line.IndexOf(':', StringComparison.Ordinal);
        if (!StartsWith(line, Keywords.Expect) || colon < 0)
        {
            return null;
        }

        // A sign may stand in a word, and a tolerance starts with one: +-1%.
        var claim = line[(colon + 1)..].Replace("+-", "±", StringComparison.Ordinal);
        var apart = claim.Replace("+", " + ", StringComparison.Ordinal).Replace("&", " & ", StringComparison.Ordinal);
        var words = apart
            .Split(' ', StringSplitOptions.RemoveEmptyEntries)
            .Select(one => JoinSigns.Contains(one, StringComparer.OrdinalIgnoreCase) ? word : one)
            .ToList();
        return words.Contains(word, StringComparer.Ordinal) && !claim.Contains(word, StringComparison.OrdinalIgnoreCase)
            ? $"{line[..colon]}: {string.Join(' ', words)}"
            : null;
    }

    /// <summary>The colour that ends a wire's line right behind <c>to</c>, where a lug must stand; null in any other line.</summary>
    public static string? ColourInPlaceOfLug(string line)
    {
        var (words, colour) = WireWords(line);
        return colour > 1 && colour == words.Count - 1 && IsTo(line, words[colour - 1])
            ? line[words[colour].Start..words[colour].End]
            : null;
    }

    /// <summary>The words of a wire's line and where its first colour stands; -1 in a line of another kind, or without a colour.</summary>
    private static (List<TextSpan> Words, int Colour) WireWords(string line)
    {
        var words = StartsWith(line, "wire") || StartsWith(line, "cable") ? LineScan.WordsOf(line) : [];
        return (words, words.FindIndex(word => IsColour(line, word)));
    }

    private static bool StartsWith(string line, string keyword) =>
        line.StartsWith(keyword, StringComparison.OrdinalIgnoreCase)
        && line.Length > keyword.Length
        && line[keyword.Length] is ' ' or '\t';

    private static bool IsColour(string line, TextSpan word) => ColourPalette.Standard.Has(line[word.Start..word.End]);

    private static bool IsTo(string line, TextSpan word) => Naming.Alike(line[word.Start..word.End], "to");

    private static bool HasDot(string line, TextSpan word) => line.AsSpan(word.Start, word.Length).Contains('.');

    private static bool HasNoMark(string line, TextSpan word) =>
        line.AsSpan(word.Start, word.Length).IndexOfAny('=', '"') < 0
        && !Naming.Alike(line[word.Start..word.End], "sleeved");
}
