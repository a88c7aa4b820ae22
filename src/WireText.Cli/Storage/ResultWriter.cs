using WireText.Cli.Hosting;

namespace WireText.Cli.Storage;

/// <summary>Writes results. Nothing is half-written: a result goes to a file beside, which then takes the place of the old one.</summary>
internal sealed class ResultWriter(ICliHost host, SourceReader reader)
{
    /// <summary>A name of standard output that is no file to be replaced.</summary>
    private const string StandardDevice = "/dev/stdout";

    /// <summary>Writes a result to a file or, for a dash, to standard output; never over what it came from.</summary>
    /// <exception cref="CannotException">It cannot be written there.</exception>
    public void Write(string target, byte[] content)
    {
        if (target is StandardStream.Name or StandardDevice)
        {
            host.Output.Write(content);
            host.Output.Flush();
            return;
        }

        Try(
            target,
            full =>
            {
                if (reader.RoleOf(target) is { } role)
                {
                    throw new CannotException($"'{target}' {role.Word()}; name another file with -o");
                }

                WriteTo(full, content);
            }
        );
    }

    /// <summary>Writes a result to a file that is not there yet, or to standard output.</summary>
    /// <exception cref="CannotException">There is something of that name, or it cannot be written there.</exception>
    public void Create(string target, byte[] content)
    {
        if (target == StandardStream.Name)
        {
            Write(target, content);
            return;
        }

        RefuseTaken(target);
        Try(target, full => FileReplacement.Create(full, content));
    }

    /// <exception cref="CannotException">There is something of that name.</exception>
    public void RefuseTaken(string target) =>
        Try(
            target,
            full =>
            {
                if (target != StandardStream.Name && FileStatus.Of(full).Kind != FileKind.Missing)
                {
                    throw new CannotException($"'{target}' is there already and stays as it is; give another name");
                }
            }
        );

    /// <summary>Writes a changed text over the file that it was read from, with the byte order mark that it had.</summary>
    /// <exception cref="CannotException">It cannot be written, or somebody has changed it meanwhile.</exception>
    public void Replace(SourceFile source, string text)
    {
        Try(
            source.Path,
            full =>
            {
                var kind = FileStatus.Of(full).Kind;
                if (kind is not (FileKind.Regular or FileKind.Missing))
                {
                    throw new IOException(kind.Word());
                }

                FileReplacement.Write(RealPath.Of(full), source.Encoded(text), source.Bytes);
            }
        );
    }

    private static void WriteTo(string path, byte[] content)
    {
        switch (FileStatus.Of(path).Kind)
        {
            case FileKind.Missing or FileKind.Regular:
                FileReplacement.Write(RealPath.Of(path), content, expected: null);
                break;
            case FileKind.Pipe or FileKind.CharacterDevice:
                // To rename a file over it would take it away from everyone.
                using (var stream = new FileStream(path, FileMode.Open, FileAccess.Write, FileShare.ReadWrite))
                {
                    stream.Write(content);
                }

                break;
            case var other:
                throw new IOException(other.Word());
        }
    }

    private void Try(string path, Action<string> write)
    {
        var full = path;
        try
        {
            full = reader.FullPath(path);
            write(full);
        }
        catch (Exception e) when (FileTrouble.Is(e))
        {
            throw new CannotException($"cannot write '{path}': {FileTrouble.Reason(e, full)}");
        }
    }
}
