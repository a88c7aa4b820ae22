using WireText.Editing;
using WireText.Text;

namespace WireText.Cli.Answering;

/// <summary>Tells the editor what is found in a text, on a thread of its own. A newer text takes the work for the older one away.</summary>
internal sealed class DiagnosticPublisher(RpcPeer peer)
{
    private readonly Lock gate = new();
    private readonly Dictionary<string, CancellationTokenSource> running = new(StringComparer.Ordinal);

    public void Publish(OpenDocument document)
    {
        var cancelling = new CancellationTokenSource();
        lock (gate)
        {
            Stop(document.Address);
            running[document.Address] = cancelling;
        }

        _ = Task.Run(() => Find(document, cancelling.Token));
    }

    /// <summary>Takes everything back that was told of a text.</summary>
    public void Clear(string address)
    {
        lock (gate)
        {
            Stop(address);
            Tell(address, version: null, _ => { });
        }
    }

    private void Stop(string address)
    {
        if (running.Remove(address, out var older))
        {
            older.Cancel();
        }
    }

    private void Find(OpenDocument document, CancellationToken cancellation)
    {
        try
        {
            var compiled = document.Compiled.Until(cancellation);
            var findings = compiled
                .Findings.AddRange(compiled.DrawingFindings)
                .Where(one => one.Severity > Severity.Right);
            lock (gate)
            {
                // What is told last must be of the newest text.
                cancellation.ThrowIfCancellationRequested();
                Tell(
                    document.Address,
                    document.Version,
                    json =>
                    {
                        foreach (var finding in findings)
                        {
                            DiagnosticJson.Write(json, finding, document, OtherFiles.NamedIn(compiled));
                        }
                    }
                );
            }
        }
        catch (Exception e) when (e is OperationCanceledException or IOException)
        {
            // There is a newer text, or nobody to tell.
        }
        catch (Exception e)
        {
            peer.Log($"what is found in '{document.Address}' cannot be told: {RpcPeer.FaultWords(e)}");
        }
    }

    private void Tell(string address, int? version, Answer write) =>
        peer.Notify(
            "textDocument/publishDiagnostics",
            json =>
            {
                json.WriteStartObject();
                json.WriteString("uri", address);
                if (version is { } number)
                {
                    json.WriteNumber("version", number);
                }

                json.WriteStartArray("diagnostics");
                write(json);
                json.WriteEndArray();
                json.WriteEndObject();
            }
        );
}
