namespace WireText.Cli.Storage;

/// <summary>Puts a new file in the place of an old one, at once: whoever reads meanwhile sees the one or the other, whole.</summary>
internal static class FileReplacement
{
    /// <param name="target">A path without links. The file need not be there yet.</param>
    public static void Write(string target, byte[] content)
    {
        RefuseReadOnly(target);
        var beside = $"{target}.{Environment.ProcessId}.tmp";
        try
        {
            File.WriteAllBytes(beside, content);
            KeepRights(target, beside);
            File.Move(beside, target, overwrite: true);
        }
        finally
        {
            File.Delete(beside);
        }
    }

    /// <summary>The folder would let the file be replaced, but its owner has said that it stays.</summary>
    private static void RefuseReadOnly(string target)
    {
        if (File.Exists(target) && File.GetAttributes(target).HasFlag(FileAttributes.ReadOnly))
        {
            throw new UnauthorizedAccessException();
        }
    }

    /// <summary>The new file may be read by those who might read the old one.</summary>
    private static void KeepRights(string old, string fresh)
    {
        if (!OperatingSystem.IsWindows() && File.Exists(old))
        {
            File.SetUnixFileMode(fresh, File.GetUnixFileMode(old));
        }
    }
}
