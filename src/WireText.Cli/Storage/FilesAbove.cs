using WireText.Editing;

namespace WireText.Cli.Storage;

/// <summary>The wiring files that may name a file: a file is named only from its own folder, or from one above it.</summary>
internal static class FilesAbove
{
    /// <summary>In the order of their names, those of the nearest folder first; none of a folder that may not be looked into.</summary>
    /// <param name="path">The whole path of the file.</param>
    /// <param name="top">The uppermost folder that is looked into; null for that of the file alone.</param>
    public static IEnumerable<string> Of(string path, string? top)
    {
        var left = EditorLimits.MostFiles;
        for (var folder = Path.GetDirectoryName(path); folder is not null; folder = Path.GetDirectoryName(folder))
        {
            foreach (var file in In(folder).Take(left))
            {
                left--;
                yield return file;
            }

            if (top is null || !RealPath.IsBelow(folder, top) || folder == top)
            {
                yield break;
            }
        }
    }

    private static List<string> In(string folder)
    {
        try
        {
            return [.. Directory.EnumerateFiles(folder, "*.wiring").Order(StringComparer.Ordinal)];
        }
        catch (Exception e) when (FileTrouble.Is(e))
        {
            return [];
        }
    }
}
