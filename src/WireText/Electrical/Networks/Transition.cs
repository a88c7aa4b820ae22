using System.Collections.Immutable;
using WireText.Circuits;

namespace WireText.Electrical.Networks;

/// <summary>A control on its way from one position to the next, all its poles together, either way round.</summary>
public sealed record Transition(Control Control, int From, int To)
{
    /// <summary>The ways of a control, in mechanical order; round again only where it has no stops.</summary>
    public static IEnumerable<Transition> Of(Control control)
    {
        for (var position = 1; position < control.Positions.Length; position++)
        {
            yield return new Transition(control, position - 1, position);
        }

        // Between two positions there is one way.
        if (control.IsEndless && control.Positions.Length > 2)
        {
            yield return new Transition(control, control.Positions.Length - 1, 0);
        }
    }

    /// <summary>
    /// The node of each net while the control is on its way: what either position joins where it makes before it breaks, what
    /// both join where it breaks before it makes. Pots are not contracted.
    /// </summary>
    /// <param name="state">The control itself is not looked at; one at any stays open.</param>
    public int[] InContact(Network network, State state) =>
        OnTheWay(network, network.InContact(state.At(Control.Index, null)));

    /// <summary>As <see cref="InContact"/>, with the track sections joined that the dials make zero.</summary>
    public int[] AtTheDials(Network network, State state) =>
        OnTheWay(network, network.AtTheDials(state.At(Control.Index, null)));

    private int[] OnTheWay(Network network, int[] nodeOf)
    {
        var joins = new NetJoins(nodeOf.Length);
        for (var net = 0; net < nodeOf.Length; net++)
        {
            joins.Join(net, nodeOf[net]);
        }

        foreach (var pair in Closed(network.Contacts[Control.Index], nodeOf.Length))
        {
            joins.Join(pair.Low, pair.High);
        }

        return joins.ToNodes();
    }

    private IEnumerable<NetPair> Closed(ContactList contacts, int netCount)
    {
        if (Control.Between == Parts.SwitchOver.MakeBeforeBreak)
        {
            return contacts.Closed[From].Concat(contacts.Closed[To]);
        }

        var (before, after) = (Nodes(contacts.Closed[From], netCount), Nodes(contacts.Closed[To], netCount));
        var nets = contacts.Possible.SelectMany(pair => new[] { pair.Low, pair.High }).Distinct().Order().ToList();
        return from i in Enumerable.Range(0, nets.Count)
            from j in Enumerable.Range(i + 1, nets.Count - i - 1)
            where before[nets[i]] == before[nets[j]] && after[nets[i]] == after[nets[j]]
            select NetPair.Of(nets[i], nets[j]);
    }

    private static int[] Nodes(ImmutableArray<NetPair> closed, int netCount)
    {
        var joins = new NetJoins(netCount);
        foreach (var pair in closed)
        {
            joins.Join(pair.Low, pair.High);
        }

        return joins.ToNodes();
    }
}
