using WireText.Cli.Hosting;

namespace WireText.Cli.Answering;

/// <summary>The addresses (RFC 3986) by which an editor names its texts, and the files that they are.</summary>
internal static class DocumentAddress
{
    /// <summary>The whole path of the file; null for a text that is no file yet.</summary>
    public static string? PathOf(string address) =>
        Uri.TryCreate(address, UriKind.Absolute, out var uri) && uri.IsFile ? Path.GetFullPath(uri.LocalPath) : null;

    /// <summary>The address of a file.</summary>
    /// <param name="path">Whole.</param>
    public static string Of(string path) => new Uri(path).AbsoluteUri;

    /// <summary>What a text is called in what is said of it.</summary>
    public static string NameOf(string address) => PathOf(address) ?? StandardStream.Name;
}
