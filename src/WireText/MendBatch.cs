using System.Collections.Immutable;
using WireText.Checks;
using WireText.Electrical.Studies;
using WireText.Text;

namespace WireText;

/// <summary>Findings of one file whose edits are made together and judged together.</summary>
/// <param name="Findings">One, or several of one nature that stand in lines of their own.</param>
internal sealed record MendBatch(ImmutableArray<Finding> Findings)
{
    private static readonly ImmutableHashSet<string> OfReading =
    [
        .. FindingCatalogue.OfReading.Where(one => one.Severity == Severity.Error).Select(one => one.Id),
    ];

    /// <summary>What is mended, and how it is judged whether that helped.</summary>
    private enum Nature
    {
        /// <summary>A line that cannot be read.</summary>
        Reading,

        /// <summary>An allowance that allows nothing.</summary>
        Allowance,

        /// <summary>What a check says of the circuit.</summary>
        Circuit,
    }

    public ImmutableArray<TextEdit> Edits => [.. Findings.SelectMany(finding => finding.Edits)];

    /// <summary>True for what a check says of the circuit.</summary>
    public bool IsOfTheCircuit => NatureOf(Findings[0]) == Nature.Circuit;

    /// <summary>True when another line may say the same, and is mended too.</summary>
    public bool MayStandTwice => !IsOfTheCircuit;

    /// <summary>
    /// The first finding that can be mended in this file alone, with those of its nature that stand in other lines; null when there is
    /// none. The circuit comes last. Where not all that was found is told nobody can say what an edit makes better.
    /// </summary>
    /// <param name="tried">What was not mended by its edits.</param>
    /// <param name="most">Findings in the batch.</param>
    public static MendBatch? Next(Compilation now, HashSet<(string Id, string Message)> tried, int most)
    {
        if (now.Findings.Any(finding => finding.Description == FindingLimit.TooMany))
        {
            return null;
        }

        var mendable = now.Findings.Where(finding => IsMendable(finding, now.Source, tried));
        if (mendable.MinBy(NatureOf) is not { } first)
        {
            return null;
        }

        var nature = NatureOf(first);
        return nature == Nature.Circuit
            ? new MendBatch([first])
            : new MendBatch([.. InLinesOfTheirOwn(mendable.Where(finding => NatureOf(finding) == nature)).Take(most)]);
    }

    /// <summary>True when every one of the findings is gone, and nothing has come or fallen silent for it.</summary>
    public bool IsBetter(Compilation before, Compilation after) =>
        NatureOf(Findings[0]) switch
        {
            // While a line cannot be read the circuit is not checked: mended, it may show what was hidden, so there the lines that
            // cannot be read count.
            Nature.Reading => AreGone(before, after)
                && CountOfReading(after) <= CountOfReading(before) - Findings.Length,
            // A line that did nothing is gone; another like it says the same.
            Nature.Allowance => AreGone(before, after) && HasNothingNew(before, after, Severity.Error),
            _ => !after.Findings.Select(KeyOf).Contains(KeyOf(Findings[0]))
                && HasNothingNew(before, after, Severity.Warning)
                && KeepsTheSound(before, after),
        };

    public static (string Id, string Message) KeyOf(Finding finding) => (finding.Id, finding.Message);

    /// <summary>True for a finding whose edits are in this file alone and were not tried.</summary>
    public static bool IsMendable(Finding finding, SourceText source, HashSet<(string Id, string Message)> tried) =>
        !finding.Edits.IsEmpty
        && finding.Edits.All(edit => edit.At.Source == source)
        && TextEdit.AreApart(finding.Edits)
        && !tried.Contains(KeyOf(finding));

    private static Nature NatureOf(Finding finding) =>
        finding.Id == AllowanceFindings.AllowUnused.Id ? Nature.Allowance
        : OfReading.Contains(finding.Id) ? Nature.Reading
        : Nature.Circuit;

    /// <summary>Those whose edits touch no line that an earlier one touches: of two in one line the other is judged anew.</summary>
    private static IEnumerable<Finding> InLinesOfTheirOwn(IEnumerable<Finding> findings)
    {
        var taken = new HashSet<int>();
        foreach (var finding in findings)
        {
            var lines = finding.Edits.SelectMany(LinesOf).Distinct().ToList();
            if (!lines.Exists(taken.Contains))
            {
                taken.UnionWith(lines);
                yield return finding;
            }
        }
    }

    private static IEnumerable<int> LinesOf(TextEdit edit)
    {
        var (first, span) = (edit.At.Position.Line, edit.At.Span);
        var last = edit.At.Source.PositionOf(Math.Max(span.Start, span.End - 1)).Line;
        return Enumerable.Range(first, last - first + 1);
    }

    /// <summary>True when each thing said is said so much less often as there are findings of it here.</summary>
    private bool AreGone(Compilation before, Compilation after)
    {
        var (was, now) = (CountByKey(before.Findings), CountByKey(after.Findings));
        return CountByKey(Findings).All(here => now.GetValueOrDefault(here.Key) <= was[here.Key] - here.Value);
    }

    private static Dictionary<(string Id, string Message), int> CountByKey(IEnumerable<Finding> findings) =>
        findings.CountBy(KeyOf).ToDictionary();

    private static int CountOfReading(Compilation compiled) =>
        compiled.Findings.Count(one => OfReading.Contains(one.Id));

    /// <summary>True when no situation fell silent, as far as was worked out: a wire of ours must not short the signal.</summary>
    private static bool KeepsTheSound(Compilation before, Compilation after) =>
        before.Study is not { } studied
        || after.Study is not { } mended
        || studied.Jacks.All(was =>
            was.Outcomes is null
            || JackLike(was, mended) is not { Outcomes: not null } now
            || was.Heard.AreKeptBy(now.Heard, was.Circuit)
        );

    /// <summary>The study of another circuit at the jack of the same name; null where it has none.</summary>
    private static Study? JackLike(Study jack, Study other)
    {
        var name = jack.Circuit.Parts[jack.Circuit.Outputs[0].Part].Name;
        return
            other.Circuit.FindPart(name) is { } part && other.Circuit.Outputs.Any(output => output.Part == part.Index)
            ? other.At(part.Index)
            : null;
    }

    private static bool HasNothingNew(Compilation before, Compilation after, Severity from)
    {
        var known = before.Findings.Select(KeyOf).ToHashSet();
        return after.Findings.All(one => one.Severity < from || known.Contains(KeyOf(one)));
    }
}
