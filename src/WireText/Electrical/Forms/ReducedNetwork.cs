using WireText.Circuits;
using WireText.Electrical.Networks;
using WireText.Electrical.Solving;

namespace WireText.Electrical.Forms;

/// <summary>A live network reduced: the jack's block, and the block at the input of each amplifier.</summary>
/// <param name="Jack">What is left between sleeve and tip.</param>
/// <param name="Inputs">For each amplifier's element, what is left between its common and its input.</param>
internal sealed record ReducedNetwork(
    LiveNetwork Live,
    List<JoinEdge> Jack,
    SortedDictionary<int, List<JoinEdge>> Inputs
)
{
    /// <summary>What was opened and joined before it could be reduced.</summary>
    public BranchEdits Edits { get; init; } = BranchEdits.None;

    /// <summary>The first kernel that is no single edge; null when all are.</summary>
    public List<JoinEdge>? FirstKernel => Inputs.Values.Prepend(Jack).FirstOrDefault(kernel => kernel.Count > 1);

    public static ReducedNetwork Of(Circuit circuit, LiveNetwork live)
    {
        var edges = live
            .Branches.Select(
                (branch, place) => new JoinEdge(branch.From, branch.To, new JoinTree.Leaf(place, IsReversed: false))
            )
            .ToList();
        if (live.Amplifiers.IsEmpty)
        {
            return new ReducedNetwork(
                live,
                SeriesParallel.Reduce(live.NodeCount, edges, LiveNetwork.Sleeve, LiveNetwork.Tip),
                []
            );
        }

        (int A, int B)[] graph =
        [
            .. live.Branches.Select(branch => (branch.From, branch.To)),
            (LiveNetwork.Tip, LiveNetwork.Sleeve),
        ];
        var blockOf = BiconnectedBlocks.Label(live.NodeCount, graph);
        var inputs = new SortedDictionary<int, List<JoinEdge>>();
        foreach (var branch in live.Branches.Where(branch => branch.Source.Kind == BranchKind.AmplifierInput))
        {
            inputs.Add(branch.Source.Element, Block(blockOf[live.Branches.IndexOf(branch)], branch.To, branch.From));
        }

        return new ReducedNetwork(live, Block(blockOf[^1], LiveNetwork.Sleeve, LiveNetwork.Tip), inputs);

        List<JoinEdge> Block(int block, int low, int high) =>
            SeriesParallel.Reduce(live.NodeCount, edges.Where((_, place) => blockOf[place] == block), low, high);
    }
}
