using System.Collections.Concurrent;
using WireText.Text;

namespace WireText.Cli.Answering;

/// <summary>Hands in included files as the editor shows them, where it has them open.</summary>
/// <param name="files">What is on the disk.</param>
/// <param name="open">The texts that are open, by the whole paths of their files.</param>
internal sealed class OpenSources(ISourceProvider files, ConcurrentDictionary<string, string> open) : ISourceProvider
{
    public SourceLoad Load(string path, SourceText from)
    {
        var load = files.Load(path, from);
        return load.Source is { } found && open.TryGetValue(Path.GetFullPath(found.Path), out var text)
            ? SourceLoad.Found(new SourceText(found.Path, text))
            : load;
    }
}
