namespace WireText.Text;

/// <summary>
/// What a line of wiring text is made of: words, quoted texts that may hold blanks, and a comment. Who reads, prints or edits a
/// line divides it with this alone.
/// </summary>
/// <remarks>
/// Words stand apart by blanks and tabs. A quote runs to the next quote, and what stands directly before or behind it belongs
/// to the same word. A <c>#</c> starts a comment where a word could start; inside a word or in quotes it is a character, and so
/// it is where the paint of a colour stands: <c>colour cream CR #efe3c2</c>.
/// </remarks>
/// <param name="Content">From the first word to the last, without the blanks around them and without the comment; of no length on a line without words.</param>
/// <param name="CommentStart">The offset of <c>#</c>, or -1.</param>
/// <param name="OpenQuote">The offset of a quote that the line does not close, or -1. It takes the rest of the line with it.</param>
/// <param name="Stray">The offset of the first character that has no business in a line, or -1.</param>
public readonly record struct LineScan(TextSpan Content, int CommentStart, int OpenQuote, int Stray)
{
    /// <summary>The word that starts a line which names a colour.</summary>
    internal const string ColourWord = "colour";

    private const char ByteOrderMark = '\uFEFF';

    /// <summary>The word itself, a name and a code.</summary>
    private const int WordsBeforePaint = 3;

    /// <summary>True when blanks stand before the first word.</summary>
    public bool IsIndented { get; private init; }

    public bool IsEmpty => Content.Length == 0;

    public bool HasComment => CommentStart >= 0;

    /// <summary>Looks at a line, numbered from 1. A byte order mark is no part of the first one.</summary>
    public static LineScan Of(SourceText source, int number)
    {
        var line = source.LineSpan(number);
        return number == 1 && source.Content.StartsWith(ByteOrderMark)
            ? Of(source.Content, TextSpan.FromBounds(line.Start + 1, line.End))
            : Of(source.Content, line);
    }

    /// <summary>Looks at a stretch of text that holds no line ending.</summary>
    public static LineScan Of(string text, TextSpan line)
    {
        var (openQuote, stray) = (-1, -1);
        var start = SkipBlanks(text, line.Start, line.End);
        var (at, end) = (start, start);
        var words = 0;
        while (at < line.End && (text[at] != '#' || (words == WordsBeforePaint && IsColour(text, line, start))))
        {
            var word = WordAt(text, at, line.End, hasMarks: false);
            words++;
            (end, openQuote) = (word.End, word.OpenQuote);
            stray = stray < 0 ? word.Stray : stray;
            at = SkipBlanks(text, end, line.End);
        }

        return new LineScan(TextSpan.FromBounds(start, end), at < line.End ? at : -1, openQuote, stray)
        {
            IsIndented = start > line.Start && end > start,
        };
    }

    /// <summary>The words of a line, quoted texts among them, in order.</summary>
    public static List<TextSpan> WordsOf(string line) => WordsIn(line, Of(line, new TextSpan(0, line.Length)).Content);

    /// <summary>A line with single blanks, none at its ends, and without its comment; what is in quotes stays as it is.</summary>
    public static string Tidied(string line) =>
        string.Join(' ', WordsOf(line).Select(word => line.Substring(word.Start, word.Length)));

    /// <summary>The words of a line's content, in order.</summary>
    /// <param name="hasMarks">True in <c>expect</c> and <c>found</c>, where <c>: , ( )</c> are words of their own.</param>
    public static List<TextSpan> WordsIn(string text, TextSpan content, bool hasMarks = false)
    {
        var words = new List<TextSpan>();
        var at = SkipBlanks(text, content.Start, content.End);
        while (at < content.End)
        {
            var end = WordEnd(text, at, content.End, hasMarks);
            words.Add(TextSpan.FromBounds(at, end));
            at = SkipBlanks(text, end, content.End);
        }

        return words;
    }

    /// <summary>The end of the word that starts at <paramref name="start"/>.</summary>
    /// <param name="hasMarks">True in <c>expect</c> and <c>found</c>, where <c>: , ( )</c> end a word and are words of their own.</param>
    public static int WordEnd(string text, int start, int end, bool hasMarks) => WordAt(text, start, end, hasMarks).End;

    public static int SkipBlanks(string text, int start, int end)
    {
        while (start < end && IsBlank(text[start]))
        {
            start++;
        }

        return start;
    }

    private static Word WordAt(string text, int start, int end, bool hasMarks)
    {
        if (start < end && hasMarks && IsMark(text[start]))
        {
            return new Word(start + 1, -1, -1);
        }

        var (quote, stray) = (-1, -1);
        for (var i = start; i < end; i++)
        {
            var character = text[i];
            if (quote < 0 && (IsBlank(character) || (hasMarks && IsMark(character))))
            {
                return new Word(i, quote, stray);
            }

            if (character == '"')
            {
                quote = quote < 0 ? i : -1;
            }
            else if (stray < 0 && StrayCharacter.IsAt(text, i, end, isInText: quote >= 0))
            {
                stray = i;
            }
        }

        return new Word(end, quote, stray);
    }

    /// <summary>True on a line that names a colour.</summary>
    private static bool IsColour(string text, TextSpan line, int start) =>
        Naming.Alike(text[start..WordEnd(text, start, line.End, hasMarks: false)], ColourWord);

    private static bool IsBlank(char character) => character is ' ' or '\t';

    private static bool IsMark(char character) => character is ':' or ',' or '(' or ')';

    /// <summary>One word, by where it ends.</summary>
    private readonly record struct Word(int End, int OpenQuote, int Stray);
}
