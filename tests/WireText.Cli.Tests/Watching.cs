using System.Collections.Concurrent;
using System.Text;
using WireText.Cli.Hosting;

namespace WireText.Cli.Tests;

/// <summary>The program while it watches a file, in this process. It is told to end when this is disposed of.</summary>
internal sealed class Watching : IDisposable
{
    /// <summary>What takes longer waits for something that never comes.</summary>
    public static readonly TimeSpan Longest = TimeSpan.FromMinutes(1);

    private readonly WatchHost host;
    private readonly Task<int> run;

    private Watching(WatchHost host, string[] args)
    {
        this.host = host;
        run = Task.Run(() => CliProgram.Run(["watch", "--effort", "quick", .. args], host));
        Address = host.FirstLine.WaitAsync(Longest).GetAwaiter().GetResult();
    }

    /// <summary>What the program has printed.</summary>
    public string Address { get; }

    /// <summary>The addresses that it wanted a browser to open.</summary>
    public IReadOnlyCollection<string> Opened => host.Opened;

    public string Complaint => host.Complaint;

    /// <summary>Starts it, and waits for the address.</summary>
    public static Watching Of(params string[] args) => In(Directory.GetCurrentDirectory(), args);

    /// <param name="folder">In which it is started.</param>
    public static Watching In(string folder, params string[] args) =>
        new(new WatchHost(hasBrowser: true, folder), args);

    public static Watching WithoutBrowser(params string[] args) =>
        new(new WatchHost(hasBrowser: false, Directory.GetCurrentDirectory()), args);

    /// <summary>Tells it to end, and waits until it has.</summary>
    /// <returns>The exit code.</returns>
    public int End()
    {
        host.End();
        return run.WaitAsync(Longest).GetAwaiter().GetResult();
    }

    public void Dispose()
    {
        End();
        host.Dispose();
    }

    private sealed class WatchHost(bool hasBrowser, string folder) : ICliHost, IDisposable
    {
        private readonly CancellationTokenSource ending = new();
        private readonly HeardStream output = new();
        private readonly HeardStream error = new();

        public Task<string> FirstLine => output.FirstLine;

        public ConcurrentQueue<string> Opened { get; } = new();

        public string Complaint => error.Text;

        public Stream Input => Stream.Null;

        public Stream Output => output;

        public Stream Error => error;

        public bool IsTerminal => false;

        public bool IsErrorTerminal => false;

        public string WorkingFolder => folder;

        public CancellationToken Ending => ending.Token;

        public void End() => ending.Cancel();

        public string? Variable(string name) => null;

        public void OpenInBrowser(string address)
        {
            if (!hasBrowser)
            {
                throw new IOException("no browser can be started here");
            }

            Opened.Enqueue(address);
        }

        public void Dispose()
        {
            ending.Dispose();
            output.Dispose();
            error.Dispose();
        }
    }

    /// <summary>Keeps what is written to it while others look.</summary>
    private sealed class HeardStream : MemoryStream
    {
        private readonly Lock gate = new();
        private readonly StringBuilder heard = new();
        private readonly TaskCompletionSource<string> firstLine = new(
            TaskCreationOptions.RunContinuationsAsynchronously
        );

        public Task<string> FirstLine => firstLine.Task;

        public string Text
        {
            get
            {
                lock (gate)
                {
                    return heard.ToString();
                }
            }
        }

        public override void Write(byte[] buffer, int offset, int count) => Write(buffer.AsSpan(offset, count));

        public override void Write(ReadOnlySpan<byte> buffer)
        {
            lock (gate)
            {
                heard.Append(Encoding.UTF8.GetString(buffer));
                if (heard.ToString().Split('\n') is [var line, _, ..])
                {
                    firstLine.TrySetResult(line);
                }
            }
        }
    }
}
