using WireText.Text;

namespace WireText.Syntax.Parsing;

/// <summary>The line that is being read, and the furthest place where something else was expected.</summary>
/// <remarks>
/// Sprache's own error names one branch. A line is best explained by everything that could have stood at the furthest
/// place that was reached, so each primitive notes here what it looked for and did not find.
/// </remarks>
internal sealed class LineReading(SourceLocation content, bool hasMarks)
{
    private readonly List<string> expected = [];
    private int furthest = -1;

    public string Source => content.Source.Content;

    /// <summary>From the first word to the last, without blanks and comment around them.</summary>
    public SourceLocation Content => content;

    /// <summary>True in <c>expect</c>, where <c>: , ( )</c> are words of their own.</summary>
    public bool HasMarks => hasMarks;

    /// <summary>What could have stood at the furthest place, in the order in which it was looked for.</summary>
    public IReadOnlyList<string> Expected => expected;

    /// <summary>Why the word there is not one of those; null when there is nothing to add.</summary>
    public string? Reason { get; private set; }

    /// <summary>What to write instead, where more is known than what was expected; null elsewhere.</summary>
    public string? Help { get; private set; }

    /// <summary>The wrong text at the furthest place; empty when the line ended too soon.</summary>
    public SourceLocation Wrong { get; private set; }

    /// <summary>The word that starts at a position; empty at the end of the line.</summary>
    public SourceLocation WordAt(int position) =>
        content with
        {
            Span = TextSpan.FromBounds(position, LineScan.WordEnd(Source, position, content.Span.End, hasMarks)),
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
