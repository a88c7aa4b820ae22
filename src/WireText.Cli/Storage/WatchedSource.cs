namespace WireText.Cli.Storage;

/// <summary>A file that is read again whenever it is saved.</summary>
/// <param name="path">As it was given.</param>
internal sealed class WatchedSource(string path, SourceReader reader, FileFollower follower)
{
    public string Path => path;

    /// <summary>Reads it, and follows it from before that.</summary>
    /// <inheritdoc cref="SourceReader.Read"/>
    public SourceFile Read()
    {
        follower.Follow(reader.FullPath(path));
        return reader.Read(path, SourceRole.Watched);
    }
}
