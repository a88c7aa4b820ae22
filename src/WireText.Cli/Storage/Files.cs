using System.Text;
using WireText.Cli.Hosting;
using WireText.Syntax.Parsing;
using WireText.Text;

namespace WireText.Cli.Storage;

/// <summary>Reads sources and writes results. Nothing is half-written: a result goes to a file beside, which is then renamed.</summary>
internal static class Files
{
    private static readonly UTF8Encoding Strict = new(
        encoderShouldEmitUTF8Identifier: false,
        throwOnInvalidBytes: true
    );

    /// <summary>A file past the parser's limit is not read whole first.</summary>
    private const long MostBytes = WiringParser.MaxLength;

    public static SourceText Read(string path, ICliHost host)
    {
        try
        {
            return new SourceText(path.Replace('\\', '/'), WithoutMark(Strict.GetString(ReadBytes(path, host))));
        }
        catch (DecoderFallbackException)
        {
            throw new CannotException($"cannot read '{path}': it is not text in UTF-8");
        }
        catch (Exception e) when (IsFileTrouble(e))
        {
            throw new CannotException($"cannot read '{path}': {Reason(e, path)}");
        }
    }

    /// <summary>The paths, with each folder among them replaced by the wiring files in it and below it, in the order of their names.</summary>
    /// <exception cref="CannotException">A folder has none, or may not be looked into.</exception>
    public static string[] WithFoldersOpened(IEnumerable<string> paths) =>
        [
            .. paths.SelectMany(path =>
                path != StandardStream.Name && Directory.Exists(path) ? WiringFilesIn(path) : [path]
            ),
        ];

    private static string[] WiringFilesIn(string folder)
    {
        try
        {
            var files = Directory.EnumerateFiles(folder, "*.wiring", SearchOption.AllDirectories);
            string[] inOrder = [.. files.Select(file => file.Replace('\\', '/')).Order(StringComparer.Ordinal)];
            return inOrder.Length > 0
                ? inOrder
                : throw new CannotException($"cannot read '{folder}': there is no .wiring file in it or below it");
        }
        catch (Exception e) when (IsFileTrouble(e))
        {
            throw new CannotException($"cannot read '{folder}': {Reason(e, folder)}");
        }
    }

    /// <summary>Writes a text over a file that was read; a byte order mark that it started with stays.</summary>
    public static void WriteText(string path, string text, ICliHost host)
    {
        byte[] mark = ReadBytes(path, host) is [0xEF, 0xBB, 0xBF, ..] ? [0xEF, 0xBB, 0xBF] : [];
        Write(path, [.. mark, .. Strict.GetBytes(text)], host);
    }

    public static void Write(string path, byte[] content, ICliHost host)
    {
        if (path == StandardStream.Name)
        {
            host.Output.Write(content);
            host.Output.Flush();
            return;
        }

        var beside = "";
        try
        {
            if (Directory.Exists(path))
            {
                throw new IOException("it is a folder");
            }

            if (IsDevice(path))
            {
                using var device = new FileStream(path, FileMode.Open, FileAccess.Write);
                device.Write(content);
                return;
            }

            var target = RealPath.Of(path);
            RefuseReadOnly(target);
            beside = $"{target}.{Environment.ProcessId}.tmp";
            File.WriteAllBytes(beside, content);
            KeepRights(target, beside);
            File.Move(beside, target, overwrite: true);
        }
        catch (Exception e) when (IsFileTrouble(e))
        {
            TryDelete(beside);
            throw new CannotException($"cannot write '{path}': {Reason(e, path)}");
        }
    }

    /// <summary>True when both names lead to one file.</summary>
    public static bool IsSame(string one, string other)
    {
        try
        {
            return one != StandardStream.Name
                && other != StandardStream.Name
                && FileIdentity.Of(Path.GetFullPath(one)) == FileIdentity.Of(Path.GetFullPath(other));
        }
        catch (Exception e) when (IsFileTrouble(e))
        {
            return false;
        }
    }

    public static bool IsFileTrouble(Exception e) =>
        e is IOException or UnauthorizedAccessException or NotSupportedException or ArgumentException;

    /// <summary>The reason in plain words, the same on every machine.</summary>
    public static string Reason(Exception e, string path) =>
        e switch
        {
            FileNotFoundException or DirectoryNotFoundException => "there is no such file or folder",
            UnauthorizedAccessException when Directory.Exists(path) => "it is a folder",
            UnauthorizedAccessException => "it may not be opened",
            PathTooLongException => "its name is too long",
            _ => e.Message,
        };

    private static byte[] ReadBytes(string path, ICliHost host)
    {
        using var stream = path == StandardStream.Name ? host.Input : File.OpenRead(path);
        using var content = new MemoryStream();
        var buffer = new byte[64 * 1024];
        int count;
        while ((count = stream.Read(buffer)) > 0)
        {
            content.Write(buffer, 0, count);
            if (content.Length > MostBytes)
            {
                throw new IOException("it is larger than 16 MiB");
            }
        }

        return content.ToArray();
    }

    /// <summary>Some editors start a file with a byte order mark; it is no character of the text.</summary>
    private static string WithoutMark(string text) => text.StartsWith('\uFEFF') ? text[1..] : text;

    /// <summary>A device or the end of a pipe is written to; to rename a file over it would take it away from everyone.</summary>
    private static bool IsDevice(string path) =>
        !OperatingSystem.IsWindows()
        && File.Exists(path)
        && Path.GetFullPath(path).StartsWith("/dev/", StringComparison.Ordinal);

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

    private static void TryDelete(string path)
    {
        try
        {
            File.Delete(path);
        }
        catch (Exception e) when (IsFileTrouble(e))
        {
            // There is nothing left to tell: the first trouble is reported.
        }
    }
}
