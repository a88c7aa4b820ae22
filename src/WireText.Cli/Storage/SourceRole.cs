namespace WireText.Cli.Storage;

/// <summary>What a file was read for.</summary>
internal enum SourceRole
{
    /// <summary>It was named on the command line.</summary>
    Wiring,

    /// <summary>It was named on the command line, and is read again whenever it is saved.</summary>
    Watched,

    /// <summary>It stands in a folder that was named.</summary>
    InFolder,

    /// <summary>Another file includes it.</summary>
    Included,

    Settings,

    /// <summary>It was named on the command line: a bin of measured parts.</summary>
    Bin,

    /// <summary>It is sound.</summary>
    Recording,
}

internal static class SourceRoleWords
{
    /// <summary>What a file is, behind its name.</summary>
    public static string Word(this SourceRole role) =>
        role switch
        {
            SourceRole.Included => "is included by the wiring",
            SourceRole.Settings => "holds the settings",
            SourceRole.Bin => "is the bin itself",
            SourceRole.Recording => "is the recording itself",
            _ => "is the wiring itself",
        };
}
