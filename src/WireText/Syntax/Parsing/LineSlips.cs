using System.Collections.Immutable;
using WireText.Text;

namespace WireText.Syntax.Parsing;

/// <summary>Looks for the usual slips in a line that does not read, and offers the line that was meant.</summary>
/// <remarks>Nothing is offered that does not read: each slip is taken out on a copy of the line, and the copy is read.</remarks>
internal static class LineSlips
{
    /// <summary>A longer line is no slip of the pen, in UTF-16 units; this also bounds the work on a bad line. Chosen.</summary>
    private const int LongestLine = 400;

    /// <summary>In this order they may stand in one line together.</summary>
    private static readonly ImmutableArray<Slip> Usual =
    [
        new("words stand in straight quotes, not in curly ones", SlipRewriting.StraightenQuotes),
        new(null, SlipRewriting.PutToForArrows),
        new("a lug's name is joined to its part's by a dot", SlipRewriting.JoinByDots),
        new("two colours without a slash: a stripe follows a slash", SlipRewriting.JoinStripe),
        new("the colour stands behind the last lug", SlipRewriting.MoveColourBack),
        new(null, SlipRewriting.PutToBetweenLugs),
        new("a colon stands before what must be true", SlipRewriting.PutColonBehindState),
        new("the title of the drawing stands behind 'circuit'", SlipRewriting.NameTheCircuit),
    ];

    /// <summary>The finding of a bad line with the line to write, where one slip or a few of them are all that is wrong with it.</summary>
    /// <param name="reads">True for a line that reads.</param>
    public static Finding Mend(Finding finding, LineReading reading, Func<string, bool> reads)
    {
        var line = reading.Content.Text;
        return line.Length > LongestLine
            ? finding
            : Rewritten(finding, reading, reads)
                ?? AsWire(finding, reading, reads)
                ?? BetweenNames(finding, line, reads)
                ?? Joined(finding, line, reads)
                ?? WithoutLug(finding, line)
                ?? WithoutColour(finding, line, reads)
                ?? finding;
    }

    private static Finding? Rewritten(Finding finding, LineReading reading, Func<string, bool> reads)
    {
        var line = reading.Content.Text;
        Slip? first = null;
        foreach (var slip in Usual)
        {
            if (slip.Rewrite(line) is not { } rewritten || rewritten == line)
            {
                continue;
            }

            (line, first) = (rewritten, first ?? slip);
            if (reads(line))
            {
                return finding with
                {
                    Message = first.Message ?? finding.Message,
                    Help = $"write: {line}",
                    Edits = [new TextEdit(reading.Content, line)],
                };
            }
        }

        return null;
    }

    /// <summary>A line that joins lugs and starts with no word, or with another word than <c>wire</c>: it may be meant otherwise.</summary>
    private static Finding? AsWire(Finding finding, LineReading reading, Func<string, bool> reads)
    {
        if (finding.Description != LineFindings.UnknownStatement && finding.Description != LineFindings.Expected)
        {
            return null;
        }

        var (line, word) = (reading.Content.Text, reading.FirstWord.Text);
        if (DidYouMean.Nearest(word, Keywords.Statements.Concat(Keywords.StandardKinds)) is not null)
        {
            return null;
        }

        var isNoWord = word.Contains('.', StringComparison.Ordinal);
        var wire = isNoWord ? $"wire {line}" : $"wire{line[word.Length..]}";
        return !reads(wire)
            ? null
            : finding with
            {
                Location = reading.FirstWord.Location,
                Description = LineFindings.UnknownStatement,
                Message = $"no statement starts with '{LineExplanation.Shorten(word)}'",
                Help = $"write: {wire}",
            };
    }

    /// <summary>A wire between two names without a dot: two parts of one lug each, or a part with the name of its lug.</summary>
    private static Finding? BetweenNames(Finding finding, string line, Func<string, bool> reads) =>
        SlipRewriting.PutToBetweenNames(line) is { } rewritten && reads(rewritten)
            ? finding with
            {
                Help = $"write: {rewritten}",
            }
            : null;

    /// <summary>A claim whose coils are joined by a sign or by <c>and</c>, which may mean either of two things.</summary>
    private static Finding? Joined(Finding finding, string line, Func<string, bool> reads) =>
        SlipRewriting.JoinCoils(line, "parallel") is { } parallel
        && SlipRewriting.JoinCoils(line, "series") is { } series
        && reads(parallel)
        && reads(series)
            ? finding with
            {
                Message = "how coils are joined is said by a word: parallel or series",
                Help = $"write: {parallel}\nor: {series}",
            }
            : null;

    /// <summary>A wire that goes to a colour: which lug is meant nobody can say.</summary>
    private static Finding? WithoutLug(Finding finding, string line) =>
        SlipRewriting.ColourInPlaceOfLug(line) is { } colour
            ? finding with
            {
                Message = "the lug before the colour is missing",
                Help = $"write the lug that it goes to before '{colour}'",
            }
            : null;

    /// <summary>A wire that lacks its last word: which colour it has only who wires it can say.</summary>
    private static Finding? WithoutColour(Finding finding, string line, Func<string, bool> reads) =>
        reads($"{line} bare")
            ? finding with
            {
                Message = "the wire has no colour",
                Help = "write its colour behind the last lug: black, white, red … or bare",
            }
            : null;

    /// <summary>One usual slip.</summary>
    /// <param name="Message">What is wrong; null where what was expected says it best.</param>
    /// <param name="Rewrite">The line without it; null, or the same line, where it is not in it.</param>
    private sealed record Slip(string? Message, Func<string, string?> Rewrite);
}
