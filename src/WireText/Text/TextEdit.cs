using System.Collections.Immutable;
using System.Text;

namespace WireText.Text;

/// <summary>A change of a text that mends a finding.</summary>
/// <param name="At">What goes; of no length where something is only put in.</param>
/// <param name="NewText">What comes in its place.</param>
public sealed record TextEdit(SourceLocation At, string NewText)
{
    /// <summary>The edit that writes the word that was meant; null where another word is as near, so that it would be a guess.</summary>
    public static TextEdit? Meant(SourceLocation at, string? near, IEnumerable<string> candidates) =>
        near is not null && DidYouMean.IsNearest(at.Text, near, candidates) ? new TextEdit(at, near) : null;

    /// <summary>A new line below the line of a place, with the line ends of the text.</summary>
    public static TextEdit LineBelow(SourceLocation place, string line)
    {
        var source = place.Source;
        var end = source.LineSpan(place.Position.Line).End;
        return new TextEdit(new SourceLocation(source, new TextSpan(end, 0)), LineEndAfter(source.Content, end) + line);
    }

    /// <summary>Other lines in place of the statement on a line; its comment stays.</summary>
    public static TextEdit Statement(SourceLocation place, IEnumerable<string> lines)
    {
        var source = place.Source;
        var end = source.LineSpan(place.Position.Line).End;
        return new TextEdit(StatementAt(place), string.Join(LineEndAfter(source.Content, end), lines));
    }

    /// <summary>Takes the statement on a line out: the whole line, or all but its comment.</summary>
    public static TextEdit WithoutStatement(SourceLocation place)
    {
        var source = place.Source;
        if (ScanAt(place).HasComment)
        {
            return new TextEdit(StatementAt(place), "");
        }

        var line = source.LineSpan(place.Position.Line);
        var next = place.Position.Line < source.LineCount ? NextLine(source.Content, line.End) : line.End;
        return new TextEdit(new SourceLocation(source, TextSpan.FromBounds(line.Start, next)), "");
    }

    /// <summary>True when the edits change different places of one text.</summary>
    public static bool AreApart(ImmutableArray<TextEdit> edits)
    {
        var spans = edits.Select(edit => edit.At.Span).OrderBy(span => span.Start).ToList();
        return spans.Zip(spans.Skip(1)).All(pair => pair.First.End <= pair.Second.Start);
    }

    /// <summary>The text with the edits made, which are apart. Of two that put something in at one place the first comes first.</summary>
    public static string Apply(string text, ImmutableArray<TextEdit> edits)
    {
        var edited = new StringBuilder(text.Length);
        var at = 0;
        foreach (var edit in edits.OrderBy(edit => edit.At.Span.Start))
        {
            edited.Append(text, at, edit.At.Span.Start - at).Append(edit.NewText);
            at = edit.At.Span.End;
        }

        return edited.Append(text, at, text.Length - at).ToString();
    }

    private static SourceLocation StatementAt(SourceLocation place) => place with { Span = ScanAt(place).Content };

    private static LineScan ScanAt(SourceLocation place) => LineScan.Of(place.Source, place.Position.Line);

    private static string LineEndAfter(string text, int lineEnd)
    {
        var next = NextLine(text, lineEnd);
        return next > lineEnd ? text[lineEnd..next] : "\n";
    }

    private static int NextLine(string text, int lineEnd) =>
        lineEnd >= text.Length ? lineEnd
        : text[lineEnd] == '\r' && lineEnd + 1 < text.Length && text[lineEnd + 1] == '\n' ? lineEnd + 2
        : lineEnd + 1;
}
