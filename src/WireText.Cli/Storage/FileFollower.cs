using WireText.Pages;

namespace WireText.Cli.Storage;

/// <summary>
/// Tells when one of the files that a result stands on is no more what it was: written, taken away, put back, or another put in
/// its place. The system says so at once where it can; each file is looked at now and then besides.
/// </summary>
/// <remarks>Work goes in rounds: <see cref="Begin"/>, <see cref="Follow"/> each file before it is read, <see cref="WaitForChange"/>.</remarks>
internal sealed class FileFollower : IDisposable
{
    /// <summary>Between two looks at all files; each file adds a millisecond. Chosen: half of what a reader takes for at once.</summary>
    private const int PauseMilliseconds = 50;

    /// <summary>An editor writes a file in several steps: nothing for so long is the end of them. Chosen: no step takes as long.</summary>
    private const int QuietMilliseconds = 10;

    /// <summary>The most times that quiet is waited for: what changes all the time is read in between.</summary>
    private const int MostWaits = 5;

    private readonly Lock gate = new();
    private readonly Dictionary<string, FileStamp> files = new(StringComparer.Ordinal);
    private readonly Dictionary<string, FileSystemWatcher?> folders = new(StringComparer.Ordinal);
    private readonly Timer looking;
    private CancellationTokenSource round = new();
    private int steps;
    private bool isDisposed;

    public FileFollower() => looking = new Timer(_ => Look(), null, PauseMilliseconds, Timeout.Infinite);

    /// <summary>Starts a round, in which no file is followed yet.</summary>
    /// <returns>Cancelled as soon as a file that is followed in it changes.</returns>
    public CancellationToken Begin()
    {
        lock (gate)
        {
            round.Dispose();
            round = new CancellationTokenSource();
            files.Clear();
            return round.Token;
        }
    }

    /// <summary>Follows a file from now on, one that is not there too. Past a bound it is left out.</summary>
    /// <param name="path">A whole path.</param>
    public void Follow(string path)
    {
        lock (gate)
        {
            if (files.Count >= LivePage.MostFiles || !files.TryAdd(path, FileStamp.Of(path)))
            {
                return;
            }

            Watch(Path.GetDirectoryName(path));
            Watch(Path.GetDirectoryName(RealPathOf(path)));
        }
    }

    /// <summary>Waits until a file of this round changes, and until those who write it seem to be done.</summary>
    /// <param name="milliseconds">How long at most; -1 for as long as it takes.</param>
    /// <returns>False where nothing changed.</returns>
    public bool WaitForChange(int milliseconds, CancellationToken ending)
    {
        var changed = round.Token.WaitHandle;
        if (WaitHandle.WaitAny([changed, ending.WaitHandle], milliseconds) != 0)
        {
            return false;
        }

        for (var wait = 0; wait < MostWaits; wait++)
        {
            var seen = Volatile.Read(ref steps);
            ending.WaitHandle.WaitOne(QuietMilliseconds);
            if (seen == Volatile.Read(ref steps))
            {
                break;
            }
        }

        return true;
    }

    public void Dispose()
    {
        lock (gate)
        {
            isDisposed = true;
            looking.Dispose();
            foreach (var folder in folders.Values)
            {
                folder?.Dispose();
            }

            round.Dispose();
        }
    }

    private static string RealPathOf(string path)
    {
        try
        {
            return RealPath.Of(path);
        }
        catch (Exception e) when (FileTrouble.Is(e))
        {
            return path;
        }
    }

    /// <summary>Asks the system to tell of a folder. Where it does not, the files are looked at all the same.</summary>
    private void Watch(string? folder)
    {
        if (folder is null || folders.ContainsKey(folder) || folders.Count >= LivePage.MostFolders)
        {
            return;
        }

        try
        {
            var watcher = new FileSystemWatcher(folder)
            {
                NotifyFilter = NotifyFilters.FileName | NotifyFilters.LastWrite | NotifyFilters.Size,
            };
            watcher.Changed += (_, change) => Meet(change.FullPath);
            watcher.Created += (_, change) => Meet(change.FullPath);
            watcher.Deleted += (_, change) => Meet(change.FullPath);
            watcher.Renamed += (_, change) => Meet(change.FullPath);
            watcher.EnableRaisingEvents = true;
            folders.Add(folder, watcher);
        }
        catch (Exception e) when (FileTrouble.Is(e))
        {
            folders.Add(folder, null);
        }
    }

    /// <summary>Something was done to a file; which name it has here, where links lead to it, the stamps tell.</summary>
    private void Meet(string path)
    {
        Interlocked.Increment(ref steps);
        lock (gate)
        {
            foreach (var (file, stamp) in files)
            {
                if (Path.GetFileName(file) == Path.GetFileName(path) || file != RealPathOf(file))
                {
                    Compare(file, stamp);
                }
            }
        }
    }

    private void Look()
    {
        lock (gate)
        {
            if (isDisposed)
            {
                return;
            }

            foreach (var (file, stamp) in files)
            {
                Compare(file, stamp);
            }

            looking.Change(PauseMilliseconds + files.Count, Timeout.Infinite);
        }
    }

    private void Compare(string file, FileStamp stamp)
    {
        if (!isDisposed && !round.IsCancellationRequested && FileStamp.Of(file) != stamp)
        {
            round.Cancel();
        }
    }
}
