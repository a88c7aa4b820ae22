namespace WireText.Cli.Storage;

/// <summary>Which file it is, whatever it is called: by its number on its device, or by its one path where there is no number.</summary>
internal readonly record struct FileIdentity(ulong Device, ulong Number, string RealPath)
{
    /// <param name="path">A whole path.</param>
    public static FileIdentity Of(string path) =>
        FileStatus.Of(path).Identity ?? new FileIdentity(0, 0, Storage.RealPath.Of(path));
}
