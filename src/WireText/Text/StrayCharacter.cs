using System.Globalization;

namespace WireText.Text;

/// <summary>The characters that no keyboard types on purpose and no screen shows.</summary>
internal static class StrayCharacter
{
    /// <summary>True for control characters, halves of surrogate pairs, odd blanks and invisible characters.</summary>
    /// <remarks>
    /// In quotes odd blanks and joiners are allowed, but nothing that turns the direction of writing around, or the sheet would
    /// read otherwise than the file.
    /// </remarks>
    /// <param name="end">Where the line ends.</param>
    public static bool IsAt(string text, int index, int end, bool isInText)
    {
        var character = text[index];
        if (character is > ' ' and < '\u007f')
        {
            return false;
        }

        if (char.IsLowSurrogate(character))
        {
            // The second half of a good pair was looked at with the first.
            return index == 0 || !char.IsHighSurrogate(text[index - 1]);
        }

        if (char.IsHighSurrogate(character) && (index + 1 == end || !char.IsLowSurrogate(text[index + 1])))
        {
            return true;
        }

        return CharUnicodeInfo.GetUnicodeCategory(char.ConvertToUtf32(text, index)) switch
        {
            UnicodeCategory.Control => character != '\t' || !isInText,
            UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator => true,
            UnicodeCategory.SpaceSeparator => !isInText,
            UnicodeCategory.Format => !isInText
                || character is (>= '\u202a' and <= '\u202e') or (>= '\u2066' and <= '\u2069'),
            _ => false,
        };
    }
}
