using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Electrical.Studies;
using WireText.Text;

namespace WireText.Checks.Repairs;

/// <summary>Edits of a circuit tried one after another, each judged by all checks.</summary>
/// <param name="study">Of the circuit or a twin of it: what it solved is not solved again.</param>
/// <param name="mistakes">What is to be found no more.</param>
internal sealed class MendTrials(
    Circuit circuit,
    Study study,
    CheckRequest request,
    CheckReport report,
    IReadOnlyCollection<Finding> mistakes
)
{
    private readonly MarkedLugs marked = MarkedLugs.Of(CheckContext.Of(circuit, study), mistakes);

    /// <summary>The checks that found the mistakes: asked first, because most edits change nothing of what they say.</summary>
    private readonly CheckRequest found = request with
    {
        Checks = [.. request.Checks.Where(check => mistakes.Any(one => one.Id == check.Description.Id))],
    };

    private readonly CheckRequest others = request with
    {
        Checks = [.. request.Checks.Where(check => mistakes.All(one => one.Id != check.Description.Id))],
    };

    private readonly HashSet<(string Id, Subject? At)> mayStay =
    [
        .. report.Findings.Except(mistakes).Select(RepairAdvice.KindOf),
    ];

    /// <summary>
    /// The first edit of each behaviour that leaves no mistake and silences nothing, in the order in which they are tried. None
    /// where there are too many to try.
    /// </summary>
    public ImmutableArray<CircuitEdit> Find(Remedy remedy, CancellationToken cancellation)
    {
        var edits = new EditCandidates(circuit, marked.AreNear)
            .All()
            .Where(edit => MayBe(edit, remedy))
            .ToLookup(FillsAFreeLug);
        var looked = 0;
        return Try(edits[false], ref looked, cancellation) switch
        {
            { IsEmpty: true } => Try(edits[true], ref looked, cancellation) ?? [],
            var mends => mends ?? [],
        };
    }

    /// <summary>Null where there are too many to try.</summary>
    private ImmutableArray<CircuitEdit>? Try(
        IEnumerable<CircuitEdit> edits,
        ref int looked,
        CancellationToken cancellation
    )
    {
        var mends = new List<(CircuitEdit Edit, Circuit Circuit)>();
        foreach (var edit in edits)
        {
            cancellation.ThrowIfCancellationRequested();
            looked += circuit.Lugs.Length;
            if (looked > LikelyMend.LugBound)
            {
                return null;
            }

            var edited = edit.Apply(circuit);
            if (
                LeadRules.Allow(edited, edit.LugsIn(circuit).AsSpan())
                && LeavesNothing(edited, cancellation)
                && !mends.Exists(other => Behaviour.IsEqual(other.Circuit, edited))
            )
            {
                mends.Add((edit, edited));
            }
        }

        return [.. mends.Select(one => one.Edit)];
    }

    /// <summary>True for a wire to a lug that may stay empty and that nothing speaks of: the slip is rarely there.</summary>
    private bool FillsAFreeLug(CircuitEdit edit) =>
        edit switch
        {
            AddWire add => marked.LeaveFree(add.From) || marked.LeaveFree(add.To),
            MoveEnd move => marked.LeaveFree(move.Lug),
            _ => false,
        };

    /// <summary>False for what mends another kind of mistake.</summary>
    private static bool MayBe(CircuitEdit edit, Remedy remedy) =>
        edit switch
        {
            ExchangeLugs or ExchangeEnds => true,
            _ when remedy == Remedy.Exchange => false,
            RemoveWire => remedy != Remedy.Join,
            AddWire => remedy != Remedy.Part,
            _ => true,
        };

    private bool LeavesNothing(Circuit edited, CancellationToken cancellation)
    {
        var rewired = study.Rewired(edited);
        return IsSilent(found) && Advice.KeepsTheSound(study, rewired) && IsSilent(others);

        bool IsSilent(CheckRequest asked) =>
            Checker.FindsNothing(
                edited,
                rewired,
                asked,
                finding => mayStay.Contains(RepairAdvice.KindOf(finding)),
                cancellation
            );
    }
}
