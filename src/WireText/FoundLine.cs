using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Diagnosing;
using WireText.Syntax;
using WireText.Syntax.Nodes;
using WireText.Syntax.Parsing;
using WireText.Text;

namespace WireText;

/// <summary>Writes what was found into the text that it was found of, below what stands there already.</summary>
public static class FoundLine
{
    private static readonly string[] FirstWords =
    [
        "reads",
        "at",
        "heard",
        .. Enum.GetNames<FoundSign>().Where(sign => sign != nameof(FoundSign.Open)),
    ];

    /// <summary>The line of an answer as it is typed: a value alone is what a meter shows.</summary>
    /// <param name="next">What was asked for.</param>
    public static string Of(NextMeasurement next, string answer)
    {
        answer = LineScan.Tidied(answer);
        var first = answer.Split([' ', ','], 2)[0];
        var isWhole =
            next.IsByEar
            || next.Place is FoundAtLead or FoundAtCell
            || FirstWords.Contains(first, StringComparer.OrdinalIgnoreCase)
            || IsAloneByWord(next.Place, answer);
        var what =
            isWhole ? answer
            : next.Place is FoundAtPlug { Turning: not null } ? $"at most {answer}"
            : $"reads {answer}";
        return $"found   {next.Where}:  {what}";
    }

    /// <summary>The text with the line in it, and what is wrong with the line; a text that was in columns stays so.</summary>
    public static (SourceText Text, ImmutableArray<Finding> Problems) AddTo(
        SourceText source,
        string line,
        ISourceProvider sources
    )
    {
        var tree = WiringParser.Parse(source);
        var last = tree.Statements.OfType<FoundSyntax>().LastOrDefault();
        var at = last is null ? source.Content.Length : source.LineSpan(last.Location.Position.Line).End;
        var isInColumns = Formatter.Format(tree) == source.Content;
        var before = source.Content[..at];
        var gap =
            last is not null || before.Length == 0 ? ""
            : before.EndsWith('\n') ? "\n"
            : "\n\n";
        var added = last is null ? $"{before}{gap}{line}\n" : $"{before}\n{line}{source.Content[at..]}";
        var text = new SourceText(source.Path, added);
        var problems = Compilation.Of(text, sources).ReadingFindings;
        var old = Compilation.Of(source, sources).ReadingFindings.Select(one => one.Message).ToHashSet();
        return (
            isInColumns ? new SourceText(source.Path, Formatter.Format(WiringParser.Parse(text))) : text,
            [.. problems.Where(one => !old.Contains(one.Message))]
        );
    }

    /// <summary>A capacitor alone is open, and so is what a meter on a coil alone shows: only the circuit tells which is meant.</summary>
    private static bool IsAloneByWord(FoundPlace place, string answer) =>
        place is FoundAlone
        && !answer.Any(char.IsAsciiDigit)
        && !answer.Equals("open", StringComparison.OrdinalIgnoreCase);
}
