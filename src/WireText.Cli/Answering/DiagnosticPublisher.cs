using System.Collections.Immutable;
using WireText.Editing;
using WireText.Text;

namespace WireText.Cli.Answering;

/// <summary>
/// Tells the editor what is found in a text, on a thread of its own: first what the checks say, then the same with the edits that mend
/// it. A newer text takes the work for the older one away.
/// </summary>
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
            var found = compiled.PromptFindings.AddRange(compiled.DrawingFindings);
            Tell(document, found, cancellation);

            // Edits are looked for in many trials: nobody waits for them to see what is found.
            var mended = compiled.Findings.AddRange(compiled.DrawingFindings);
            if (!mended.SequenceEqual(found))
            {
                Tell(document, mended, cancellation);
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

    private void Tell(OpenDocument document, ImmutableArray<Finding> findings, CancellationToken cancellation)
    {
        var named = OtherFiles.NamedIn(document.Compiled);
        lock (gate)
        {
            // What is told last must be of the newest text.
            cancellation.ThrowIfCancellationRequested();
            Tell(
                document.Address,
                document.Version,
                json =>
                {
                    foreach (var finding in findings.Where(finding => finding.Severity > Severity.Right))
                    {
                        DiagnosticJson.Write(json, finding, document, named);
                    }
                }
            );
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
