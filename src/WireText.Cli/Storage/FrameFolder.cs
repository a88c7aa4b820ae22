using System.Text.Json;
using WireText.Cli.Hosting;

namespace WireText.Cli.Storage;

/// <summary>A folder that takes the pictures of a video and their list. What an earlier run put there may be written anew; nothing else is touched.</summary>
/// <param name="path">As it was given.</param>
internal sealed class FrameFolder(SourceReader reader, string path)
{
    /// <summary>The list of the frames; it tells later which files are ours.</summary>
    public const string ListName = "frames.json";

    /// <summary>A longer file is no list of ours.</summary>
    private const long LongestList = 16 * 1024 * 1024;

    public string PathOf(string name) => Path.Combine(path, name);

    /// <summary>Makes the folder where it is missing, and refuses one where a file of somebody else has the name of one that is to be written.</summary>
    /// <returns>The files of an earlier run that this one does not write: they stay.</returns>
    /// <exception cref="CannotException">It cannot be made, or holds such a file.</exception>
    public IReadOnlyList<string> Prepare(IEnumerable<string> names)
    {
        var folder = path;
        try
        {
            folder = reader.FullPath(path);
            Directory.CreateDirectory(folder);
            var listed = Listed(Path.Combine(folder, ListName));
            var wanted = names.Append(ListName).ToList();
            var foreign = wanted.Find(name =>
                Path.Exists(Path.Combine(folder, name)) && !listed.Contains(name, StringComparer.Ordinal)
            );
            return foreign is null
                ?
                [
                    .. listed
                        .Except(wanted, StringComparer.Ordinal)
                        .Where(name => File.Exists(Path.Combine(folder, name))),
                ]
                : throw new CannotException(
                    $"'{PathOf(foreign)}' is there and of no earlier run; name an empty folder, or a new one"
                );
        }
        catch (Exception e) when (FileTrouble.Is(e))
        {
            throw new CannotException($"cannot write to '{path}': {FileTrouble.Reason(e, folder)}");
        }
    }

    /// <summary>The files that a list of ours names, and the list itself; none where it is no list of ours.</summary>
    private static IReadOnlyList<string> Listed(string list)
    {
        if (FileStatus.Of(list).Kind != FileKind.Regular || new FileInfo(list).Length > LongestList)
        {
            return [];
        }

        try
        {
            using var read = JsonDocument.Parse(File.ReadAllBytes(list));
            return read.RootElement.TryGetProperty("frames", out var frames)
                ? [.. frames.EnumerateArray().Select(frame => frame.GetProperty("file").GetString() ?? ""), ListName]
                : [];
        }
        catch (Exception e) when (e is JsonException or InvalidOperationException or KeyNotFoundException)
        {
            return [];
        }
    }
}
