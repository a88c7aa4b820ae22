using WireText.Circuits;

namespace WireText.Electrical.Networks;

/// <summary>What matters at the jack: the elements that share a biconnected block with a virtual edge from tip to sleeve.</summary>
/// <remarks>
/// An element outside that block hangs on one vertex or none, so no live current flows through it. An amplifier whose
/// output is live makes what its input sees live too.
/// </remarks>
public static class LivePart
{
    /// <summary>The live branches of a state, in order; empty when tip and sleeve are one node.</summary>
    /// <param name="state">A control at any stays open.</param>
    public static List<int> Of(Network network, State state) =>
        Of(network, network.AtTheDials(state), network.DialsOf(state));

    /// <summary>As <see cref="Of(Network, State)"/>, but every track is a resistance from end to end, wherever its dial stands.</summary>
    public static List<int> OfWholeTracks(Network network, State state) =>
        Of(network, network.InContact(state), DialSetting.Undecided(network));

    /// <summary>As <see cref="Of(Network, State)"/>, but nothing comes out of an amplifier without its supply.</summary>
    public static List<Branch> WithSupplies(Network network, State state)
    {
        var powered = Supply.PoweredAmplifiers(network, state);
        Branch[] present =
        [
            .. network.Branches.Where(branch =>
                branch.Kind != BranchKind.AmplifierOutput || powered.Contains(branch.Element)
            ),
        ];
        var isLive = Find(
            network,
            present,
            network.AtTheDials(state),
            network.DialsOf(state),
            [],
            (network.Tip, network.Sleeve)
        );
        return [.. present.Where((_, branch) => isLive[branch])];
    }

    private static List<int> Of(Network network, int[] nodeOf, DialSetting dials)
    {
        var isLive = Find(network, network.Branches.AsSpan(), nodeOf, dials, [], (network.Tip, network.Sleeve));
        return [.. Enumerable.Range(0, network.Branches.Length).Where(branch => isLive[branch])];
    }

    /// <summary>Whether each branch, then each extra edge, is live.</summary>
    /// <param name="branches">The branches to look at: all of the network's, some, or none for contacts alone; an output never without its input.</param>
    /// <param name="nodeOf">For each net, its node.</param>
    /// <param name="extra">Contacts that may close and what lies on the jack, as pairs of nets.</param>
    /// <param name="probe">The nets of the virtual edge.</param>
    internal static bool[] Find(
        Network network,
        ReadOnlySpan<Branch> branches,
        int[] nodeOf,
        DialSetting dials,
        ReadOnlySpan<NetPair> extra,
        (int A, int B) probe
    )
    {
        var isLive = new bool[branches.Length + extra.Length];
        if (nodeOf[probe.A] == nodeOf[probe.B])
        {
            return isLive;
        }

        var edges = new (int A, int B)[branches.Length + extra.Length + 1];
        for (var i = 0; i < branches.Length; i++)
        {
            // An absent section is an edge that leads back to where it began: in no block.
            var node = nodeOf[branches[i].From];
            edges[i] =
                dials.StateOf(branches[i]) == SectionState.Absent ? (node, node) : (node, nodeOf[branches[i].To]);
        }

        for (var i = 0; i < extra.Length; i++)
        {
            edges[branches.Length + i] = (nodeOf[extra[i].Low], nodeOf[extra[i].High]);
        }

        edges[^1] = (nodeOf[probe.A], nodeOf[probe.B]);
        var blockOf = BiconnectedBlocks.Label(network.NetCount, edges);
        var liveBlocks = LiveBlocks(branches, blockOf);
        for (var i = 0; i < isLive.Length; i++)
        {
            isLive[i] = blockOf[i] != BiconnectedBlocks.None && liveBlocks.Contains(blockOf[i]);
        }

        return isLive;
    }

    /// <summary>
    /// The block of the virtual edge, and that of every amplifier's input whose output is live. An input needs no virtual
    /// edge of its own: its impedance already lies there.
    /// </summary>
    private static HashSet<int> LiveBlocks(ReadOnlySpan<Branch> branches, int[] blockOf)
    {
        var live = new HashSet<int> { blockOf[^1] };
        var inputs = new Dictionary<int, int>();
        var outputs = new List<(int Element, int Place)>();
        for (var place = 0; place < branches.Length; place++)
        {
            if (branches[place].Kind == BranchKind.AmplifierInput)
            {
                inputs.Add(branches[place].Element, place);
            }
            else if (branches[place].Kind == BranchKind.AmplifierOutput)
            {
                outputs.Add((branches[place].Element, place));
            }
        }

        bool grew;
        do
        {
            grew = false;
            foreach (var (element, place) in outputs)
            {
                var input = blockOf[inputs[element]];
                var isDriven = blockOf[place] != BiconnectedBlocks.None && live.Contains(blockOf[place]);
                grew |= isDriven && input != BiconnectedBlocks.None && live.Add(input);
            }
        } while (grew);

        return live;
    }
}
