using System.Collections.Immutable;

namespace WireText.Output;

/// <summary>The folder of a run: what lies below it is named from there, so that a log says the same on every machine.</summary>
/// <param name="path">With forward slashes, from the root.</param>
internal sealed class WorkingFolder(string path)
{
    private readonly ImmutableArray<string> names = NamesIn(path);

    /// <summary>The names on the way to a file: from this folder where it lies below, else from the root.</summary>
    public (ImmutableArray<string> Names, bool IsBelow) WayTo(string file)
    {
        var way = NamesIn(IsRooted(file) ? file : $"{path}/{file}");
        return way.Length > names.Length && way.Take(names.Length).SequenceEqual(names)
            ? (way.RemoveRange(0, names.Length), true)
            : (way, false);
    }

    /// <summary>True for the name of a drive: <c>C:</c>.</summary>
    public static bool IsDrive(string name) => name is [var letter, ':'] && char.IsAsciiLetter(letter);

    private static bool IsRooted(string file) =>
        file.StartsWith('/') || (file is [_, _, '/', ..] && IsDrive(file[..2]));

    /// <summary>The names between the slashes, with <c>.</c>, <c>..</c> and empty ones resolved.</summary>
    private static ImmutableArray<string> NamesIn(string file)
    {
        var way = ImmutableArray.CreateBuilder<string>();
        foreach (var name in file.Split('/'))
        {
            if (name == ".." && way.Count > 0)
            {
                way.RemoveAt(way.Count - 1);
            }
            else if (name is not ("" or "." or ".."))
            {
                way.Add(name);
            }
        }

        return way.ToImmutable();
    }
}
