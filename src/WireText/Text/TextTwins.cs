namespace WireText.Text;

/// <summary>
/// Texts of one file that say the same: the same words in the same columns of the same lines. Only comments differ, the blanks
/// before them, and empty lines at the end.
/// </summary>
public static class TextTwins
{
    public static bool Are(SourceText one, SourceText other)
    {
        var shared = Math.Min(one.LineCount, other.LineCount);
        return one.Path == other.Path
            && Enumerable.Range(1, shared).All(line => SayTheSame(one, other, line))
            && IsEmptyFrom(one, shared + 1)
            && IsEmptyFrom(other, shared + 1);
    }

    /// <summary>The same words in a twin of their text.</summary>
    public static SourceLocation In(SourceText twin, SourceLocation place)
    {
        return new SourceLocation(twin, TextSpan.FromBounds(Moved(place.Span.Start), Moved(place.Span.End)));

        int Moved(int offset)
        {
            var (line, column) = place.Source.PositionOf(offset);
            return twin.LineSpan(line).Start + column - 1;
        }
    }

    private static bool SayTheSame(SourceText one, SourceText other, int line)
    {
        var (mine, its) = (LineScan.Of(one, line).Content, LineScan.Of(other, line).Content);
        return mine.Length == its.Length
            && (
                mine.Length == 0
                || (ColumnOf(one, line, mine) == ColumnOf(other, line, its) && one.Slice(mine) == other.Slice(its))
            );
    }

    private static int ColumnOf(SourceText text, int line, TextSpan words) => words.Start - text.LineSpan(line).Start;

    private static bool IsEmptyFrom(SourceText text, int line) =>
        Enumerable.Range(line, Math.Max(0, text.LineCount - line + 1)).All(number => LineScan.Of(text, number).IsEmpty);
}
