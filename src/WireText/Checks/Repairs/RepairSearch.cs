using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Electrical.Expectations;
using WireText.Electrical.Studies;
using WireText.Text;

namespace WireText.Checks.Repairs;

/// <summary>What a search for one edit came to.</summary>
/// <param name="Repairs">
/// Edits after each of which everything holds, the likeliest first, each the first of those that make circuits of the same
/// behaviour; one more than <see cref="RepairSearch.MostShown"/> when there are more. Empty when none was found.
/// </param>
/// <param name="Tested">How many circuits of different nets or names were tried.</param>
/// <param name="IsComplete">False when the search ended at its bound: then there may be others.</param>
public sealed record RepairResult(ImmutableArray<CircuitEdit> Repairs, int Tested, bool IsComplete)
{
    /// <summary>True when what else was found stays with them: they mend the claims and nothing more.</summary>
    public bool LeavesOthers { get; init; }
}

/// <summary>Looks for the one edit after which every claim holds and nothing new is found.</summary>
/// <param name="study">Of the circuit or a twin of it: what it solved is not solved again.</param>
/// <param name="isSilent">Whether the checks find no error and no warning that was not there; asked when every claim holds.</param>
public sealed class RepairSearch(
    Circuit circuit,
    Study study,
    ImmutableArray<Finding> open,
    Func<Circuit, Study, bool> isSilent
)
{
    /// <summary>Behaviours offered; when there are more, none is likelier than the others. Chosen.</summary>
    public const int MostShown = 3;

    /// <summary>Circuits tried before the search gives up; counted, not timed, so that every machine finds the same. Chosen.</summary>
    public const int Bound = 5_000;

    /// <summary>Lugs looked at before the search gives up: a large circuit has fewer trials, each costs more. Chosen.</summary>
    internal const int LugBound = 1_000_000;

    /// <summary>Null when nothing is refuted.</summary>
    public RepairResult? Run(CancellationToken cancellation = default)
    {
        var refuted = circuit
            .Expectations.Select(one => study.JudgeOf(one).Refute(one, cancellation))
            .OfType<Refutation>()
            .ToList();
        return refuted.Count == 0 ? null : Run(refuted, cancellation);
    }

    private RepairResult Run(List<Refutation> refuted, CancellationToken cancellation)
    {
        var matters = MatteringNets.Of(study.At(refuted[0].Expectation.Jack).Network, refuted[0], open);
        var candidates = new EditCandidates(circuit, lug => matters[circuit.Nets.OneNet[lug]]);
        var expected = LikeliestToFailFirst(refuted);
        var holds = new Dictionary<string, bool>(StringComparer.Ordinal) { [KeyOf(circuit)] = false };
        var found = new List<(CircuitEdit Edit, Circuit Circuit)>();
        var looked = 0;
        foreach (var edit in candidates.All())
        {
            cancellation.ThrowIfCancellationRequested();
            if (holds.Count > Bound || looked > LugBound)
            {
                return new RepairResult(Edits(), holds.Count - 1, IsComplete: false);
            }

            looked += circuit.Lugs.Length;
            var edited = edit.Apply(circuit);
            if (
                LeadRules.Allow(edited, edit.LugsIn(circuit).AsSpan())
                && Holds(edited)
                && !found.Exists(other => Behaviour.IsEqual(other.Circuit, edited))
                && isSilent(edited, study.Rewired(edited))
            )
            {
                found.Add((Simplest(edit, edited, IsMended), edited));
                if (found.Count > MostShown)
                {
                    break;
                }
            }
        }

        return new RepairResult(Edits(), holds.Count - 1, IsComplete: true);

        // Two that give the same nets do the same; how each is built is judged apart.
        bool Holds(Circuit edited)
        {
            var key = KeyOf(edited);
            if (!holds.TryGetValue(key, out var does))
            {
                holds[key] = does = AllHold(study.Rewired(edited), edited, expected, cancellation);
            }

            return does;
        }

        bool IsMended(Circuit edited) => Holds(edited) && isSilent(edited, study.Rewired(edited));

        ImmutableArray<CircuitEdit> Edits() => [.. found.Select(one => one.Edit)];
    }

    /// <summary>Taking a wire out, where an edit only moves it to where it does nothing; else the edit.</summary>
    private CircuitEdit Simplest(CircuitEdit edit, Circuit edited, Func<Circuit, bool> isMended) =>
        edit is MoveEnd { What.Ends: [var end] }
        && circuit.Wires[end.Wire].Kind == WireKind.Wire
        && circuit.Without(end.Wire) is var without
        && Behaviour.IsEqual(without, edited)
        && isMended(without)
            ? new RemoveWire(end.Wire)
            : edit;

    /// <summary>The expectations, as indices, with those refuted as it stands first: an edit that leaves one so is out.</summary>
    private ImmutableArray<(int Index, bool IsRefuted)> LikeliestToFailFirst(List<Refutation> refuted) =>
        [
            .. circuit
                .Expectations.Select((one, i) => (i, IsRefuted: refuted.Exists(other => other.Expectation == one)))
                .OrderByDescending(one => one.IsRefuted),
        ];

    /// <summary>A mended claim must be heard as it says: a trace of what it names, by a way round, mends nothing.</summary>
    private static bool AllHold(
        Study rewired,
        Circuit edited,
        ImmutableArray<(int Index, bool IsRefuted)> expected,
        CancellationToken cancellation
    ) =>
        expected.All(one =>
            edited.Expectations[one.Index] is var expectation
            && rewired.JudgeOf(expectation).Holds(expectation, mayNameTraces: !one.IsRefuted, cancellation)
        );

    /// <summary>Circuits with the same text here have the same nets and the same names for positions.</summary>
    private static string KeyOf(Circuit circuit)
    {
        var (one, soldered) = (circuit.Nets.OneNet, circuit.Nets.Soldered);
        var numbers = string.Create(
            one.Length * 2,
            (one, soldered),
            static (text, nets) =>
            {
                for (var lug = 0; lug < nets.one.Length; lug++)
                {
                    text[2 * lug] = (char)nets.one[lug];
                    text[(2 * lug) + 1] = (char)nets.soldered[lug];
                }
            }
        );
        return numbers + string.Join(' ', circuit.Controls.SelectMany(c => c.Positions).Select(p => p.Name));
    }
}
