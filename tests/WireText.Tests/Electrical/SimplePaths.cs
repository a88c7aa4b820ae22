using WireText.Circuits;
using WireText.Electrical.Networks;

namespace WireText.Tests.Electrical;

/// <summary>The live part from its meaning, by trying every way: an element is live when a simple path from tip to sleeve runs through it.</summary>
internal static class SimplePaths
{
    public static List<int> LiveBranches(Network network, State state)
    {
        var nodeOf = network.AtTheDials(state);
        var dials = network.DialsOf(state);
        var edges = network
            .Branches.Where(branch => dials.StateOf(branch) != SectionState.Absent)
            .Select(branch => (branch.Index, From: nodeOf[branch.From], To: nodeOf[branch.To]))
            .ToList();
        var (tip, sleeve) = (nodeOf[network.Tip], nodeOf[network.Sleeve]);
        var live = Between(edges, tip, sleeve);
        if (tip == sleeve)
        {
            return [];
        }

        // What an amplifier with a live output sees at its input is live too; the load across the jack is one way for it.
        edges.Add((-1, tip, sleeve));
        for (var before = -1; before != live.Count; )
        {
            before = live.Count;
            foreach (
                var output in network
                    .Branches.Where(branch => branch.Kind == BranchKind.AmplifierOutput && live.Contains(branch.Index))
                    .ToList()
            )
            {
                var input = network.Branches.First(branch =>
                    branch.Kind == BranchKind.AmplifierInput && branch.Element == output.Element
                );
                live.UnionWith(Between(edges, nodeOf[input.From], nodeOf[input.To]));
            }
        }

        live.Remove(-1);
        return [.. live];
    }

    private static SortedSet<int> Between(List<(int Index, int From, int To)> edges, int start, int end)
    {
        var found = new SortedSet<int>();
        if (start != end)
        {
            Walk(start, new HashSet<int> { start }, []);
        }

        return found;

        void Walk(int node, HashSet<int> seen, List<int> path)
        {
            if (node == end)
            {
                found.UnionWith(path);
                return;
            }

            foreach (var (index, from, to) in edges)
            {
                if ((from != node && to != node) || !seen.Add(from == node ? to : from))
                {
                    continue;
                }

                var next = from == node ? to : from;
                path.Add(index);
                Walk(next, seen, path);
                path.RemoveAt(path.Count - 1);
                seen.Remove(next);
            }
        }
    }
}
