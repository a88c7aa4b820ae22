namespace WireText.Checks;

/// <summary>Puts names in a sentence.</summary>
public static class Listing
{
    /// <summary>More names than this are counted, not read.</summary>
    private const int Shown = 6;

    /// <summary><c>'a'</c>, <c>'a' and 'b'</c>, <c>'a', 'b' and 'c'</c>; long lists end in a count.</summary>
    public static string Of(IEnumerable<string> names) => Of(names, Shown);

    /// <summary>As above; with more names than <paramref name="shown"/> the last are a count.</summary>
    public static string Of(IEnumerable<string> names, int shown)
    {
        var quoted = names.Select(name => $"'{name}'").ToList();
        if (quoted.Count > shown)
        {
            return $"{string.Join(", ", quoted.Take(shown - 1))} and {quoted.Count - shown + 1} more";
        }

        return quoted.Count < 2
            ? string.Concat(quoted)
            : $"{string.Join(", ", quoted.Take(quoted.Count - 1))} and {quoted[^1]}";
    }
}
