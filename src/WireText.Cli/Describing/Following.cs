using System.Collections.Immutable;
using System.CommandLine.Completions;

namespace WireText.Cli.Describing;

/// <summary>What may be written as a value, as far as a shell can offer it.</summary>
/// <param name="Words">One of these; empty where it is none of a few words.</param>
internal sealed record Following(FollowingKind Kind, ImmutableArray<string> Words)
{
    private const string Folder = "DIR";

    /// <summary>How the names of files are called in the help.</summary>
    private static readonly ImmutableArray<string> Files = ["FILE", "OUT", "OLD", "NEW"];

    public static Following Nothing { get; } = new(FollowingKind.Nothing, []);

    /// <param name="called">What the help calls it.</param>
    public static Following Of(string called, IEnumerable<CompletionItem> words)
    {
        ImmutableArray<string> offered = [.. words.Select(word => word.Label)];
        return !offered.IsEmpty ? new Following(FollowingKind.Words, offered)
            : called == Folder ? new Following(FollowingKind.Folders, [])
            : Files.Contains(called) ? new Following(FollowingKind.Files, [])
            : Nothing;
    }
}

internal enum FollowingKind
{
    Nothing,
    Words,
    Files,
    Folders,
}
