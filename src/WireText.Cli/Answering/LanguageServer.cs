using System.Text.Json;
using WireText.Cli.Hosting;
using WireText.Cli.Running;
using WireText.Cli.Storage;

namespace WireText.Cli.Answering;

/// <summary>A conversation with an editor by LSP 3.17, from its first message to its last.</summary>
internal sealed class LanguageServer : IDisposable
{
    private const int BufferBytes = 64 * 1024;

    private readonly RpcPeer peer;
    private readonly OpenDocuments documents;
    private readonly DiagnosticPublisher publisher;
    private readonly CancellationTokenSource ending = new();
    private readonly TaskCompletionSource editorGone = new();
    private readonly ICliHost host;
    private bool isReady;
    private bool isShutDown;
    private bool mayRegister;

    public LanguageServer(CliContext context, FolderSources files)
    {
        host = context.Host;
        peer = new RpcPeer(new MessageStream(new BufferedStream(host.Input, BufferBytes), host.Output))
        {
            Refusal = Refusal,
        };
        documents = new OpenDocuments(context, files);
        publisher = new DiagnosticPublisher(peer);
        peer.AtOnce["initialize"] = Initialize;
        peer.AtOnce["shutdown"] = ShutDown;
        peer.Notifications["initialized"] = _ => Register();
        peer.Notifications["exit"] = _ => ending.Cancel();
        peer.Notifications["textDocument/didOpen"] = Open;
        peer.Notifications["textDocument/didChange"] = Change;
        peer.Notifications["textDocument/didClose"] = Close;
        peer.Notifications["textDocument/didSave"] = _ => RenewAll(but: null);
        peer.Notifications["workspace/didChangeWatchedFiles"] = _ => RenewAll(but: null);
        TextAnswers.AddTo(peer.Requests, documents);
        NameAnswers.AddTo(peer.Requests, documents);
    }

    /// <returns>True where the editor said that it would end.</returns>
    public bool Run()
    {
        // Whoever inherited the streams of an editor that died may keep them open: nothing is read from them any more.
        var talk = Task.Factory.StartNew(
            () => peer.Run(ending.Token),
            CancellationToken.None,
            TaskCreationOptions.LongRunning,
            TaskScheduler.Default
        );
        Task.WhenAny(talk, editorGone.Task).GetAwaiter().GetResult().GetAwaiter().GetResult();
        return isShutDown;
    }

    public void Dispose() => ending.Dispose();

    private RpcFault? Refusal(string method) =>
        method == "exit" ? null
        : isShutDown ? new RpcFault(RpcFault.InvalidRequest, "it was shut down")
        : isReady == (method == "initialize")
            ? new RpcFault(
                isReady ? RpcFault.InvalidRequest : RpcFault.ServerNotInitialized,
                isReady ? "it was initialized before" : "initialize comes first"
            )
        : null;

    private Answer Initialize(JsonElement parameters)
    {
        isReady = true;
        mayRegister =
            ProtocolJson.Find(parameters, "capabilities", "workspace", "didChangeWatchedFiles", "dynamicRegistration")
                is { ValueKind: JsonValueKind.True };
        if (
            ProtocolJson.Find(parameters, "processId") is { ValueKind: JsonValueKind.Number } process
            && process.TryGetInt32(out var id)
        )
        {
            _ = host.EndOf(id).ContinueWith(_ => editorGone.TrySetResult(), TaskScheduler.Default);
        }

        documents.Top = FolderIn(parameters);
        return ServerCapabilities.Write;
    }

    /// <summary>The folder that the editor works in, the first of several; null where it says none.</summary>
    private static string? FolderIn(JsonElement parameters)
    {
        var first =
            ProtocolJson.Find(parameters, "workspaceFolders") is { ValueKind: JsonValueKind.Array } folders
            && folders.EnumerateArray().FirstOrDefault() is { ValueKind: JsonValueKind.Object } folder
                ? ProtocolJson.Find(folder, "uri")
                : ProtocolJson.Find(parameters, "rootUri");
        return first is { ValueKind: JsonValueKind.String } address
            ? DocumentAddress.PathOf(address.GetString()!)
            : null;
    }

    private Answer ShutDown(JsonElement parameters)
    {
        isShutDown = true;
        return json => json.WriteNullValue();
    }

    /// <summary>Asks to be told of files that are changed by others than the editor.</summary>
    private void Register()
    {
        if (mayRegister)
        {
            peer.Ask("client/registerCapability", ServerCapabilities.WriteWatchers);
        }
    }

    private void Open(JsonElement parameters)
    {
        var document = parameters.GetProperty("textDocument");
        var address = AddressIn(document);
        var (version, text) = (document.GetProperty("version").GetInt32(), document.GetProperty("text").GetString()!);
        try
        {
            publisher.Publish(documents.Open(address, version, text));
        }
        catch (CannotException e)
        {
            publisher.Publish(documents.At(address));
            throw new RpcFault(RpcFault.RequestFailed, e.Message);
        }

        RenewAll(but: address);
    }

    private void Change(JsonElement parameters)
    {
        var document = parameters.GetProperty("textDocument");
        var address = AddressIn(document);

        // Each of them is a whole text; the last one counts.
        var text = parameters.GetProperty("contentChanges").EnumerateArray().Last().GetProperty("text").GetString()!;
        if (documents.Change(address, document.GetProperty("version").GetInt32(), text) is { } changed)
        {
            publisher.Publish(changed);
            RenewAll(but: address);
        }
    }

    private void Close(JsonElement parameters)
    {
        var address = AddressIn(parameters.GetProperty("textDocument"));
        documents.Close(address);
        publisher.Clear(address);
        RenewAll(but: null);
    }

    /// <summary>What others that are open say may rest on the file that was changed.</summary>
    private void RenewAll(string? but)
    {
        foreach (var document in documents.All.Where(one => one.Address != but && NamesOthers(one)).ToList())
        {
            publisher.Publish(documents.Renew(document.Address)!);
        }
    }

    private static bool NamesOthers(OpenDocument document) => Editing.OtherFiles.AreNamedIn(document.Compiled.Tree);

    private static string AddressIn(JsonElement document) => document.GetProperty("uri").GetString()!;
}
