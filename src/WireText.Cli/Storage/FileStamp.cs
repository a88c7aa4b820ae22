namespace WireText.Cli.Storage;

/// <summary>By what a file that was saved differs from what it was, without its being read; the same for all files that are not there.</summary>
internal readonly record struct FileStamp(FileIdentity? Identity, long Length, DateTime WrittenAt)
{
    /// <param name="path">A whole path; its links are followed.</param>
    public static FileStamp Of(string path)
    {
        try
        {
            var file = new FileInfo(RealPath.Of(path));
            return file.Exists
                ? new FileStamp(FileStatus.Of(path).Identity, file.Length, file.LastWriteTimeUtc)
                : default;
        }
        catch (Exception e) when (FileTrouble.Is(e))
        {
            return default;
        }
    }
}
