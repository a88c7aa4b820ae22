using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Electrical.Networks;
using WireText.Electrical.Solving;
using WireText.Electrical.Sound;

namespace WireText.Electrical.Forms;

/// <summary>Reads series and parallel from the structure of the live network.</summary>
public static class FormFinder
{
    /// <summary>Live branches beyond which a network is called a bridge network without being reduced. Chosen.</summary>
    internal const int MaxBranches = 1_000;

    /// <summary>Edges of a kernel beyond which it is not simplified: each is tried by a solve. Chosen.</summary>
    internal const int MaxKernel = 100;

    /// <summary>How the heard coils of a state are joined.</summary>
    /// <param name="sound">What is heard in that state.</param>
    public static HeardForm Find(Network network, State state, JackSound sound)
    {
        if (sound.Outcome != Outcome.Sound)
        {
            return HeardForm.Nothing;
        }

        var trial = new FormTrial(network, state, sound);
        return Reduce(trial) is { } tree ? Shrunk(trial, tree) : Bridge(sound);
    }

    private static ReducedNetwork? Reduce(FormTrial trial)
    {
        var edits = BranchEdits.None;
        for (var left = int.MaxValue; ; )
        {
            // Every edit takes branches out of the live part: were one not to, the search would never end.
            var live = trial.LiveWith(edits);
            if (live.Branches.Length > MaxBranches || live.Branches.Length >= left)
            {
                return null;
            }

            left = live.Branches.Length;

            var reduced = ReducedNetwork.Of(trial.Network.Circuit, live);
            if (reduced.FirstKernel is not { } kernel)
            {
                return reduced with { Edits = edits };
            }

            if (kernel.Count > MaxKernel || Simplify(trial, live, kernel, edits) is not { } simpler)
            {
                return null;
            }

            edits = simpler;
        }
    }

    /// <summary>
    /// The edits with one plain edge of a kernel more: opened, or joined where none can be opened; null where either would
    /// change the balance.
    /// </summary>
    private static BranchEdits? Simplify(FormTrial trial, LiveNetwork live, List<JoinEdge> kernel, BranchEdits edits)
    {
        var plain = kernel
            .Where(edge => edge.Tree.Leaves().All(leaf => CanGo(live.Branches[leaf.Place])))
            .Select(edge => edge.Tree.Leaves().Select(leaf => live.Branches[leaf.Place].Source.Index).ToList())
            .ToList();
        return Best(plain.Select(branches => edits.Open(branches)))
            ?? Best(plain.Select(branches => edits.Join(branches)));

        // What an amplifier listens to stays, or there would be nothing to hear.
        bool CanGo(LiveBranch branch) => branch.Source.Kind != BranchKind.AmplifierInput && !trial.Counts(branch);

        BranchEdits? Best(IEnumerable<BranchEdits> candidates)
        {
            var (best, least) = ((BranchEdits?)null, double.PositiveInfinity);
            foreach (var candidate in candidates)
            {
                var change = trial.BalanceChange(candidate);
                if (change <= Thresholds.MattersDecibels && change < least)
                {
                    (best, least) = (candidate, change);
                }
            }

            return best;
        }
    }

    private static HeardForm Shrunk(FormTrial trial, ReducedNetwork reduced)
    {
        var shrinker = new TreeShrinker(trial, reduced);
        if (
            shrinker.Shrink() is not { } whole
            || !trial.Sound.Heard.All(heard => whole.Coils.Any(coil => coil.Coil == heard.Coil))
        )
        {
            return Bridge(trial.Sound);
        }

        whole = Normalized(whole);
        return new HeardForm(FormKind.SeriesParallel)
        {
            RootWithDummies = whole,
            Root = WithoutDummies(whole),
            DarkenedBy = [.. shrinker.DarkenedBy],
            Coils =
            [
                .. trial.Sound.Heard.Select(heard =>
                    Describe(trial.Sound, heard, whole.Coils.First(coil => coil.Coil == heard.Coil).Sign)
                ),
            ],
            Traces = TracesOf(trial.Sound),
        };
    }

    private static HeardForm Bridge(JackSound sound)
    {
        var strongest = sound.Strongest!;
        return new HeardForm(FormKind.Bridge)
        {
            Coils =
            [
                .. sound.Heard.Select(heard =>
                    Describe(sound, heard, sound.Gains!.Correlation(heard.Place, strongest.Place) < 0 ? -1 : 1)
                ),
            ],
            Traces = TracesOf(sound),
        };
    }

    private static ImmutableArray<FormCoil> TracesOf(JackSound sound) =>
        [.. sound.Coils.Where(coil => coil.Presence == Presence.Trace).Select(coil => Describe(sound, coil, 1))];

    private static FormCoil Describe(JackSound sound, HeardCoil coil, int sign)
    {
        var correlation = sound.Gains!.Correlation(coil.Place, sound.Strongest!.Place);
        var phase =
            coil == sound.Strongest || correlation >= -Thresholds.OutOfPhaseCorrelation ? PhaseRelation.InPhase
            : correlation <= Thresholds.OutOfPhaseCorrelation ? PhaseRelation.OutOfPhase
            : PhaseRelation.TurnsWithFrequency;
        return new FormCoil(coil.Coil, sign, coil.Decibels, phase);
    }

    /// <summary>The global sign chosen so that fewer coils are reversed; when as many are, the first-declared is not.</summary>
    private static FormNode Normalized(FormNode node)
    {
        var coils = node.Coils.Where(coil => coil.Sign != 0).OrderBy(coil => coil.Coil.Index).ToList();
        var reversed = coils.Count(coil => coil.Sign < 0);
        var isTie = 2 * reversed == coils.Count;
        return (isTie ? coils[0].Sign < 0 : 2 * reversed > coils.Count) ? FormNodes.Flip(node) : node;
    }

    private static FormNode? WithoutDummies(FormNode node) =>
        FormNodes.Rebuild(node, coil => coil.Sign == 0 ? null : coil);
}
