using System.Buffers;
using System.Collections.Concurrent;
using System.Text.Json;

namespace WireText.Cli.Answering;

/// <summary>Writes the value that answers a request.</summary>
internal delegate void Answer(Utf8JsonWriter json);

/// <summary>Takes a request in the order of the messages, and gives the work that answers it, which may end after that of later ones.</summary>
internal delegate Func<CancellationToken, Answer> Request(JsonElement parameters);

/// <summary>Requests and notifications by JSON-RPC 2.0. Requests are worked at side by side, each on what was there when it came.</summary>
/// <remarks>A request that is cancelled, or goes wrong, is answered by that; nothing that comes in ends the program.</remarks>
internal sealed class RpcPeer(MessageStream stream)
{
    private const string Version = "2.0";

    /// <summary>Of the kinds of a message that LSP 3.17 has.</summary>
    private const int LogOfError = 1;

    private static readonly JsonDocumentOptions Reading = new() { MaxDepth = 128 };

    private readonly ConcurrentDictionary<string, CancellationTokenSource> running = new(StringComparer.Ordinal);
    private int asked;

    /// <summary>The requests that are answered, by method.</summary>
    public Dictionary<string, Request> Requests { get; } = new(StringComparer.Ordinal);

    /// <summary>The requests that are answered before the next message is read, by method.</summary>
    public Dictionary<string, Func<JsonElement, Answer>> AtOnce { get; } = new(StringComparer.Ordinal);

    /// <summary>What is done for notifications, by method; others are passed over.</summary>
    public Dictionary<string, Action<JsonElement>> Notifications { get; } = new(StringComparer.Ordinal);

    /// <summary>Why a request is refused now, whatever it asks; null where it is not.</summary>
    public Func<string, RpcFault?> Refusal { get; init; } = _ => null;

    /// <summary>Reads and answers until the other end is gone, or something that was done for a message says so.</summary>
    public void Run(CancellationToken ending)
    {
        try
        {
            while (!ending.IsCancellationRequested && stream.Read() is { } body)
            {
                Take(body);
            }
        }
        catch (IOException)
        {
            // Whoever wrote is gone.
        }
        finally
        {
            foreach (var work in running.Values)
            {
                work.Cancel();
            }
        }
    }

    /// <summary>Tells the other end something.</summary>
    public void Notify(string method, Answer parameters) =>
        Send(json =>
        {
            json.WriteString("method", method);
            json.WritePropertyName("params");
            parameters(json);
        });

    /// <summary>Tells the other end of something that went wrong.</summary>
    public void Log(string message) =>
        Notify(
            "window/logMessage",
            json =>
            {
                json.WriteStartObject();
                json.WriteNumber("type", LogOfError);
                json.WriteString("message", message);
                json.WriteEndObject();
            }
        );

    /// <summary>What is said of an exception that nobody foresaw.</summary>
    public static string FaultWords(Exception e) =>
        $"this is a fault of the program itself: {e.GetType().Name}: {e.Message}";

    /// <summary>Asks the other end for something of which the answer is of no interest.</summary>
    public void Ask(string method, Answer parameters) =>
        Send(json =>
        {
            json.WriteString("id", $"wiretext-{Interlocked.Increment(ref asked)}");
            json.WriteString("method", method);
            json.WritePropertyName("params");
            parameters(json);
        });

    private void Take(byte[] body)
    {
        try
        {
            Take(JsonDocument.Parse(body, Reading).RootElement);
        }
        catch (JsonException)
        {
            Refuse(null, new RpcFault(RpcFault.ParseError, "this is no JSON"));
        }
        catch (InvalidOperationException)
        {
            // Half of a surrogate pair, or bytes that are no UTF-8, where a text is needed to answer at all.
            Refuse(null, new RpcFault(RpcFault.InvalidRequest, "this has a text that is none"));
        }
    }

    private void Take(JsonElement message)
    {
        if (message.ValueKind != JsonValueKind.Object)
        {
            Refuse(null, new RpcFault(RpcFault.InvalidRequest, "a message is one object"));
            return;
        }

        JsonElement? id = message.TryGetProperty("id", out var given) ? given : null;
        var method =
            message.TryGetProperty("method", out var named) && named.ValueKind == JsonValueKind.String
                ? named.GetString()
                : null;
        var parameters = message.TryGetProperty("params", out var said) ? said : default;
        if (method is not null && id is { ValueKind: JsonValueKind.Number or JsonValueKind.String } number)
        {
            Answer(number, method, parameters);
        }
        else if (method is not null && id is null)
        {
            Heed(method, parameters);
        }
        else if (method is not null || id is null)
        {
            Refuse(null, new RpcFault(RpcFault.InvalidRequest, "a message has a method, and a request a number"));
        }

        // What is left answers a request of ours.
    }

    private void Heed(string method, JsonElement parameters)
    {
        if (method == "$/cancelRequest")
        {
            if (
                parameters.ValueKind == JsonValueKind.Object
                && parameters.TryGetProperty("id", out var id)
                && running.TryGetValue(id.GetRawText(), out var work)
            )
            {
                work.Cancel();
            }

            return;
        }

        if (Refusal(method) is null && Notifications.TryGetValue(method, out var heed))
        {
            try
            {
                heed(parameters);
            }
            catch (Exception e) when (FaultOf(e) is { } fault)
            {
                Log($"{method}: {fault.Message}");
            }
        }
    }

    private void Answer(JsonElement id, string method, JsonElement parameters)
    {
        var key = id.GetRawText();
        var cancelling = new CancellationTokenSource();
        try
        {
            if (Refusal(method) is { } refusal)
            {
                throw refusal;
            }

            if (AtOnce.TryGetValue(method, out var immediate))
            {
                Send(id, immediate(parameters));
                return;
            }

            if (!Requests.TryGetValue(method, out var request))
            {
                throw new RpcFault(RpcFault.MethodNotFound, $"there is no '{method}' here");
            }

            if (!running.TryAdd(key, cancelling))
            {
                throw new RpcFault(RpcFault.InvalidRequest, $"request {key} is worked at already");
            }

            var work = request(parameters);
            _ = Task.Run(() => Finish(id, key, work, cancelling.Token));
        }
        catch (Exception e) when (FaultOf(e) is { } fault)
        {
            if (running.TryGetValue(key, out var own) && own == cancelling)
            {
                running.TryRemove(key, out _);
            }

            Refuse(id, fault);
        }
    }

    private void Finish(
        JsonElement id,
        string key,
        Func<CancellationToken, Answer> work,
        CancellationToken cancellation
    )
    {
        try
        {
            cancellation.ThrowIfCancellationRequested();
            var answer = work(cancellation);
            running.TryRemove(key, out _);
            Send(id, answer);
        }
        catch (Exception e) when (FaultOf(e) is { } fault)
        {
            running.TryRemove(key, out _);
            Refuse(id, fault);
        }
        catch (IOException)
        {
            // There is nobody to tell.
        }
    }

    /// <summary>What to answer for something that went wrong; null where nobody is there to be answered.</summary>
    private static RpcFault? FaultOf(Exception e) =>
        e switch
        {
            RpcFault fault => fault,
            OperationCanceledException => new RpcFault(RpcFault.RequestCancelled, "it was cancelled"),
            IOException => null,
            KeyNotFoundException or InvalidOperationException or FormatException => new RpcFault(
                RpcFault.InvalidParams,
                "the parameters are not those of this method"
            ),
            _ => new RpcFault(RpcFault.InternalError, FaultWords(e)),
        };

    private void Send(JsonElement id, Answer answer) =>
        Send(json =>
        {
            json.WritePropertyName("id");
            id.WriteTo(json);
            json.WritePropertyName("result");
            answer(json);
        });

    private void Refuse(JsonElement? id, RpcFault fault) =>
        Send(json =>
        {
            json.WritePropertyName("id");
            if (id is { } known)
            {
                known.WriteTo(json);
            }
            else
            {
                json.WriteNullValue();
            }

            json.WriteStartObject("error");
            json.WriteNumber("code", fault.Code);
            json.WriteString("message", fault.Message);
            json.WriteEndObject();
        });

    private void Send(Action<Utf8JsonWriter> write)
    {
        var buffer = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(buffer))
        {
            json.WriteStartObject();
            json.WriteString("jsonrpc", Version);
            write(json);
            json.WriteEndObject();
        }

        stream.Write(buffer.WrittenSpan);
    }
}
