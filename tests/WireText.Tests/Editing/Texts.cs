using WireText.Text;

namespace WireText.Tests.Editing;

/// <summary>A few texts that can name each other, without files.</summary>
internal sealed class Texts(params (string Path, string Content)[] texts) : ISourceProvider
{
    public SourceLoad Load(string path, SourceText from)
    {
        var found = texts.FirstOrDefault(text => text.Path == path);
        return found.Path is null
            ? SourceLoad.Missing("there is no such text")
            : SourceLoad.Found(new SourceText(found.Path, found.Content));
    }

    public Compilation this[string path] => Compilation.Of(Load(path, null!).Source!, this);
}
