using System.Runtime.InteropServices;

namespace WireText.Cli.Storage;

/// <summary>A file beside the one whose place it takes, under a name that nobody can guess. It is gone when it is not finished, whatever stops the program.</summary>
internal sealed class UnfinishedFile : IDisposable
{
    private static readonly PosixSignal[] Ends = [PosixSignal.SIGINT, PosixSignal.SIGTERM, PosixSignal.SIGHUP];

    private readonly string path;
    private readonly PosixSignalRegistration[] ends;
    private readonly Lock oneAtATime = new();
    private bool isMade;
    private bool isAbandoned;

    public UnfinishedFile(string target)
    {
        path = Path.Combine(Path.GetDirectoryName(target) ?? "", $".wiretext-{Path.GetRandomFileName()}");
        ends = [.. Ends.Select(signal => PosixSignalRegistration.Create(signal, _ => Abandon()))];
    }

    /// <summary>Makes the file and writes all of it to the disk.</summary>
    /// <param name="mode">Who may do what with it, from the start; null where the system decides.</param>
    public void Write(byte[] content, UnixFileMode? mode)
    {
        using var stream = Create(mode);
        if (mode is { } exactly && !OperatingSystem.IsWindows())
        {
            // What was asked for at the start may have been cut by the mask of the process.
            File.SetUnixFileMode(stream.SafeFileHandle, exactly);
        }

        stream.Write(content);
        stream.Flush(flushToDisk: true);
    }

    /// <summary>Gives it its name.</summary>
    /// <param name="mayReplace">Over a file that has it now; else that is an <see cref="IOException"/>.</param>
    public void MoveTo(string target, bool mayReplace = true)
    {
        lock (oneAtATime)
        {
            RefuseAbandoned();
            File.Move(path, target, overwrite: mayReplace);
            isMade = false;
        }
    }

    public void Dispose()
    {
        Abandon();
        foreach (var registration in ends)
        {
            registration.Dispose();
        }
    }

    /// <summary>Only a file that is not there yet, and through no link that somebody has laid there.</summary>
    private FileStream Create(UnixFileMode? mode)
    {
        var options = new FileStreamOptions
        {
            Mode = FileMode.CreateNew,
            Access = FileAccess.Write,
            Share = FileShare.None,
            BufferSize = 0,
        };
        if (mode is { } exactly && !OperatingSystem.IsWindows())
        {
            options.UnixCreateMode = exactly;
        }

        lock (oneAtATime)
        {
            RefuseAbandoned();
            var stream = new FileStream(path, options);
            isMade = true;
            return stream;
        }
    }

    private void RefuseAbandoned()
    {
        if (isAbandoned)
        {
            throw new IOException("it was interrupted");
        }
    }

    private void Abandon()
    {
        lock (oneAtATime)
        {
            isAbandoned = true;
            if (!isMade)
            {
                return;
            }

            isMade = false;
            try
            {
                File.Delete(path);
            }
            catch (Exception e) when (FileTrouble.Is(e))
            {
                // There is nothing left to tell: the first trouble is reported.
            }
        }
    }
}
