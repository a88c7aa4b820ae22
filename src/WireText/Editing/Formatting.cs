using System.Collections.Immutable;
using WireText.Syntax;
using WireText.Syntax.Nodes;
using WireText.Text;

namespace WireText.Editing;

/// <summary>The edits that format a text: each changes what differs in one line, so that a cursor elsewhere stays where it is.</summary>
public static class Formatting
{
    public static ImmutableArray<TextEdit> EditsOf(WiringTree tree)
    {
        var before = tree.Source;
        var after = new SourceText(before.Path, Formatter.Format(tree));
        if (before.Content == after.Content)
        {
            return [];
        }

        // The formatter keeps lines: only blank ones at the end go, and line ends are made alike.
        return after.LineCount <= before.LineCount && HasLikeLineEnds(before)
            ? [.. LineByLine(before, after)]
            : [new TextEdit(new SourceLocation(before, new TextSpan(0, before.Content.Length)), after.Content)];
    }

    private static IEnumerable<TextEdit> LineByLine(SourceText before, SourceText after)
    {
        for (var line = 1; line < after.LineCount; line++)
        {
            var (was, now) = (before.LineSpan(line), after.Slice(after.LineSpan(line)));
            if (before.Slice(was) != now)
            {
                yield return new TextEdit(new SourceLocation(before, was), now);
            }
        }

        var (oldEnd, newEnd) = (before.LineSpan(after.LineCount).Start, after.LineSpan(after.LineCount).Start);
        if (before.Content[oldEnd..] != after.Content[newEnd..])
        {
            yield return new TextEdit(
                new SourceLocation(before, TextSpan.FromBounds(oldEnd, before.Content.Length)),
                after.Content[newEnd..]
            );
        }
    }

    private static bool HasLikeLineEnds(SourceText source)
    {
        var breaks = source.Content.Count(character => character == '\n');
        var both = source.Content.Split("\r\n").Length - 1;
        return breaks == source.LineCount - 1 && (both == 0 || both == breaks);
    }
}
