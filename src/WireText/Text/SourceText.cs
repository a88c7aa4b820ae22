using System.Collections.Immutable;

namespace WireText.Text;

/// <summary>One source file: the name it is reported by, and its text.</summary>
/// <remarks>Lines end with LF, CRLF or a lone CR; line and column numbers start at 1 and count UTF-16 units.</remarks>
public sealed class SourceText
{
    private readonly ImmutableArray<int> lineStarts;

    public SourceText(string path, string content)
    {
        Path = path;
        Content = content;
        lineStarts = FindLineStarts(content);
    }

    /// <summary>The name that findings show: as the user gave it, with forward slashes; "-" for standard input.</summary>
    public string Path { get; }

    public string Content { get; }

    /// <summary>At least 1: an empty text has one empty line.</summary>
    public int LineCount => lineStarts.Length;

    /// <summary>The line and the column, both from 1, of an offset in the text.</summary>
    public (int Line, int Column) PositionOf(int offset)
    {
        var index = lineStarts.BinarySearch(offset);
        var line = index >= 0 ? index : ~index - 1;
        return (line + 1, offset - lineStarts[line] + 1);
    }

    /// <summary>The offset of a line and a column, both from 1; of a place past the end of its line or of the text, that end.</summary>
    public int OffsetOf(int line, int column)
    {
        if (line > LineCount)
        {
            return Content.Length;
        }

        var span = LineSpan(Math.Max(line, 1));
        return span.Start + Math.Clamp(column - 1, 0, span.Length);
    }

    /// <summary>The span of a line (numbered from 1) without its line ending.</summary>
    public TextSpan LineSpan(int line)
    {
        var start = lineStarts[line - 1];
        var end = line < lineStarts.Length ? lineStarts[line] : Content.Length;
        while (end > start && Content[end - 1] is '\n' or '\r')
        {
            end--;
        }

        return TextSpan.FromBounds(start, end);
    }

    public string Slice(TextSpan span) => Content.Substring(span.Start, span.Length);

    private static ImmutableArray<int> FindLineStarts(string content)
    {
        var starts = ImmutableArray.CreateBuilder<int>();
        starts.Add(0);
        for (var i = 0; i < content.Length; i++)
        {
            if (content[i] == '\n' || (content[i] == '\r' && (i + 1 == content.Length || content[i + 1] != '\n')))
            {
                starts.Add(i + 1);
            }
        }

        return starts.ToImmutable();
    }
}
