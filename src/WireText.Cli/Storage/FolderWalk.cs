namespace WireText.Cli.Storage;

/// <summary>Looks for wiring files in a folder and below it. No link leads out of the folder, or twice to a place in it.</summary>
internal sealed class FolderWalk
{
    private const string Ending = ".wiring";

    private readonly string folder;
    private readonly SourceReader reader;
    private readonly string root;
    private readonly List<string> files = [];
    private readonly List<string> problems = [];
    private readonly Stack<string> ahead = new();

    private FolderWalk(string folder, SourceReader reader)
    {
        (this.folder, this.reader) = (folder, reader);
        root = RealPath.Of(reader.FullPath(folder));
    }

    /// <summary>In the order of their names.</summary>
    public IEnumerable<string> Files => files.Order(StringComparer.Ordinal);

    /// <summary>What could not be looked into, ready to be told.</summary>
    public IReadOnlyList<string> Problems => problems;

    public static FolderWalk Through(string folder, SourceReader reader)
    {
        var walk = new FolderWalk(folder, reader);
        walk.ahead.Push(folder);
        while (walk.ahead.TryPop(out var next))
        {
            walk.Open(next);
        }

        if (walk.files.Count == 0 && walk.problems.Count == 0)
        {
            walk.Tell(folder, $"there is no {Ending} file in it or below it");
        }

        return walk;
    }

    private void Open(string here)
    {
        try
        {
            foreach (var entry in new DirectoryInfo(reader.FullPath(here)).EnumerateFileSystemInfos())
            {
                Meet(entry, Path.Combine(here, entry.Name).Replace(Path.DirectorySeparatorChar, '/'));
            }
        }
        catch (Exception e) when (FileTrouble.Is(e))
        {
            Tell(here, e is UnauthorizedAccessException ? "it may not be looked into" : FileTrouble.Reason(e, here));
        }
    }

    private void Meet(FileSystemInfo entry, string path)
    {
        var isLink = entry.Attributes.HasFlag(FileAttributes.ReparsePoint);
        if (entry is DirectoryInfo)
        {
            if (!isLink)
            {
                ahead.Push(path);
            }
        }
        else if (entry.Name.EndsWith(Ending, StringComparison.Ordinal))
        {
            if (isLink && !RealPath.IsBelow(RealPath.Of(entry.FullName), root))
            {
                Tell(path, $"it is a link that leads out of '{folder}'");
            }
            else
            {
                files.Add(path);
            }
        }
    }

    private void Tell(string path, string reason) => problems.Add($"cannot read '{path}': {reason}");
}
