using System.Globalization;
using System.Text;

namespace WireText.Text;

/// <summary>
/// Makes text from strangers harmless where people read it: on a terminal and in the log of a workflow. Each character that
/// would do something there instead of being seen is shown as a box.
/// </summary>
public static class VisibleText
{
    private const char Box = '□';

    /// <summary>A text that belongs in one line: line ends are shown too. Tabs stay.</summary>
    /// <remarks>
    /// Control characters move the cursor or change colours, marks of direction and the separators of Unicode make a line read
    /// otherwise than it is. A log of a workflow takes a line that starts with <c>::</c>, and <c>##[</c> anywhere, for a command.
    /// </remarks>
    public static string Line(string text)
    {
        var visible = new StringBuilder(text.Length);
        var isAtStart = true;
        for (var i = 0; i < text.Length; i++)
        {
            var isHidden =
                IsUnseen(text[i])
                || (isAtStart && text.AsSpan(i).StartsWith("::"))
                || (text[i] == '[' && text.AsSpan(0, i).EndsWith("##"));
            visible.Append(isHidden ? Box : text[i]);
            isAtStart &= char.IsWhiteSpace(text[i]);
        }

        return visible.ToString();
    }

    /// <summary>A text of several lines, which stay lines.</summary>
    public static string Lines(string text) => string.Join('\n', text.Split('\n').Select(Line));

    private static bool IsUnseen(char character) =>
        char.GetUnicodeCategory(character) switch
        {
            UnicodeCategory.Control => character != '\t',
            UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator => true,
            UnicodeCategory.Format => IsMarkOfDirection(character),
            _ => false,
        };

    /// <summary>The marks of the Unicode Bidirectional Algorithm (Unicode Standard Annex 9, section 2).</summary>
    private static bool IsMarkOfDirection(char character) =>
        character is '\u061C' or '\u200E' or '\u200F' or (>= '\u202A' and <= '\u202E') or (>= '\u2066' and <= '\u2069');
}
