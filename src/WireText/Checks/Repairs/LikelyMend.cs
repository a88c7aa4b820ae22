using System.Collections.Immutable;
using System.Globalization;
using WireText.Circuits;
using WireText.Electrical.Studies;
using WireText.Text;

namespace WireText.Checks.Repairs;

/// <summary>
/// Names the edits after each of which nothing is found any more, where the check that found a mistake leaves the how to the
/// reader. Nothing needs to be claimed for it.
/// </summary>
/// <remarks>Where more than one makes it right, the wires alone cannot tell which was meant: it is a choice.</remarks>
public static class LikelyMend
{
    /// <summary>Mends offered. Chosen: as many as one reads.</summary>
    public const int MostShown = 3;

    /// <summary>Mistakes that one slip is taken to bring about. Chosen: with more there is more than one slip.</summary>
    internal const int MostMistakes = 3;

    /// <summary>Lugs of all circuits tried: a large circuit has fewer trials, each costs more. Chosen: 1,500 trials in a large example.</summary>
    internal const int LugBound = 60_000;

    /// <summary>The report with the mends told by the finding that leaves them open; the report itself where none was found.</summary>
    /// <param name="study">Of the circuit or a twin of it.</param>
    public static CheckReport AddTo(
        CheckReport report,
        Circuit circuit,
        Study study,
        CheckRequest request,
        CancellationToken cancellation = default
    )
    {
        var mistakes = report.Findings.Where(RepairAdvice.IsMistake).ToList();
        if (
            mistakes.Count > MostMistakes
            || mistakes.Find(finding => finding.Remedy is not (Remedy.Told or Remedy.Value)) is not { } open
            || circuit.Outputs.IsEmpty
        )
        {
            return report;
        }

        var mends = new MendTrials(circuit, study, request, report, mistakes).Find(open.Remedy, cancellation);
        return mends.IsEmpty
            ? report
            : report with
            {
                Findings =
                [
                    .. report.Findings.Select(finding => finding == open ? Told(circuit, open, mends) : finding),
                ],
            };
    }

    private static Finding Told(Circuit circuit, Finding open, ImmutableArray<CircuitEdit> mends)
    {
        var suggestions = mends
            .Take(MostShown)
            .Select(edit => new Suggestion(RepairText.Words(circuit, edit), RepairText.InText(circuit, edit)))
            .ToImmutableArray();
        var words = suggestions is [var only]
            ? (
                mends[0] is AddWire add
                    ? $"solder it: {LineEdit.Added(circuit, FromTheBlamed(circuit, open, add))}"
                    : only.Words
            )
            : string.Join(
                "; ",
                suggestions.Select((one, i) => string.Create(CultureInfo.InvariantCulture, $"{i + 1}. {one.Words}"))
            );
        var how = suggestions.Length > 1 ? "do one of these, the likeliest first: " : "";
        return open with
        {
            Help = $"{how}{words}{(open.Otherwise is null ? "" : $", {open.Otherwise}")}",
            Suggestions = suggestions,
        };
    }

    /// <summary>A wire is told from the lug that lacks it.</summary>
    private static AddWire FromTheBlamed(Circuit circuit, Finding open, AddWire add) =>
        open.Subjects is [{ Kind: SubjectKind.Lug } blamed, ..] && circuit.NameOf(add.To) == blamed.Name
            ? new AddWire(add.To, add.From)
            : add;
}
