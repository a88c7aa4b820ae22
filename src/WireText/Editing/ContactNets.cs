using WireText.Circuits;

namespace WireText.Editing;

/// <summary>Which lugs are one while contacts are closed as a state says.</summary>
internal sealed class ContactNets
{
    private readonly Circuit circuit;
    private readonly DisjointSets sets;

    public ContactNets(Circuit circuit, State state)
    {
        this.circuit = circuit;
        sets = new DisjointSets(circuit.Nets.Count);
        foreach (var (control, position) in state.Stated)
        {
            foreach (var group in circuit.Controls[control].Positions[position].Closed)
            {
                foreach (var other in group.Skip(1))
                {
                    sets.Unite(circuit.Nets.OneNet[group[0]], circuit.Nets.OneNet[other]);
                }
            }
        }
    }

    public bool AreOne(int lug, int other) =>
        sets.Find(circuit.Nets.OneNet[lug]) == sets.Find(circuit.Nets.OneNet[other]);
}
