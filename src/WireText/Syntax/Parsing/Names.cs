using System.Buffers;
using System.Text;

namespace WireText.Syntax.Parsing;

/// <summary>Which words can be names. Upper and lower case are one.</summary>
public static class Names
{
    /// <summary>The words that join others in a line; they stand for nothing else anywhere.</summary>
    internal static readonly string[] Connectives = ["to", "from", "at", "as", "and"];

    /// <summary>The words of <c>expect</c>, which would otherwise be taken for a coil or a control.</summary>
    internal static readonly string[] WordsOfExpect =
    [
        "expect",
        "rest",
        "any",
        "others",
        "silence",
        "dead",
        "open",
        "hum-cancelling",
        "battery",
        "on",
        "off",
        "reads",
        "resonates",
        "level",
        "reversed",
        "parallel",
        "series",
        "through",
    ];

    /// <summary>Why a word cannot be the name of a part, a splice or a control; null when it can.</summary>
    public static string? WhyNoName(string word)
    {
        if (Contains(Connectives, word) || Contains(WordsOfExpect, word))
        {
            return $"'{word}' means something else in this language: add a letter or a number to the name";
        }

        return WhyNoIdentifier(word);
    }

    /// <summary>Why a word cannot be a kind, a model or a key; null when it can.</summary>
    internal static string? WhyNoIdentifier(string word)
    {
        if (
            word.Length == 0
            || Rune.DecodeFromUtf16(word, out var first, out _) != OperationStatus.Done
            || !Rune.IsLetter(first)
        )
        {
            return "a name starts with a letter";
        }

        return IsConnective(word) ? $"'{word}' joins other words and names nothing" : WhyNoLugWord(word);
    }

    /// <summary>Why a word cannot follow a dot, where a number may come first (<c>vol.2</c>); null when it can.</summary>
    internal static string? WhyNoLugWord(ReadOnlySpan<char> word)
    {
        if (word.IsEmpty)
        {
            return "a name follows each dot";
        }

        if (word[0] is '-' or '_')
        {
            return "a name starts with a letter or a number";
        }

        foreach (var rune in word.EnumerateRunes())
        {
            if (!Rune.IsLetter(rune) && !(rune.IsAscii && Rune.IsDigit(rune)) && rune.Value is not ('-' or '_'))
            {
                return "a name has letters, digits, '-' and '_' only";
            }
        }

        return null;
    }

    internal static bool IsConnective(string word) => Contains(Connectives, word);

    private static bool Contains(string[] words, string word) =>
        Array.Exists(words, candidate => string.Equals(candidate, word, StringComparison.OrdinalIgnoreCase));
}
