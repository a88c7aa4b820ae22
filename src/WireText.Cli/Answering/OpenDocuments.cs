using System.Collections.Concurrent;
using System.Text.Json;
using WireText.Checks;
using WireText.Cli.Hosting;
using WireText.Cli.Running;
using WireText.Cli.Settings;
using WireText.Cli.Storage;
using WireText.Editing;
using WireText.Text;

namespace WireText.Cli.Answering;

/// <summary>The texts that the editor has open, each with what was worked out of it.</summary>
/// <remarks>Changed by one thread, in the order of the messages; what is asked of a document may be worked at by any.</remarks>
internal sealed class OpenDocuments(CliContext context, FolderSources files)
{
    private readonly Dictionary<string, OpenDocument> byAddress = new(StringComparer.Ordinal);
    private readonly ConcurrentDictionary<string, string> texts = new(StringComparer.Ordinal);

    /// <summary>All of them, in the order in which they were opened.</summary>
    public IReadOnlyCollection<OpenDocument> All => byAddress.Values;

    /// <summary>The uppermost folder that the editor works in; null where it has none.</summary>
    public string? Top { get; set; }

    /// <summary>Takes a text that the editor has opened, or opened again.</summary>
    /// <exception cref="CannotException">What settings say cannot be read; the text is open, and checked without them.</exception>
    public OpenDocument Open(string address, int version, string text)
    {
        Keep(address, text);
        var opened = new OpenDocument(address, version, Compile(address, text, null));
        byAddress[address] = opened;
        if (DocumentAddress.PathOf(address) is { } path)
        {
            var settings = new SettingsFiles(context.Host, context.Sources).For(path);
            byAddress[address] = opened = opened with { Compiled = Compile(address, text, settings) };
        }

        return opened;
    }

    /// <summary>Takes another text for one that is open.</summary>
    /// <returns>Null where it is older than what is there, or the document is not open: then nothing changes.</returns>
    public OpenDocument? Change(string address, int version, string text)
    {
        if (!byAddress.TryGetValue(address, out var before) || version <= before.Version)
        {
            return null;
        }

        Keep(address, text);
        return byAddress[address] = new OpenDocument(
            address,
            version,
            before.Compiled.With(new SourceText(DocumentAddress.NameOf(address), text))
        );
    }

    /// <summary>The same text, with the other files as they are now.</summary>
    public OpenDocument? Renew(string address) =>
        byAddress.TryGetValue(address, out var document)
            ? byAddress[address] = document with { Compiled = document.Compiled.With(document.Compiled.Source) }
            : null;

    /// <summary>Forgets a text that the editor has closed.</summary>
    public void Close(string address)
    {
        byAddress.Remove(address);
        if (DocumentAddress.PathOf(address) is { } path)
        {
            texts.TryRemove(path, out _);
        }
    }

    /// <summary>A request about one document, as it is when it comes.</summary>
    public Request Asked(Func<OpenDocument, JsonElement, Answer> answer) =>
        parameters =>
        {
            var document = At(parameters.GetProperty("textDocument").GetProperty("uri").GetString() ?? "");
            return cancellation =>
                answer(document with { Compiled = document.Compiled.Until(cancellation) }, parameters);
        };

    /// <exception cref="RpcFault">It is not open.</exception>
    public OpenDocument At(string address) =>
        byAddress.TryGetValue(address, out var document)
            ? document
            : throw new RpcFault(RpcFault.InvalidParams, $"'{address}' is not open");

    /// <summary>
    /// What is named in the texts that may name what stands in a file: those that are open, and those on the disk from which that file
    /// can be reached.
    /// </summary>
    /// <param name="open">The texts that were open when it was asked for.</param>
    /// <param name="path">The whole path of the file; null for a text that is no file yet.</param>
    public IEnumerable<NameTable> TablesNaming(
        IReadOnlyCollection<OpenDocument> open,
        string? path,
        CancellationToken cancellation
    )
    {
        var shown = open.Select(document => DocumentAddress.PathOf(document.Address)).ToHashSet(StringComparer.Ordinal);
        var saved = path is null
            ? []
            : FilesAbove.Of(path, Top).Where(file => !shown.Contains(file)).Select(Read).OfType<Compilation>();
        foreach (var compiled in open.Select(document => document.Compiled).Concat(saved))
        {
            cancellation.ThrowIfCancellationRequested();
            if (compiled.Source.Path == (path ?? StandardStream.Name) || OtherFiles.AreNamedIn(compiled.Tree))
            {
                yield return NameTable.Of(compiled.Until(cancellation));
            }
        }
    }

    private Compilation? Read(string path)
    {
        try
        {
            return Compilation.Of(context.Sources.Read(path, SourceRole.Included).Text, new OpenSources(files, texts));
        }
        catch (CannotException)
        {
            return null;
        }
    }

    private void Keep(string address, string text)
    {
        if (DocumentAddress.PathOf(address) is { } path)
        {
            texts[path] = text;
        }
    }

    private Compilation Compile(string address, string text, CheckSettings? settings) =>
        Compilation.Of(
            new SourceText(DocumentAddress.NameOf(address), text),
            DocumentAddress.PathOf(address) is null ? NoSources.Instance : new OpenSources(files, texts),
            settings: settings
        );
}
