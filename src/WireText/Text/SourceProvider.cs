namespace WireText.Text;

/// <summary>What came of asking for another file: its text, or why there is none.</summary>
/// <param name="Problem">A short statement ready for a message; null when the text is there.</param>
public readonly record struct SourceLoad(SourceText? Source, string? Problem)
{
    public static SourceLoad Found(SourceText source) => new(source, null);

    public static SourceLoad Missing(string problem) => new(null, problem);
}

/// <summary>Hands in the files that a file includes. The host decides what may be read; the core reads nothing itself.</summary>
public interface ISourceProvider
{
    /// <summary>The file of that path, as written in <paramref name="from"/>. The same file has the same path each time.</summary>
    SourceLoad Load(string path, SourceText from);
}

/// <summary>A host without files: standard input, a test, a page.</summary>
public sealed class NoSources : ISourceProvider
{
    public static readonly NoSources Instance = new();

    public SourceLoad Load(string path, SourceText from) => SourceLoad.Missing("no other file can be read here");
}
