namespace WireText.Cli.Storage;

/// <summary>Puts a new file in the place of an old one, at once: whoever reads meanwhile sees the one or the other, whole.</summary>
internal static class FileReplacement
{
    /// <param name="target">A path without links. The file need not be there yet.</param>
    /// <param name="expected">What the old file must still hold; null for anything.</param>
    /// <exception cref="IOException">It cannot be written, or the old file holds something else.</exception>
    public static void Write(string target, byte[] content, byte[]? expected)
    {
        RefuseReadOnly(target);
        using var fresh = new UnfinishedFile(target);
        fresh.Write(content, ModeOf(target));

        // As late as can be: what is saved between this and the next line is lost.
        if (expected is not null && !File.ReadAllBytes(target).AsSpan().SequenceEqual(expected))
        {
            throw new IOException("somebody has changed it meanwhile; run it again");
        }

        fresh.MoveTo(target);
    }

    /// <summary>Makes a file where there is none.</summary>
    /// <exception cref="IOException">It cannot be written, or there is something of that name.</exception>
    public static void Create(string target, byte[] content)
    {
        using var fresh = new UnfinishedFile(target);
        fresh.Write(content, mode: null);
        fresh.MoveTo(target, mayReplace: false);
    }

    /// <summary>The folder would let the file be replaced, but its owner has said that it stays.</summary>
    private static void RefuseReadOnly(string target)
    {
        if (File.Exists(target) && File.GetAttributes(target).HasFlag(FileAttributes.ReadOnly))
        {
            throw new UnauthorizedAccessException();
        }
    }

    /// <summary>The new file may be read by those who might read the old one; null where the system decides.</summary>
    private static UnixFileMode? ModeOf(string target) =>
        !OperatingSystem.IsWindows() && File.Exists(target) ? File.GetUnixFileMode(target) : null;
}
