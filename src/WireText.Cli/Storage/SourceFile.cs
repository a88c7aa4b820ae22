using System.Text;
using WireText.Cli.Hosting;
using WireText.Text;

namespace WireText.Cli.Storage;

/// <summary>A file as it was read.</summary>
/// <param name="Path">As it was given; a dash for standard input.</param>
/// <param name="Text">Without a byte order mark: some editors start a file with one, and it is no character of the text.</param>
/// <param name="Bytes">All of it. They tell later whether somebody changed the file meanwhile.</param>
internal sealed record SourceFile(string Path, SourceText Text, byte[] Bytes)
{
    /// <summary>Another text in the bytes of this file: with a byte order mark when it has one.</summary>
    public byte[] Encoded(string text) =>
        Bytes is [0xEF, 0xBB, 0xBF, ..]
            ? [.. Encoding.UTF8.Preamble, .. Encoding.UTF8.GetBytes(text)]
            : Encoding.UTF8.GetBytes(text);

    /// <summary>The name without its folders; null for standard input.</summary>
    public string? Name => Path == StandardStream.Name ? null : System.IO.Path.GetFileName(Path);
}
