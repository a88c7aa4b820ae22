namespace WireText.Cli.Storage;

/// <summary>What goes wrong with files, in plain words, the same on every machine.</summary>
internal static class FileTrouble
{
    public static bool Is(Exception e) =>
        e is IOException or UnauthorizedAccessException or NotSupportedException or ArgumentException;

    /// <param name="path">The whole path of the file that there was trouble with.</param>
    public static string Reason(Exception e, string path) =>
        e switch
        {
            FileNotFoundException or DirectoryNotFoundException => Missing(path),
            UnauthorizedAccessException when Directory.Exists(path) => "it is a folder",
            UnauthorizedAccessException => "it may not be opened",
            PathTooLongException => "its name is too long",
            _ => e.Message,
        };

    private static string Missing(string path)
    {
        // What is no UTF-8 in a name was replaced before anybody saw it: the name that is left belongs to no file.
        if (path.Contains('\uFFFD', StringComparison.Ordinal))
        {
            return "a name that is not UTF-8 cannot be opened; rename it, or give the text as standard input";
        }

        return Path.GetDirectoryName(path) is { } folder && !Directory.Exists(folder)
            ? $"there is no folder '{folder}'"
            : "there is no such file or folder";
    }
}
