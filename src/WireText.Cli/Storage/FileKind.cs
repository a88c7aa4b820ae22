namespace WireText.Cli.Storage;

/// <summary>What a path leads to.</summary>
internal enum FileKind
{
    /// <summary>Nothing, or nothing that may be looked at.</summary>
    Missing,

    Regular,
    Folder,
    Pipe,
    Socket,

    /// <summary>A terminal, or what takes or gives characters one after the other.</summary>
    CharacterDevice,

    /// <summary>A disk.</summary>
    BlockDevice,
}

internal static class FileKindWords
{
    /// <summary>Why it is not taken for a file, in a few words.</summary>
    public static string Word(this FileKind kind) =>
        kind switch
        {
            FileKind.Folder => "it is a folder",
            FileKind.Pipe => "it is a pipe",
            FileKind.Socket => "it is a socket",
            _ => "it is a device",
        };
}
