namespace WireText.Cli.Describing;

/// <summary>Words as shells read them.</summary>
internal static class ShellText
{
    /// <summary>A word in single quotes, for a shell of POSIX and for zsh.</summary>
    public static string Quote(string word) => $"'{word.Replace("'", @"'\''", StringComparison.Ordinal)}'";

    /// <summary>Several, each of which is a word.</summary>
    public static string QuoteEach(IEnumerable<string> words) => string.Join(' ', words.Select(Quote));

    /// <summary>Patterns of a <c>case</c>, one of which must be met.</summary>
    public static string AnyOf(IEnumerable<string> words) => string.Join('|', words.Select(Quote));
}
