namespace WireText.Checks;

/// <summary>Keeps what is said short enough to be read at a glance.</summary>
internal static class ShortMessage
{
    /// <summary>Letters of a message. Chosen: a line of a terminal.</summary>
    private const int Most = 99;

    /// <summary>The first that is short enough; the last where none is. Each says less than the one before.</summary>
    public static string FirstOf(params ReadOnlySpan<string> ways)
    {
        foreach (var way in ways)
        {
            if (way.Length <= Most)
            {
                return way;
            }
        }

        return ways[^1];
    }
}
