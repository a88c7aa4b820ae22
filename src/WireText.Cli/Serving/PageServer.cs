using System.Net;
using System.Net.Sockets;
using WireText.Pages;

namespace WireText.Cli.Serving;

/// <summary>Serves a page to this machine alone, and tells it what happens. One request a connection.</summary>
internal sealed class PageServer : IDisposable
{
    /// <summary>Who says nothing for so long, or takes nothing, is let go.</summary>
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(10);

    /// <summary>A line that means nothing, so that a connection which is gone is found out.</summary>
    private static readonly TimeSpan BetweenBeats = TimeSpan.FromSeconds(15);

    private readonly TcpListener listener = new(IPAddress.Loopback, 0);
    private readonly CancellationTokenSource ending;
    private readonly LiveFeed feed;
    private readonly PageGate gate;
    private readonly Task accepting;
    private int connections;
    private int readers;

    /// <summary>Starts on a port that is free.</summary>
    /// <exception cref="SocketException">There is none.</exception>
    public PageServer(LiveFeed feed, CancellationToken ending)
    {
        this.feed = feed;
        this.ending = CancellationTokenSource.CreateLinkedTokenSource(ending);
        listener.Start();
        gate = new PageGate((IPEndPoint)listener.LocalEndpoint, LivePage.Files);
        accepting = AcceptAsync();
    }

    /// <summary>Where the page is, with its token.</summary>
    public string Address => gate.Address;

    private static ReadOnlySpan<byte> Greeting => "retry: 500\n\n"u8;

    private static ReadOnlySpan<byte> Beat => ": beat\n\n"u8;

    public void Dispose()
    {
        ending.Cancel();
        listener.Dispose();
        accepting.Wait();
        ending.Dispose();
    }

    private async Task AcceptAsync()
    {
        try
        {
            while (true)
            {
                var client = await listener.AcceptSocketAsync(ending.Token).ConfigureAwait(false);
                if (Interlocked.Increment(ref connections) > LivePage.MostConnections)
                {
                    Interlocked.Decrement(ref connections);
                    client.Dispose();
                    continue;
                }

                _ = ServeAsync(client);
            }
        }
        catch (Exception e) when (e is OperationCanceledException or SocketException or ObjectDisposedException)
        {
            // It has ended.
        }
    }

    private async Task ServeAsync(Socket client)
    {
        try
        {
            client.NoDelay = true;
            using var stream = new NetworkStream(client, ownsSocket: true);
            var reply = await AskedAsync(stream).ConfigureAwait(false);
            if (reply == Reply.Events)
            {
                await TellAsync(stream).ConfigureAwait(false);
            }
            else
            {
                await SendAsync(stream, reply.Encoded()).ConfigureAwait(false);
                await HangUpAsync(client, stream).ConfigureAwait(false);
            }
        }
        catch (Exception e)
            when (e is IOException or SocketException or OperationCanceledException or ObjectDisposedException)
        {
            // Whoever it was is gone.
        }
        finally
        {
            Interlocked.Decrement(ref connections);
        }
    }

    private async Task<Reply> AskedAsync(NetworkStream stream)
    {
        using var patience = Limited();
        var buffer = new byte[LivePage.MostRequestBytes];
        var length = 0;
        while (length < buffer.Length)
        {
            var read = await stream.ReadAsync(buffer.AsMemory(length), patience.Token).ConfigureAwait(false);
            if (read == 0)
            {
                throw new IOException("it hung up");
            }

            length += read;
            if (buffer.AsSpan(0, length).IndexOf(RequestHead.End) is >= 0 and var end)
            {
                return gate.Answer(RequestHead.Read(buffer.AsSpan(0, end)));
            }
        }

        return Reply.Refusal(431, "this request is too long");
    }

    private async Task TellAsync(NetworkStream stream)
    {
        try
        {
            if (Interlocked.Increment(ref readers) > LivePage.MostReaders)
            {
                await SendAsync(stream, Reply.Refusal(503, "the page is open in too many places").Encoded())
                    .ConfigureAwait(false);
                return;
            }

            await SendAsync(stream, [.. Reply.Events.Encoded(), .. Greeting]).ConfigureAwait(false);
            var gone = stream.ReadAsync(new byte[1], ending.Token).AsTask();
            for (var known = 0L; !gone.IsCompleted; )
            {
                var (number, events, more) = feed.After(known);
                known = number;
                foreach (var told in events)
                {
                    await SendAsync(stream, told).ConfigureAwait(false);
                }

                var beat = Task.Delay(BetweenBeats, ending.Token);
                if (await Task.WhenAny(more, beat, gone).ConfigureAwait(false) == beat)
                {
                    await SendAsync(stream, Beat.ToArray()).ConfigureAwait(false);
                }
            }
        }
        finally
        {
            Interlocked.Decrement(ref readers);
        }
    }

    private async Task SendAsync(NetworkStream stream, byte[] bytes)
    {
        using var patience = Limited();
        await stream.WriteAsync(bytes, patience.Token).ConfigureAwait(false);
    }

    /// <summary>Takes what is still said, up to an end: to hang up on somebody who speaks takes the answer away with it.</summary>
    private async Task HangUpAsync(Socket client, NetworkStream stream)
    {
        client.Shutdown(SocketShutdown.Send);
        using var patience = Limited();
        var buffer = new byte[LivePage.MostRequestBytes];
        for (var rest = LivePage.MostRequestBytes; rest > 0; )
        {
            var read = await stream.ReadAsync(buffer, patience.Token).ConfigureAwait(false);
            rest = read == 0 ? 0 : rest - read;
        }
    }

    private CancellationTokenSource Limited()
    {
        var limited = CancellationTokenSource.CreateLinkedTokenSource(ending.Token);
        limited.CancelAfter(Patience);
        return limited;
    }
}
