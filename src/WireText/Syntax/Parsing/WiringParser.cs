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

    public static WiringTree Parse(SourceText source)
    {
        if (source.Content.Length > MaxLength)
        {
            var finding = LineFindings.TooLarge.At(
                new SourceLocation(source, new TextSpan(0, 0)),
                "a file has 16 MiB at most",
                "divide it into several files"
            );
            return new WiringTree(source, [], [], [finding]);
        }

        return new FileParser(source).Parse();
    }
}
