using WireText.Parts;
using WireText.Quantities;
using WireText.Syntax.Nodes;

namespace WireText.Circuits.Binding;

/// <summary>A taper given by the letter printed on many pots. The letters swap meaning between schemes, so it is read and asked about.</summary>
/// <remarks>
/// A is logarithmic and B linear in JIS C 5260-1; IEC 60393-1:1989 and MIL-R-94 have A for linear.
/// It is read as in the first, the common one on guitar pots (common practice).
/// </remarks>
internal static class BareTaper
{
    public static bool IsLetter(string word) => word.Length == 1 && Of(word[0]) is not null;

    /// <summary>True for <c>A500k</c>: the letter stands before a value.</summary>
    public static bool SplitsOff(string word) =>
        word.Length > 1 && Of(word[0]) is not null && ValueReader.Read(word[1..], ValueUse.Pot).Value is not null;

    public static (WordSyntax Value, WordSyntax Taper) Split(WordSyntax word) =>
        (word.Part(1, word.Text.Length), word.Part(0, 1));

    public static Taper? Of(char letter) =>
        char.ToUpperInvariant(letter) switch
        {
            'A' => Taper.Audio,
            'B' => Taper.Linear,
            'C' => Taper.ReverseAudio,
            _ => null,
        };
}
