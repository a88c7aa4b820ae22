using System.Collections.Immutable;
using WireText.Cli.Hosting;

namespace WireText.Cli.Storage;

/// <summary>The files that paths stand for: each itself, and a folder for the wiring files in it and below it.</summary>
/// <param name="Files">In the order of the paths; those of a folder in the order of their names.</param>
/// <param name="Problems">What could not be looked into, ready to be told.</param>
internal sealed record FoundFiles(ImmutableArray<FoundFile> Files, ImmutableArray<string> Problems)
{
    public static FoundFiles At(IEnumerable<string> paths, SourceReader reader)
    {
        var files = ImmutableArray.CreateBuilder<FoundFile>();
        var problems = ImmutableArray.CreateBuilder<string>();
        foreach (var path in paths)
        {
            if (path == StandardStream.Name || FileStatus.Of(reader.FullPath(path)).Kind != FileKind.Folder)
            {
                files.Add(new FoundFile(path, SourceRole.Wiring));
                continue;
            }

            var walk = FolderWalk.Through(path, reader);
            files.AddRange(walk.Files.Select(file => new FoundFile(file, SourceRole.InFolder)));
            problems.AddRange(walk.Problems);
        }

        return new FoundFiles(files.ToImmutable(), problems.ToImmutable());
    }
}

/// <param name="Path">As it is shown.</param>
internal sealed record FoundFile(string Path, SourceRole Role);
