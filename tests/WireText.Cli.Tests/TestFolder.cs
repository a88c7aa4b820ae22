using System.Text;

namespace WireText.Cli.Tests;

/// <summary>A folder of its own for one test, gone afterwards, and the files in it.</summary>
internal sealed class TestFolder : IDisposable
{
    public TestFolder()
    {
        Root = Path.Combine(Path.GetTempPath(), $"wiretext-{Path.GetRandomFileName()}");
        Directory.CreateDirectory(Root);
    }

    public string Root { get; }

    /// <summary>Every file below the folder, by its name from there.</summary>
    public IEnumerable<string> Names =>
#pragma warning disable RS0030 // A test may have left it empty.
        Directory
            .EnumerateFiles(Root, "*", SearchOption.AllDirectories)
#pragma warning restore RS0030
            .Select(file => Path.GetRelativePath(Root, file))
            .Order(StringComparer.Ordinal);

    public string this[string name] => Path.Combine(Root, name);

    public string Put(string name, string content) => Put(name, Encoding.UTF8.GetBytes(content));

    public string Put(string name, byte[] content)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(this[name])!);
        File.WriteAllBytes(this[name], content);
        return this[name];
    }

    public string Text(string name) => File.ReadAllText(this[name]);

    public void Dispose() => Directory.Delete(Root, recursive: true);
}
