using WireText.Syntax.Nodes;
using WireText.Text;

namespace WireText.Syntax.Parsing;

/// <summary>The line that is being read, and the furthest place where something else was expected.</summary>
/// <remarks>
/// Sprache's own error names one branch. A line is best explained by everything that could have stood at the furthest
/// place that was reached, so each primitive notes here what it looked for and did not find.
/// </remarks>
internal sealed class LineReading
{
    private readonly List<string> expected = [];
    private int furthest = -1;

    private LineReading(SourceLocation content, bool hasMarks)
    {
        Content = content;
        HasMarks = hasMarks;
        var first = WordAt(content.Span.Start);
        FirstWord = new WordSyntax(first.Text, first);
    }

    public string Source => Content.Source.Content;

    /// <summary>From the first word to the last, without blanks and comment around them.</summary>
    public SourceLocation Content { get; }

    /// <summary>True in <c>expect</c>, <c>drop expect</c> and <c>found</c>, where <c>: , ( )</c> are words of their own.</summary>
    public bool HasMarks { get; }

    public WordSyntax FirstWord { get; }

    /// <summary>What could have stood at the furthest place, in the order in which it was looked for.</summary>
    public IReadOnlyList<string> Expected => expected;

    /// <summary>Why the word there is not one of those; null when there is nothing to add.</summary>
    public string? Reason { get; private set; }

    /// <summary>What to write instead, where more is known than what was expected; null elsewhere.</summary>
    public string? Help { get; private set; }

    /// <summary>The wrong text at the furthest place; empty when the line ended too soon.</summary>
    public SourceLocation Wrong { get; private set; }

    /// <summary>The reading of a line that says something by itself.</summary>
    public static LineReading OfStatement(SourceLocation content)
    {
        var reading = OfBlockLine(content);
        var next = reading.WordAt(
            LineScan.SkipBlanks(reading.Source, reading.FirstWord.Location.Span.End, content.Span.End)
        );
        var isOfExpect =
            reading.FirstWord.Is(Keywords.Expect)
            || reading.FirstWord.Is(Keywords.Found)
            || (reading.FirstWord.Is(Keywords.Drop) && Naming.Alike(next.Text, Keywords.Expect));
        return isOfExpect ? new LineReading(content, hasMarks: true) : reading;
    }

    /// <summary>The reading of a line under <c>arrange</c> or <c>define</c>.</summary>
    public static LineReading OfBlockLine(SourceLocation content) => new(content, hasMarks: false);

    /// <summary>Another reading of the same line, so that nothing is noted on this one.</summary>
    public LineReading Aside() => new(Content, HasMarks);

    /// <summary>The word that starts at a position; empty at the end of the line.</summary>
    public SourceLocation WordAt(int position) =>
        Content with
        {
            Span = TextSpan.FromBounds(position, LineScan.WordEnd(Source, position, Content.Span.End, HasMarks)),
        };

    /// <summary>Notes what was looked for at a position and not found.</summary>
    /// <param name="what">In the words of the trade; what can be typed there literally is in single quotes.</param>
    /// <param name="reason">Why the word there will not do, where that is not plain.</param>
    public void NoteExpected(int position, string? what, string? reason = null)
    {
        if (position < furthest)
        {
            return;
        }

        if (position > furthest)
        {
            furthest = position;
            expected.Clear();
            Reason = null;
            Help = null;
            Wrong = WordAt(position);
        }

        if (what is not null && !expected.Contains(what))
        {
            expected.Add(what);
        }

        Reason ??= reason;
    }

    /// <summary>Notes that what stands at a position would make the text before it mean one of two things.</summary>
    public void NoteTwoWays(int position, string first, string second)
    {
        NoteExpected(position, null);
        if (position == furthest)
        {
            Reason = $"without brackets this can be read in two ways: {first}, or {second}";
            Help = "write the one that is meant, with its brackets";
        }
    }
}
