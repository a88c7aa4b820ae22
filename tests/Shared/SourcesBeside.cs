using WireText.Text;

namespace WireText.Testing;

/// <summary>Hands in the files beside the one that names them; of a text that is in no file those of a folder.</summary>
internal sealed class SourcesBeside(string folder) : ISourceProvider
{
    public static SourcesBeside File(string path) => new(Path.GetDirectoryName(path)!);

    public SourceLoad Load(string path, SourceText from) =>
        System.IO.File.Exists(Path.Combine(folder, path))
            ? SourceLoad.Found(new SourceText(path, System.IO.File.ReadAllText(Path.Combine(folder, path))))
            : SourceLoad.Missing("it is not there");
}
