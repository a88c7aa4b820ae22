using System.Collections.Immutable;
using WireText.Syntax.Parsing;
using WireText.Text;

namespace WireText.Editing;

/// <summary>
/// A line up to a place in it, where somebody writes. It is divided and not parsed: half written, it can seldom be read.
/// </summary>
/// <param name="Words">Those that stand before the place, without the one that is being written.</param>
/// <param name="Written">What is there of the word that is being written; empty where none is begun.</param>
/// <param name="At">Where that word stands, up to the place.</param>
internal sealed record LineBefore(ImmutableArray<string> Words, string Written, TextSpan At)
{
    /// <summary>True where the line starts with a blank: it belongs to a block.</summary>
    public bool IsIndented { get; private init; }

    /// <summary>True in a comment and in quotes, where nothing is to be completed.</summary>
    public bool IsInText { get; private init; }

    public string First => Words.IsEmpty ? "" : Words[0];

    /// <summary>The word before the one that is being written.</summary>
    public string Last => Words.IsEmpty ? "" : Words[^1];

    /// <summary>The one before that.</summary>
    public string LastButOne => Words.Length < 2 ? "" : Words[^2];

    public static LineBefore Of(SourceText source, int offset)
    {
        var line = source.LineSpan(source.PositionOf(offset).Line);
        var upTo = TextSpan.FromBounds(line.Start, Math.Min(offset, line.End));
        var scan = LineScan.Of(source.Content, upTo);
        var words = LineScan.WordsIn(source.Content, scan.Content);
        if (words.Count > 0 && IsOfExpect(words.ConvertAll(source.Slice)))
        {
            words = LineScan.WordsIn(source.Content, scan.Content, hasMarks: true);
        }

        // A mark is whole as soon as it is there.
        var isBegun =
            words.Count > 0 && words[^1].End == upTo.End && source.Slice(words[^1]) is not (":" or "," or "(" or ")");
        var at = isBegun ? words[^1] : new TextSpan(upTo.End, 0);
        return new LineBefore(
            [.. words.Take(isBegun ? words.Count - 1 : words.Count).Select(source.Slice)],
            source.Slice(at),
            at
        )
        {
            IsIndented = upTo.Length > 0 && source.Content[upTo.Start] is ' ' or '\t',
            IsInText = scan.HasComment || scan.OpenQuote >= 0,
        };
    }

    /// <summary>The last part of the word that is being written, behind a mark in it.</summary>
    /// <param name="mark">The last of it counts.</param>
    public TextSpan Behind(char mark) => TextSpan.FromBounds(At.Start + Written.LastIndexOf(mark) + 1, At.End);

    private static bool IsOfExpect(List<string> words) =>
        Naming.Alike(words[0], Keywords.Expect)
        || (words.Count > 1 && Naming.Alike(words[0], Keywords.Drop) && Naming.Alike(words[1], Keywords.Expect));
}
