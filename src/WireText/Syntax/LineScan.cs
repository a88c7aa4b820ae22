using System.Globalization;

namespace WireText.Syntax;

/// <summary>One look at a line: where its words are, where its comment starts, and what must not stand in it.</summary>
/// <param name="ContentStart">Where the first word starts; equal to <paramref name="ContentEnd"/> on a line without words.</param>
/// <param name="ContentEnd">Just past the last word.</param>
/// <param name="CommentStart">The offset of <c>#</c>, or -1.</param>
/// <param name="Stray">The offset of the first character that has no business here, or -1.</param>
/// <param name="OpenQuote">The offset of a quote that the line does not close, or -1.</param>
/// <param name="WordCount">How many words and quoted texts.</param>
internal readonly record struct LineScan(
    int ContentStart,
    int ContentEnd,
    int CommentStart,
    int Stray,
    int OpenQuote,
    int WordCount
)
{
    public bool IsEmpty => ContentStart == ContentEnd;

    /// <summary>Looks at the text from <paramref name="start"/> to <paramref name="end"/>, which holds no line ending.</summary>
    public static LineScan Of(string text, int start, int end)
    {
        var (first, last, stray, quote, words) = (-1, start, -1, -1, 0);
        var inWord = false;
        for (var i = start; i < end; i++)
        {
            var c = text[i];
            if (quote < 0 && IsBlank(c))
            {
                inWord = false;
                continue;
            }

            if (c == '#' && quote < 0 && !inWord)
            {
                return Found(i);
            }

            if (!inWord)
            {
                inWord = true;
                words++;
                first = first < 0 ? i : first;
            }

            if (c == '"')
            {
                quote = quote < 0 ? i : -1;
            }
            else if (stray < 0 && IsStray(text, i, end, isInText: quote >= 0))
            {
                stray = i;
            }

            last = i + 1;
        }

        return Found(-1);

        LineScan Found(int comment) =>
            first < 0 ? new(start, start, comment, -1, -1, 0) : new(first, last, comment, stray, quote, words);
    }

    /// <summary>
    /// The end of the word that starts at <paramref name="start"/>. What is in quotes belongs to the word, blanks and
    /// all; a mark of <c>expect</c> ends a word, and is one by itself.
    /// </summary>
    public static int WordEnd(string text, int start, int end, bool hasMarks)
    {
        if (start < end && hasMarks && IsMark(text[start]))
        {
            return start + 1;
        }

        var isInText = false;
        for (var i = start; i < end; i++)
        {
            if (text[i] == '"')
            {
                isInText = !isInText;
            }
            else if (!isInText && (IsBlank(text[i]) || (hasMarks && IsMark(text[i]))))
            {
                return i;
            }
        }

        return end;
    }

    public static int SkipBlanks(string text, int start, int end)
    {
        while (start < end && IsBlank(text[start]))
        {
            start++;
        }

        return start;
    }

    public static bool IsBlank(char c) => c is ' ' or '\t';

    /// <summary>The characters that are words of their own in <c>expect</c>.</summary>
    public static bool IsMark(char c) => c is ':' or ',' or '(' or ')';

    /// <summary>
    /// True for what no keyboard types on purpose: control characters, halves of surrogate pairs, odd blanks and
    /// invisible characters. In quotes odd blanks and joiners are allowed, but nothing that turns the direction of
    /// writing around, or the sheet would read otherwise than the file.
    /// </summary>
    private static bool IsStray(string text, int index, int end, bool isInText)
    {
        var c = text[index];
        if (c is > ' ' and < '\u007f')
        {
            return false;
        }

        if (char.IsLowSurrogate(c))
        {
            // The second half of a good pair was looked at with the first.
            return index == 0 || !char.IsHighSurrogate(text[index - 1]);
        }

        if (char.IsHighSurrogate(c) && (index + 1 == end || !char.IsLowSurrogate(text[index + 1])))
        {
            return true;
        }

        return CharUnicodeInfo.GetUnicodeCategory(char.ConvertToUtf32(text, index)) switch
        {
            UnicodeCategory.Control => c != '\t' || !isInText,
            UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator => true,
            UnicodeCategory.SpaceSeparator => !isInText,
            UnicodeCategory.Format => !isInText || c is (>= '\u202a' and <= '\u202e') or (>= '\u2066' and <= '\u2069'),
            _ => false,
        };
    }
}
