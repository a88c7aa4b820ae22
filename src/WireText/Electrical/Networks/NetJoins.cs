namespace WireText.Electrical.Networks;

/// <summary>Disjoint sets of nets that grow by joining (union by the lower number, path halving).</summary>
internal sealed class NetJoins
{
    private readonly int[] parent;

    public NetJoins(int count)
    {
        parent = new int[count];
        for (var i = 0; i < count; i++)
        {
            parent[i] = i;
        }
    }

    /// <summary>The nets that some position of some control joins; ground is passed by nothing.</summary>
    public static NetJoins ByContacts(Network network)
    {
        var joins = new NetJoins(network.NetCount);
        foreach (var pair in network.Contacts.SelectMany(contacts => contacts.Possible))
        {
            if (!pair.Holds(network.Sleeve))
            {
                joins.Join(pair.Low, pair.High);
            }
        }

        return joins;
    }

    public int Find(int net)
    {
        while (parent[net] != net)
        {
            parent[net] = parent[parent[net]];
            net = parent[net];
        }

        return net;
    }

    public void Join(int a, int b)
    {
        var (rootA, rootB) = (Find(a), Find(b));
        parent[Math.Max(rootA, rootB)] = Math.Min(rootA, rootB);
    }

    /// <summary>For each net, the node it belongs to: the lowest net of its set.</summary>
    public int[] ToNodes()
    {
        var nodes = new int[parent.Length];
        for (var i = 0; i < nodes.Length; i++)
        {
            nodes[i] = Find(i);
        }

        return nodes;
    }
}
