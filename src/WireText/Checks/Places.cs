using WireText.Circuits;
using WireText.Text;

namespace WireText.Checks;

/// <summary>Finds the smallest text that shows a lug, a part or a wire.</summary>
public static class Places
{
    /// <summary>The lug where a wire's line names it; the part's name when no wire does.</summary>
    public static SourceLocation Of(CheckContext context, int lug)
    {
        foreach (var wire in context.WiresAt(lug))
        {
            if (OnWire(context.Circuit, wire, lug) is { } place)
            {
                return place;
            }
        }

        return context.Circuit.PartOf(context.Circuit.Lugs[lug]).NameAt;
    }

    /// <summary>The lug's name in the text of a wire; null when it is not written there.</summary>
    public static SourceLocation? OnWire(Circuit circuit, Wire wire, int lug)
    {
        var (name, text) = (circuit.NameOf(lug), wire.DeclaredAt.Text);
        for (var at = 0; at + name.Length <= text.Length; at++)
        {
            at = text.IndexOf(name, at, StringComparison.OrdinalIgnoreCase);
            if (at < 0)
            {
                return null;
            }

            if (!IsPartOfWord(text, at - 1) && !IsPartOfWord(text, at + name.Length))
            {
                var span = new TextSpan(wire.DeclaredAt.Span.Start + at, name.Length);
                return new SourceLocation(wire.DeclaredAt.Source, span);
            }
        }

        return null;
    }

    private static bool IsPartOfWord(string text, int index) =>
        index >= 0 && index < text.Length && !char.IsWhiteSpace(text[index]);
}
