namespace WireText.Text;

/// <summary>Finds the word that someone probably meant to type.</summary>
public static class DidYouMean
{
    /// <summary>Longer words are never typos of a name; this also bounds the work for one comparison.</summary>
    internal const int LongestWord = 64;

    /// <summary>A word is not cut shorter; two letters begin too many words. Chosen.</summary>
    private const int ShortestCut = 3;

    /// <summary>The candidate that takes the fewest slips of the keyboard to turn into <paramref name="word"/>.</summary>
    /// <remarks>
    /// A slip is a letter too many, one missing, a wrong one, or two neighbours swapped; upper and lower case are
    /// one. One slip is allowed for each three letters of the longer word. Of equals the first candidate wins.
    /// </remarks>
    /// <param name="allowed">Slips that are allowed in a word too short for one by its length: 1 where a guess costs nothing.</param>
    /// <returns>Null when nothing is near enough to be worth a guess.</returns>
    public static string? Nearest(string word, IEnumerable<string> candidates, int allowed = 0)
    {
        if (word.Length is 0 or > LongestWord)
        {
            return null;
        }

        string? nearest = null;
        var fewest = int.MaxValue;
        foreach (var candidate in candidates)
        {
            var limit = Math.Min(fewest - 1, Math.Max(allowed, Math.Max(word.Length, candidate.Length) / 3));
            if (candidate.Length <= LongestWord && Math.Abs(candidate.Length - word.Length) <= limit)
            {
                var slips = Slips(word, candidate);
                if (slips <= limit)
                {
                    (nearest, fewest) = (candidate, slips);
                }
            }
        }

        return nearest;
    }

    /// <summary>The one candidate that the word begins with, or that begins with the word: <c>vol</c> for <c>volume</c>.</summary>
    /// <returns>Null when there is none, or several.</returns>
    public static string? CutShort(string word, IEnumerable<string> candidates)
    {
        var alike = candidates
            .Where(candidate => Math.Min(word.Length, candidate.Length) >= ShortestCut)
            .Where(candidate => Begins(candidate, word) || Begins(word, candidate))
            .Take(2)
            .ToList();
        return alike.Count == 1 ? alike[0] : null;

        static bool Begins(string whole, string start) => whole.StartsWith(start, StringComparison.OrdinalIgnoreCase);
    }

    /// <summary>True when no other candidate takes as few slips: then the word is hardly a guess.</summary>
    public static bool IsNearest(string word, string near, IEnumerable<string> candidates)
    {
        var slips = Slips(word, near);
        return candidates.All(other =>
            string.Equals(other, near, StringComparison.OrdinalIgnoreCase)
            || other.Length > LongestWord
            || Slips(word, other) > slips
        );
    }

    /// <summary>The restricted Damerau–Levenshtein distance: no letter takes part in two slips.</summary>
    internal static int Slips(string a, string b)
    {
        Span<int> before = stackalloc int[LongestWord + 1];
        Span<int> previous = stackalloc int[LongestWord + 1];
        Span<int> current = stackalloc int[LongestWord + 1];
        for (var j = 0; j <= b.Length; j++)
        {
            previous[j] = j;
        }

        for (var i = 1; i <= a.Length; i++)
        {
            current[0] = i;
            for (var j = 1; j <= b.Length; j++)
            {
                var slip = Same(a[i - 1], b[j - 1]) ? 0 : 1;
                current[j] = Math.Min(Math.Min(previous[j], current[j - 1]) + 1, previous[j - 1] + slip);
                if (i > 1 && j > 1 && Same(a[i - 1], b[j - 2]) && Same(a[i - 2], b[j - 1]))
                {
                    current[j] = Math.Min(current[j], before[j - 2] + 1);
                }
            }

            var free = before;
            before = previous;
            previous = current;
            current = free;
        }

        return previous[b.Length];
    }

    private static bool Same(char a, char b) => char.ToUpperInvariant(a) == char.ToUpperInvariant(b);
}
