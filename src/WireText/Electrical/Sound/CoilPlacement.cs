using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Electrical.Networks;
using WireText.Electrical.Solving;

namespace WireText.Electrical.Sound;

/// <summary>How a coil stands to the live part.</summary>
public enum CoilPlace
{
    Live,

    /// <summary>Both ends are one node: a cut by shorting is normal.</summary>
    Shorted,

    /// <summary>Joined to the sleeve at one end alone: harmless, the usual unselected pickup.</summary>
    HangsOnSleeve,

    /// <summary>Joined at one end to a vertex of the live part that is not the sleeve: an antenna.</summary>
    HangsOnSignal,

    /// <summary>Joined to nothing live.</summary>
    Free,
}

/// <summary>Where every coil of a circuit stands in a state at a dial setting.</summary>
public static class CoilPlacement
{
    /// <summary>One entry for each of the circuit's coils, in order of declaration.</summary>
    /// <param name="state">A control at any stays open.</param>
    public static ImmutableArray<(Coil Coil, CoilPlace Place)> Of(Network network, State state)
    {
        var dials = network.DialsOf(state);
        var nodeOf = network.AtTheDials(state);
        var live = LiveNetwork.Of(network, state).Branches.Select(branch => branch.Source.Index);
        var isLive = new bool[network.Branches.Length];
        var reached = new CoilPlace[network.NetCount];
        Array.Fill(reached, CoilPlace.Free);
        foreach (var branch in live)
        {
            isLive[branch] = true;
            reached[nodeOf[network.Branches[branch].From]] = CoilPlace.HangsOnSignal;
            reached[nodeOf[network.Branches[branch].To]] = CoilPlace.HangsOnSignal;
        }

        reached[nodeOf[network.Tip]] = CoilPlace.HangsOnSignal;
        reached[nodeOf[network.Sleeve]] = CoilPlace.HangsOnSleeve;
        Spread(network, nodeOf, isLive, dials, reached);
        return
        [
            .. network
                .Branches.Where(branch => branch.Kind == BranchKind.Coil)
                .Select(branch =>
                    (
                        (Coil)network.Circuit.Elements[branch.Element],
                        isLive[branch.Index] ? CoilPlace.Live
                        : nodeOf[branch.From] == nodeOf[branch.To] ? CoilPlace.Shorted
                        : reached[nodeOf[branch.From]]
                    )
                ),
        ];
    }

    /// <summary>Carries where a live vertex stands over the elements that are not live: each part that hangs does so at one vertex.</summary>
    private static void Spread(Network network, int[] nodeOf, bool[] isLive, DialSetting dials, CoilPlace[] reached)
    {
        var hanging = network
            .Branches.Where(branch => !isLive[branch.Index] && dials.StateOf(branch) == SectionState.Kept)
            .Select(branch => (From: nodeOf[branch.From], To: nodeOf[branch.To]))
            .ToLookup(edge => edge.From);
        var back = network
            .Branches.Where(branch => !isLive[branch.Index] && dials.StateOf(branch) == SectionState.Kept)
            .Select(branch => (From: nodeOf[branch.To], To: nodeOf[branch.From]))
            .ToLookup(edge => edge.From);
        var open = new Queue<int>(Enumerable.Range(0, reached.Length).Where(node => reached[node] != CoilPlace.Free));
        while (open.TryDequeue(out var node))
        {
            foreach (var edge in hanging[node].Concat(back[node]))
            {
                if (reached[edge.To] == CoilPlace.Free)
                {
                    reached[edge.To] = reached[node];
                    open.Enqueue(edge.To);
                }
            }
        }
    }
}
