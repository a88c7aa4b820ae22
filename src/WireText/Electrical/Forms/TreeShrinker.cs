using WireText.Circuits;
using WireText.Electrical.Networks;
using WireText.Electrical.Solving;
using WireText.Electrical.Sound;

namespace WireText.Electrical.Forms;

/// <summary>Turns a reduced network into the form that a person would say: coils and their joins, and what matters of the rest.</summary>
internal sealed class TreeShrinker(FormTrial trial, ReducedNetwork reduced)
{
    private readonly PlainTexts texts = new(trial.Circuit, reduced.Live);

    /// <summary>The tree of everything heard, behind amplifiers that stand alone; null below several that are mixed.</summary>
    private JoinTree? root;

    /// <summary>What lies across everything and takes of the treble; filled by <see cref="Shrink()"/>.</summary>
    public List<PlainPart> DarkenedBy { get; } = [];

    /// <summary>The form; null when the trees hold no coil that counts.</summary>
    public FormNode? Shrink() => ShrinkBlock(reduced.Jack, isAlone: true);

    private FormNode? ShrinkBlock(List<JoinEdge> block, bool isAlone)
    {
        if (block is not [{ Tree: var tree }])
        {
            return null;
        }

        root = isAlone ? tree : null;

        // What an amplifier alone feeds is read at its input: what lies behind it changes no balance.
        var sources = tree.Leaves().Where(leaf => trial.Counts(Branch(leaf))).ToList();
        return sources is [var only] && IsAmplifier(only) ? BehindAmplifier(only, isAlone) : Shrink(tree);
    }

    private FormNode? Shrink(JoinTree tree) =>
        tree switch
        {
            JoinTree.Leaf leaf => ShrinkLeaf(leaf),
            JoinTree.Series series => ShrinkSeries(series),
            JoinTree.Parallel parallel => ShrinkParallel(parallel),
            _ => null,
        };

    private FormNode? ShrinkLeaf(JoinTree.Leaf leaf)
    {
        if (IsAmplifier(leaf))
        {
            return BehindAmplifier(leaf, isAlone: false);
        }

        if (!trial.Counts(Branch(leaf)))
        {
            return null;
        }

        var coil = (Coil)trial.Circuit.Elements[Branch(leaf).Source.Element];
        return new CoilForm(coil, CoilSigns.Strings(coil) * (leaf.IsReversed ? -1 : 1));
    }

    private FormNode? BehindAmplifier(JoinTree.Leaf leaf, bool isAlone)
    {
        var amplifier = (Amplifier)trial.Circuit.Elements[Branch(leaf).Source.Element];
        if (!reduced.Inputs.TryGetValue(amplifier.Index, out var block) || ShrinkBlock(block, isAlone) is not { } form)
        {
            return null;
        }

        // Its branch runs from output to common: reversed, the output faces the tip.
        return leaf.IsReversed == amplifier.Gain > 0 ? form : FormNodes.Flip(form);
    }

    private FormNode? ShrinkSeries(JoinTree.Series series)
    {
        var isRoot = HoldsEverything(series);
        var joined = FormNode.InSeries([.. series.Parts.Where(HasCoil).Select(Shrink).OfType<FormNode>()]);
        if (joined is null)
        {
            return null;
        }

        foreach (var plain in series.Parts.Where(part => !HasCoil(part)))
        {
            var moves =
                !isRoot && trial.BalanceChange(reduced.Edits.Join(BranchesOf(plain))) >= Thresholds.MattersDecibels;
            var isNamed =
                texts.BlocksDirectCurrent(plain)
                || (!texts.HasTrack(plain) && (moves || (isRoot && IsLargeResistor(plain))));
            joined = joined with { Through = joined.Through.Add(texts.Describe(plain, isNamed)) };
            if (moves && texts.HasTrack(plain))
            {
                joined = joined with { Decibels = StrengthOf(joined) };
            }
        }

        return joined;
    }

    private FormNode? ShrinkParallel(JoinTree.Parallel parallel)
    {
        var isRoot = HoldsEverything(parallel);
        var joined = FormNode.InParallel([.. parallel.Parts.Where(HasCoil).Select(Shrink).OfType<FormNode>()]);
        if (joined is null)
        {
            return null;
        }

        foreach (var plain in parallel.Parts.Where(part => !HasCoil(part)))
        {
            var opened = reduced.Edits.Open(BranchesOf(plain));
            if (isRoot)
            {
                if (texts.HasCapacitor(plain) && trial.TrebleRise(opened) >= Thresholds.MattersDecibels)
                {
                    DarkenedBy.Add(texts.Describe(plain, isNamed: true));
                }
            }
            else if (trial.BalanceChange(opened) >= Thresholds.MattersDecibels)
            {
                joined = joined with
                {
                    ShuntedBy = joined.ShuntedBy.Add(texts.Describe(plain, isNamed: !texts.HasTrack(plain))),
                    Decibels = StrengthOf(joined),
                };
            }
        }

        return joined;
    }

    private double StrengthOf(FormNode node) => node.Coils.Max(coil => trial.StrengthOf(coil.Coil));

    private bool IsLargeResistor(JoinTree tree) =>
        tree is JoinTree.Leaf leaf
        && trial.Circuit.Elements[Branch(leaf).Source.Element] is Resistor { Ohms: >= Thresholds.NamedSeriesOhms };

    private bool HasCoil(JoinTree tree) => tree.Leaves().Any(leaf => trial.Counts(Branch(leaf)));

    private bool HoldsEverything(JoinTree tree) => root is not null && CountSources(tree) == CountSources(root);

    private int CountSources(JoinTree tree) =>
        tree.Leaves().Count(leaf => trial.Counts(Branch(leaf)) && IsSource(Branch(leaf)));

    /// <summary>True for a heard coil or an amplifier, which stands for those behind it.</summary>
    private bool IsSource(LiveBranch branch) =>
        trial.Circuit.Elements[branch.Source.Element] is Amplifier or Coil { HearsStrings: true };

    private bool IsAmplifier(JoinTree.Leaf leaf) => Branch(leaf).Source.Kind == BranchKind.AmplifierOutput;

    private LiveBranch Branch(JoinTree.Leaf leaf) => reduced.Live.Branches[leaf.Place];

    private IEnumerable<int> BranchesOf(JoinTree tree) => tree.Leaves().Select(leaf => Branch(leaf).Source.Index);
}
