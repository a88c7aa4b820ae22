using WireText.Syntax.Nodes;
using WireText.Text;

namespace WireText.Syntax.Parsing;

/// <summary>Reads a file, a line at a time: a bad line gives one finding, and the next line is read all the same.</summary>
public static class WiringParser
{
    /// <summary>
    /// The longest source that is read, in UTF-16 units. Far past what anybody writes (assumed); it keeps a file that is no
    /// wiring text from being held in memory as a tree.
    /// </summary>
    public const int MaxLength = 16 * 1024 * 1024;

    /// <summary>
    /// The most lines that are read, blank ones with them: each is held with what it says and what is wrong with it. Chosen:
    /// several times what the most parts and stretches of wire take.
    /// </summary>
    public const int MaxLines = 500_000;

    public static WiringTree Parse(SourceText source) =>
        Reads(source) ? new FileParser(source).Parse()
        : source.Content.Length > MaxLength ? TooLarge(source, "a file has 16 MiB at most")
        : TooLarge(source, $"a file has {MaxLines} lines at most");

    /// <summary>True for a text that is read at all.</summary>
    public static bool Reads(SourceText source) => source.Content.Length <= MaxLength && source.LineCount <= MaxLines;

    private static WiringTree TooLarge(SourceText source, string message) =>
        new(
            source,
            [],
            [],
            [
                LineFindings.TooLarge.At(
                    new SourceLocation(source, new TextSpan(0, 0)),
                    message,
                    "divide it into several files"
                ),
            ]
        );
}
