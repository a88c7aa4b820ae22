using Sprache;
using WireText.Text;

namespace WireText.Syntax.Parsing;

/// <summary>A place in the line being read: where its next word starts, or its end.</summary>
internal sealed class LineInput(LineReading reading, int position) : IInput, IEquatable<LineInput>
{
    private Dictionary<object, object>? memos;

    /// <summary>Where the next word starts, at or behind an offset in the source.</summary>
    public static LineInput At(LineReading reading, int offset) =>
        new(reading, LineScan.SkipBlanks(reading.Source, offset, reading.Content.Span.End));

    public LineReading Reading => reading;

    public int Position => position;

    public string Source => reading.Source;

    public char Current => reading.Source[position];

    public bool AtEnd => position >= reading.Content.Span.End;

    public int Line => 1;

    public int Column => position - reading.Content.Span.Start + 1;

    /// <summary>One for each place: Sprache takes a second visit with the same memo for a left recursion.</summary>
    public IDictionary<object, object> Memos => memos ??= [];

    public IInput Advance() => new LineInput(reading, position + 1);

    public bool Equals(IInput? other) => other is LineInput place && Equals(place);

    public bool Equals(LineInput? other) => other is not null && other.Position == position;

    public override bool Equals(object? obj) => obj is LineInput other && Equals(other);

    public override int GetHashCode() => position;
}
