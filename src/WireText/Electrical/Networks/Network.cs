using System.Collections.Concurrent;
using System.Collections.Immutable;
using WireText.Circuits;

namespace WireText.Electrical.Networks;

/// <summary>A circuit as a graph: nets, the elements between them, and the contacts that may join them.</summary>
/// <remarks>Everything is seen from the first output jack: its tip and its sleeve. Nothing loads the other jacks.</remarks>
public sealed class Network
{
    private readonly Lazy<HashSet<int>> switched;
    private readonly Lazy<HashSet<int>> loaded;
    private readonly ConcurrentDictionary<ImmutableArray<double>, DialSetting> settings = new(TravelsComparer.Instance);

    private Network(Circuit circuit, OutputJack output)
    {
        Circuit = circuit;
        Open = State.Open(circuit);
        Tip = circuit.Nets.OneNet[output.Tip];
        Sleeve = circuit.Nets.OneNet[output.Sleeve];
        Branches = BranchList.Of(circuit);
        Contacts = [.. circuit.Controls.Select(control => ContactList.Of(circuit, control))];
        switched = new(() =>
            [.. Contacts.SelectMany(contacts => contacts.Possible).SelectMany(pair => new[] { pair.Low, pair.High })]
        );
        loaded = new(() => [.. Branches.SelectMany(branch => new[] { branch.From, branch.To })]);
    }

    public Circuit Circuit { get; }

    /// <summary>Plugs and dials at rest, every other control at any.</summary>
    public State Open { get; }

    public int NetCount => Circuit.Nets.Count;

    /// <summary>T0, the net of the output's tip.</summary>
    public int Tip { get; }

    /// <summary>G0, the net of the output's sleeve.</summary>
    public int Sleeve { get; }

    public ImmutableArray<Branch> Branches { get; }

    /// <summary>For each control, the nets that its positions join.</summary>
    public ImmutableArray<ContactList> Contacts { get; }

    /// <summary>The network of a circuit; null when it has no output jack to look from.</summary>
    public static Network? Of(Circuit circuit) =>
        circuit.Outputs.IsEmpty ? null : new Network(circuit, circuit.Outputs[0]);

    /// <summary>True when some position of a control joins the net with another.</summary>
    public bool HasContactAt(int net) => switched.Value.Contains(net);

    /// <summary>True when an element ends on the net.</summary>
    public bool HasElementAt(int net) => loaded.Value.Contains(net);

    /// <summary>The nets that closed contacts make one, pots not contracted; a control at any stays open.</summary>
    /// <returns>For each net, its node: the lowest net it is joined with.</returns>
    public int[] InContact(State state) => JoinContacts(state).ToNodes();

    /// <summary>As <see cref="InContact"/>, with the track sections joined that the dials make zero.</summary>
    public int[] AtTheDials(State state) => AtTheDials(state, []);

    /// <param name="parted">Track sections that are taken out in thought and join nothing.</param>
    internal int[] AtTheDials(State state, ImmutableArray<int> parted)
    {
        var joins = JoinContacts(state);
        var dials = DialsOf(state);
        foreach (var branch in Branches)
        {
            if (dials.StateOf(branch) == SectionState.Joined && !parted.Contains(branch.Index))
            {
                joins.Join(branch.From, branch.To);
            }
        }

        return joins.ToNodes();
    }

    /// <summary>What the dials of a state make of the branches; settings that were met before are not worked out again.</summary>
    public DialSetting DialsOf(State state) =>
        settings.GetOrAdd(state.Travels, travels => DialSetting.At(this, travels));

    private NetJoins JoinContacts(State state)
    {
        var joins = new NetJoins(NetCount);
        foreach (var (control, position) in state.Stated)
        {
            foreach (var pair in Contacts[control].Closed[position])
            {
                joins.Join(pair.Low, pair.High);
            }
        }

        return joins;
    }
}
