namespace WireText.Cli.Storage;

/// <summary>The one path of a file that leads through no link.</summary>
internal static class RealPath
{
    /// <summary>As many links as Linux follows before it takes them for a circle (path_resolution(7)).</summary>
    private const int MostLinks = 40;

    /// <summary>Follows every link on the way, not only one at its end. Parts that are not there stay as they are written.</summary>
    /// <param name="path">A whole path.</param>
    /// <exception cref="IOException">The links lead in a circle.</exception>
    public static string Of(string path)
    {
        var full = Path.GetFullPath(path);
        var real = RootOf(full);
        var ahead = new Stack<string>(PartsOf(full));
        var links = 0;
        while (ahead.TryPop(out var part))
        {
            if (part == "..")
            {
                real = Path.GetDirectoryName(real) ?? real;
                continue;
            }

            var next = Path.Combine(real, part);
            if (new FileInfo(next).LinkTarget is not { } target)
            {
                real = next;
                continue;
            }

            if (++links > MostLinks)
            {
                throw new IOException("its links lead in a circle");
            }

            real = Path.IsPathRooted(target) ? RootOf(target) : real;
            foreach (var step in PartsOf(target))
            {
                ahead.Push(step);
            }
        }

        return real;
    }

    /// <summary>True when a path lies in or below a folder; both are real ones.</summary>
    public static bool IsBelow(string path, string folder) =>
        path.StartsWith(
            folder.TrimEnd(Path.DirectorySeparatorChar) + Path.DirectorySeparatorChar,
            StringComparison.Ordinal
        );

    private static string RootOf(string path) => Path.GetPathRoot(path) ?? "";

    /// <summary>The names on the way, the last one first.</summary>
    private static IEnumerable<string> PartsOf(string path) =>
        path[RootOf(path).Length..]
            .Split([Path.DirectorySeparatorChar, Path.AltDirectorySeparatorChar], StringSplitOptions.RemoveEmptyEntries)
            .Where(part => part != ".")
            .Reverse();
}
