namespace WireText.Cli.Storage;

/// <summary>What the system says of the file that a path leads to, links followed.</summary>
/// <param name="Identity">The same for every name of one file, hard links too; null where the system does not say.</param>
internal readonly record struct FileStatus(FileKind Kind, FileIdentity? Identity)
{
    /// <param name="path">A whole path.</param>
    /// <remarks>The class library does not tell a pipe from a file. Linux is asked itself; elsewhere all that is no folder counts as a file.</remarks>
    public static FileStatus Of(string path)
    {
        if (OperatingSystem.IsLinux())
        {
            return LinuxStatus.Of(path);
        }

        var kind =
            Directory.Exists(path) ? FileKind.Folder
            : File.Exists(path) ? FileKind.Regular
            : FileKind.Missing;
        return new FileStatus(kind, null);
    }
}
