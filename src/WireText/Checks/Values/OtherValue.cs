using WireText.Circuits;
using WireText.Quantities;
using WireText.Text;

namespace WireText.Checks.Values;

/// <summary>A part with another value, for the author to choose.</summary>
internal static class OtherValue
{
    /// <summary>The line of a part with another value where its own stands; no edit where it is written in another way.</summary>
    /// <param name="label">The value as it is written.</param>
    public static Suggestion Of(Part part, double value, ValueUse use, string label)
    {
        var source = part.NameAt.Source;
        var content = LineScan.Of(source, part.NameAt.Position.Line).Content;
        var text = source.Slice(content);
        var words = LineScan.WordsOf(text).Where(word => content.Start + word.Start > part.NameAt.Span.Start);
        foreach (var word in words)
        {
            if (ValueReader.Read(text.Substring(word.Start, word.Length), use).Value is { } read && read.Equals(value))
            {
                var at = new SourceLocation(source, word with { Start = content.Start + word.Start });
                return new Suggestion($"{part.Name} {label}", [new TextEdit(at, label)]);
            }
        }

        return new Suggestion($"{part.Name} {label}", []);
    }
}
