using System.Text;
using WireText.Text;

namespace WireText.Cli;

/// <summary>Reads sources and writes results. Nothing is half-written: a result goes to a file beside, which is then renamed.</summary>
internal static class Files
{
    /// <summary>Stands for standard input as a source, and for standard output as a target.</summary>
    public const string Standard = "-";

    private static readonly UTF8Encoding Strict = new(
        encoderShouldEmitUTF8Identifier: false,
        throwOnInvalidBytes: true
    );

    /// <summary>Four bytes a character at most, so that a file past the parser's limit is not read whole first.</summary>
    private const long MostBytes = 4L * Syntax.Parser.MaxLength;

    public static SourceText Read(string path, ICliHost host)
    {
        try
        {
            return new SourceText(path.Replace('\\', '/'), Strict.GetString(ReadBytes(path, host)));
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

    public static void Write(string path, byte[] content, ICliHost host)
    {
        if (path == Standard)
        {
            using var output = host.Output;
            output.Write(content);
            return;
        }

        var beside = $"{path}.{Environment.ProcessId}.tmp";
        try
        {
            if (Directory.Exists(path))
            {
                throw new IOException("it is a folder");
            }

            File.WriteAllBytes(beside, content);
            File.Move(beside, path, overwrite: true);
        }
        catch (Exception e) when (IsFileTrouble(e))
        {
            TryDelete(beside);
            throw new CannotException($"cannot write '{path}': {Reason(e, path)}");
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
        using var stream = path == Standard ? host.Input : File.OpenRead(path);
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
