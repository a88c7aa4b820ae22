namespace WireText.Electrical.Networks;

/// <summary>What can be reached from a net over elements and over contacts that some position closes.</summary>
public sealed class Reach
{
    private readonly List<(int Net, int Element)>?[] neighbours;

    public Reach(Network network)
    {
        neighbours = new List<(int, int)>?[network.NetCount];
        foreach (var branch in network.Branches)
        {
            Link(branch.From, branch.To, branch.Element);
        }

        foreach (var pair in network.Contacts.SelectMany(contacts => contacts.Possible))
        {
            Link(pair.Low, pair.High, element: -1);
        }
    }

    /// <summary>The nets in reach, the first with them.</summary>
    /// <param name="stop">A net that is left out and not passed; -1 for none.</param>
    /// <param name="without">An element that is not passed; -1 for none.</param>
    public HashSet<int> From(int net, int stop = -1, int without = -1) => From([net], stop, without);

    /// <summary>As <see cref="From(int, int, int)"/>, from any of several nets; the one to stop at is no start either.</summary>
    public HashSet<int> From(IEnumerable<int> nets, int stop = -1, int without = -1)
    {
        var reached = nets.Where(net => net != stop).ToHashSet();
        var queue = new Queue<int>(reached);
        while (queue.TryDequeue(out var at))
        {
            foreach (var (next, element) in neighbours[at] ?? [])
            {
                if (next != stop && (element < 0 || element != without) && reached.Add(next))
                {
                    queue.Enqueue(next);
                }
            }
        }

        return reached;
    }

    private void Link(int a, int b, int element)
    {
        (neighbours[a] ??= []).Add((b, element));
        (neighbours[b] ??= []).Add((a, element));
    }
}
