using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Electrical.Networks;

namespace WireText.Electrical.Situations;

/// <summary>One end of the search: the positions that decide it, what is live there, and whether the two nets are one node.</summary>
internal sealed record ContactLeaf(State State, ImmutableArray<int> Live, bool IsJoined);

/// <summary>
/// Splits the states of the controls into few sets by what lies between two nets: the live elements, or contacts alone.
/// </summary>
/// <remarks>
/// Contacts of controls not yet asked are "maybe" edges. While one of them lies in the block of the virtual edge, the
/// control of the nearest is asked, position by position. When none does, whatever the other controls do cannot change
/// the block: joining or opening edges outside a block never adds an element to it or takes one from it.
/// </remarks>
internal sealed class ContactSearch(Network network, ImmutableArray<Branch> branches, (int A, int B) probe, int limit)
{
    /// <summary>Edges looked at before the search gives up, so that no input can keep it busy. Chosen: a second or two.</summary>
    internal const long WorkLimit = 20_000_000;

    private readonly DialSetting dials = DialSetting.Undecided(network);
    private readonly Branch[] batteries = [.. network.Branches.Where(branch => branch.Kind == BranchKind.Battery)];
    private readonly SortedSet<int> asked = [];
    private long work;

    /// <summary>After a search that found too much: the controls asked on the way, in order of declaration.</summary>
    public ImmutableArray<Control> Crowding { get; private set; } = [];

    /// <summary>The leaves below a partial assignment, or null when there are more than the limit.</summary>
    public List<ContactLeaf>? Run(State start, CancellationToken cancellation = default)
    {
        var leaves = new List<ContactLeaf>();
        var open = new Stack<State>();
        open.Push(start);
        while (open.TryPop(out var state))
        {
            cancellation.ThrowIfCancellationRequested();
            var nodeOf = network.InContact(state);
            var maybe = MaybeEdges(state);
            var pairs = maybe.Select(edge => edge.Pair).ToArray();
            work += network.NetCount + branches.Length + pairs.Length;
            if (leaves.Count >= limit || work > WorkLimit)
            {
                Crowding = [.. asked.Select(control => network.Circuit.Controls[control])];
                return null;
            }

            var isLive = LivePart.Find(network, branches.AsSpan(), nodeOf, dials, pairs, probe);
            if ((Nearest(nodeOf, maybe, isLive) ?? SupplyControl(nodeOf, maybe, pairs, isLive)) is not { } control)
            {
                leaves.Add(Leaf(state, nodeOf, isLive));
                continue;
            }

            asked.Add(control);
            for (var position = network.Circuit.Controls[control].Positions.Length - 1; position >= 0; position--)
            {
                open.Push(state.At(control, position));
            }
        }

        return leaves;
    }

    private ContactLeaf Leaf(State state, int[] nodeOf, bool[] isLive) =>
        new(
            state,
            [.. branches.Where((_, i) => isLive[i]).Select(branch => branch.Index)],
            nodeOf[probe.A] == nodeOf[probe.B]
        );

    private List<(int Control, NetPair Pair)> MaybeEdges(State state)
    {
        var edges = new List<(int, NetPair)>();
        for (var control = 0; control < state.ControlCount; control++)
        {
            if (state[control] is null)
            {
                edges.AddRange(network.Contacts[control].Possible.Select(pair => (control, pair)));
            }
        }

        return edges;
    }

    /// <summary>
    /// The control whose live maybe edge is nearest to the first probed net, counted over all edges but never through the
    /// second; the first-declared of equals; null when no maybe edge is live.
    /// </summary>
    private int? Nearest(int[] nodeOf, List<(int Control, NetPair Pair)> maybe, bool[] isLive)
    {
        if (!isLive.AsSpan(branches.Length).Contains(true))
        {
            return null;
        }

        var distance = Distances(nodeOf, maybe);
        var sleeve = nodeOf[probe.B];
        var (best, nearest) = (int.MaxValue, (int?)null);
        for (var i = 0; i < maybe.Count; i++)
        {
            if (!isLive[branches.Length + i])
            {
                continue;
            }

            var (low, high) = (nodeOf[maybe[i].Pair.Low], nodeOf[maybe[i].Pair.High]);
            var reach = Math.Min(
                low == sleeve ? int.MaxValue : distance[low],
                high == sleeve ? int.MaxValue : distance[high]
            );
            if (nearest is null || reach < best)
            {
                (best, nearest) = (reach, maybe[i].Control);
            }
        }

        return nearest;
    }

    /// <summary>
    /// The first control that may yet close or open the supply of an amplifier whose output is live; null when none may.
    /// Supplies run through contacts and batteries alone.
    /// </summary>
    private int? SupplyControl(int[] nodeOf, List<(int Control, NetPair Pair)> maybe, NetPair[] pairs, bool[] isLive)
    {
        var nets = network.Circuit.Nets.OneNet;
        for (var i = 0; i < branches.Length; i++)
        {
            if (
                !isLive[i]
                || branches[i].Kind != BranchKind.AmplifierOutput
                || network.Circuit.Elements[branches[i].Element] is not Amplifier { Supply: { } supply } amplifier
            )
            {
                continue;
            }

            var way = LivePart.Find(network, batteries, nodeOf, dials, pairs, (nets[supply], nets[amplifier.Common]));
            var deciding = way.AsSpan(batteries.Length).IndexOf(true);
            if (deciding >= 0)
            {
                return maybe[deciding].Control;
            }
        }

        return null;
    }

    private int[] Distances(int[] nodeOf, List<(int Control, NetPair Pair)> maybe)
    {
        var neighbours = new List<int>?[network.NetCount];
        foreach (var branch in branches)
        {
            Link(nodeOf[branch.From], nodeOf[branch.To]);

            // The way through an amplifier goes from its output on to what its input sees. Its two branches stand side by side.
            if (branch.Kind == BranchKind.AmplifierInput)
            {
                Link(nodeOf[branch.From], nodeOf[network.Branches[branch.Index + 1].From]);
            }
        }

        foreach (var (_, pair) in maybe)
        {
            Link(nodeOf[pair.Low], nodeOf[pair.High]);
        }

        var distance = new int[network.NetCount];
        Array.Fill(distance, int.MaxValue);
        distance[nodeOf[probe.A]] = 0;
        var queue = new Queue<int>();
        queue.Enqueue(nodeOf[probe.A]);
        while (queue.TryDequeue(out var node))
        {
            foreach (var next in neighbours[node] ?? [])
            {
                if (distance[next] == int.MaxValue && next != nodeOf[probe.B])
                {
                    distance[next] = distance[node] + 1;
                    queue.Enqueue(next);
                }
            }
        }

        return distance;

        void Link(int a, int b)
        {
            (neighbours[a] ??= []).Add(b);
            (neighbours[b] ??= []).Add(a);
        }
    }
}
