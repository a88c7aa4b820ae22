using System.Collections.Concurrent;
using System.Text;
using WireText.Cli.Hosting;
using WireText.Syntax.Parsing;
using WireText.Text;

namespace WireText.Cli.Storage;

/// <summary>Reads what a run is given, and remembers it: no result is written over what it came from.</summary>
internal sealed class SourceReader(ICliHost host)
{
    /// <summary>A file past the parser's limit is not read whole first.</summary>
    private const long MostBytes = WiringParser.MaxLength;

    private readonly ConcurrentDictionary<FileIdentity, SourceRole> roles = new();

    /// <summary>Reads a file. One that was not named on the command line must be a regular one: whoever wrote what leads to it may not make the program wait.</summary>
    /// <exception cref="CannotException">It cannot be read, or is no text.</exception>
    public SourceFile Read(string path, SourceRole role)
    {
        var full = path;
        try
        {
            full = path == StandardStream.Name ? path : FullPath(path);
            var bytes = BytesOf(path, full, role, MostBytes);
            if (ForeignText.Reason(bytes) is { } reason)
            {
                throw new CannotException($"cannot read '{path}': {reason}");
            }

            var text = Encoding.UTF8.GetString(bytes);
            return new SourceFile(path, new SourceText(NameOf(path), WithoutMark(text)), bytes);
        }
        catch (Exception e) when (FileTrouble.Is(e))
        {
            throw new CannotException($"cannot read '{path}': {FileTrouble.Reason(e, full)}");
        }
    }

    /// <summary>Reads a file that is no text, whatever is in it.</summary>
    /// <exception cref="CannotException">It cannot be read, or has more bytes than that.</exception>
    public byte[] ReadBytes(string path, SourceRole role, long most)
    {
        var full = path;
        try
        {
            full = path == StandardStream.Name ? path : FullPath(path);
            return BytesOf(path, full, role, most);
        }
        catch (Exception e) when (FileTrouble.Is(e))
        {
            throw new CannotException($"cannot read '{path}': {FileTrouble.Reason(e, full)}");
        }
    }

    /// <summary>What the file was read for; null when it was not.</summary>
    public SourceRole? RoleOf(string path) =>
        roles.TryGetValue(FileIdentity.Of(FullPath(path)), out var role) ? role : null;

    /// <summary>The whole path of a file as it was given.</summary>
    public string FullPath(string path) =>
        Path.IsPathFullyQualified(path) ? Path.GetFullPath(path) : Path.GetFullPath(path, host.WorkingFolder);

    private byte[] BytesOf(string path, string full, SourceRole role, long most) =>
        path == StandardStream.Name ? BytesOf(host.Input, most) : BytesOf(full, role, most);

    private byte[] BytesOf(string path, SourceRole role, long most)
    {
        var status = FileStatus.Of(path);
        if (!MayRead(status.Kind, path, role))
        {
            throw new IOException(
                status.Kind == FileKind.Pipe && role is SourceRole.Wiring or SourceRole.Bin
                    ? "it is a pipe, which may never end; give its text as standard input (-)"
                    : status.Kind.Word()
            );
        }

        using var stream = File.OpenRead(path);
        var bytes = BytesOf(stream, most);
        if (status.Kind is FileKind.Regular)
        {
            roles.TryAdd(FileIdentity.Of(path), role);
        }

        return bytes;
    }

    /// <summary>What is missing or may not be looked at is opened, to learn why.</summary>
    private static bool MayRead(FileKind kind, string path, SourceRole role) =>
        kind switch
        {
            FileKind.Missing or FileKind.Regular => true,
            FileKind.CharacterDevice => role is SourceRole.Wiring or SourceRole.Bin,
            FileKind.Pipe => role is SourceRole.Wiring or SourceRole.Bin && IsOpenAlready(path),
            _ => false,
        };

    /// <summary>A pipe that the shell made for this run has no name of its own in any folder: somebody writes to it already.</summary>
    private static bool IsOpenAlready(string path) => FileStatus.Of(RealPath.Of(path)).Kind == FileKind.Missing;

    private static byte[] BytesOf(Stream stream, long most)
    {
        using var content = new MemoryStream();
        var buffer = new byte[64 * 1024];
        int count;
        while ((count = stream.Read(buffer)) > 0)
        {
            content.Write(buffer, 0, count);
            if (content.Length > most)
            {
                throw new IOException($"it is larger than {most / 1024 / 1024} MiB");
            }
        }

        return content.ToArray();
    }

    private static string NameOf(string path) => path.Replace(Path.DirectorySeparatorChar, '/');

    private static string WithoutMark(string text) => text.StartsWith('\uFEFF') ? text[1..] : text;
}
