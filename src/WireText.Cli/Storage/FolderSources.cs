using WireText.Cli.Hosting;
using WireText.Text;

namespace WireText.Cli.Storage;

/// <summary>Hands in included files from below the including file's folder, or from the folders named on the command line.</summary>
/// <param name="follower">Is told of each place where a file was looked for, before it is read; null for nobody.</param>
internal sealed class FolderSources(
    IReadOnlyList<string> partsFolders,
    SourceReader reader,
    FileFollower? follower = null
) : ISourceProvider
{
    /// <summary>The same, and somebody is told where files were looked for.</summary>
    public FolderSources FollowedBy(FileFollower by) => new(partsFolders, reader, by);

    public SourceLoad Load(string path, SourceText from)
    {
        if (Path.IsPathRooted(path))
        {
            return SourceLoad.Missing("the path must be relative");
        }

        var own = from.Path == StandardStream.Name ? "." : Path.GetDirectoryName(from.Path);
        foreach (var folder in partsFolders.Prepend(string.IsNullOrEmpty(own) ? "." : own))
        {
            if (Find(folder, path) is { } found)
            {
                return Read(found);
            }
        }

        return SourceLoad.Missing("it is not below this file's folder nor in a parts folder");
    }

    /// <summary>The file's path when it lies in or below the folder, every link on the way followed, and exists.</summary>
    private string? Find(string folder, string path)
    {
        try
        {
            var root = RealPath.Of(reader.FullPath(folder));
            var real = RealPath.Of(Path.Combine(root, path));
            if (!RealPath.IsBelow(real, root))
            {
                return null;
            }

            follower?.Follow(Path.Combine(root, path));
            return FileStatus.Of(real).Kind is not (FileKind.Missing or FileKind.Folder)
                ? Path.Combine(folder, Path.GetRelativePath(root, real))
                : null;
        }
        catch (Exception e) when (FileTrouble.Is(e))
        {
            return null;
        }
    }

    private SourceLoad Read(string path)
    {
        try
        {
            return SourceLoad.Found(reader.Read(path, SourceRole.Included).Text);
        }
        catch (CannotException e)
        {
            return SourceLoad.Missing(e.Message);
        }
    }
}
