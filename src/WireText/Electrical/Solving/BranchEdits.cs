using System.Collections.Immutable;
using WireText.Electrical.Networks;

namespace WireText.Electrical.Solving;

/// <summary>Branches taken out or joined in thought, to see what they do. Indices into <see cref="Network.Branches"/>.</summary>
public sealed record BranchEdits(ImmutableArray<int> Opened, ImmutableArray<int> Joined)
{
    public static readonly BranchEdits None = new([], []);

    /// <summary>Track sections that join nothing, where the dial makes one node of their ends.</summary>
    public ImmutableArray<int> Parted { get; private init; } = [];

    /// <summary>With branches opened; a track section that the dial makes a join stays one.</summary>
    public BranchEdits Open(params IEnumerable<int> branches) => this with { Opened = Opened.AddRange(branches) };

    /// <summary>With branches taken out, joins and all: as without the part.</summary>
    public BranchEdits TakeOut(IReadOnlyCollection<int> branches) =>
        Open(branches) with
        {
            Parted = Parted.AddRange(branches),
        };

    public BranchEdits Join(params IEnumerable<int> branches) => this with { Joined = Joined.AddRange(branches) };

    /// <summary>The node of each net once the joined branches make one of their ends.</summary>
    internal int[] Apply(Network network, int[] nodeOf)
    {
        if (Joined.IsEmpty)
        {
            return nodeOf;
        }

        var joins = new NetJoins(nodeOf.Length);
        for (var net = 0; net < nodeOf.Length; net++)
        {
            joins.Join(net, nodeOf[net]);
        }

        foreach (var branch in Joined)
        {
            joins.Join(network.Branches[branch].From, network.Branches[branch].To);
        }

        return joins.ToNodes();
    }
}
