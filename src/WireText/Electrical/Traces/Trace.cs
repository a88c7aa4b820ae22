using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Electrical.Networks;
using WireText.Electrical.Solving;

namespace WireText.Electrical.Traces;

/// <summary>A part of the circuit to be followed: the net of a lug, or everything that carries the signal in a state.</summary>
/// <param name="InWords">What is followed: <c>vol.3</c>, <c>sel=neck</c>; with the jack where there are several: <c>main: sel=neck</c>.</param>
/// <param name="Lugs">By lug: whether it belongs to it.</param>
/// <param name="Wires">By wire: whether it belongs to it.</param>
/// <param name="Contacts">The lugs that closed contacts join on the way, a group each.</param>
public sealed record Trace(
    string InWords,
    ImmutableArray<bool> Lugs,
    ImmutableArray<bool> Wires,
    ImmutableArray<ImmutableArray<int>> Contacts
)
{
    /// <summary>True when some lug of the part belongs to it.</summary>
    public bool Holds(Part part) => part.Lugs.Any(lug => Lugs[lug]);

    /// <summary>Everything that is one net with a lug, no contact closed.</summary>
    public static Trace OfNet(Circuit circuit, Lug lug)
    {
        var net = circuit.Nets.OneNet[lug.Index];
        return new Trace(
            lug.Name,
            [.. circuit.Lugs.Select(other => circuit.Nets.OneNet[other.Index] == net)],
            [.. circuit.Wires.Select(wire => wire.From >= 0 && circuit.Nets.OneNet[wire.From] == net)],
            []
        );
    }

    /// <summary>
    /// Everything that lies on a way between the live parts and the jack in a state; where tip and sleeve are joined, that
    /// join. What hangs on it by one end alone is left out.
    /// </summary>
    /// <param name="circuit">Whose wires are followed.</param>
    /// <param name="network">Its network, or that of a twin.</param>
    public static Trace OfState(Circuit circuit, Network network, State state)
    {
        var dials = network.DialsOf(state);
        var ways = new TraceWays(circuit.Lugs.Length);
        ways.AddEnd(circuit.Outputs[0].Tip);
        ways.AddEnd(circuit.Outputs[0].Sleeve);
        foreach (var branch in LiveNetwork.Of(network, state).Branches)
        {
            foreach (var lug in EndsOf(circuit, branch.Source))
            {
                ways.AddEnd(lug);
            }
        }

        foreach (var join in circuit.Joins.Where(join => join.From != join.To))
        {
            ways.Add(new Way(join.From, join.To, join.Wire, Contact: -1));
        }

        var closed = Closed(circuit, state);
        for (var group = 0; group < closed.Length; group++)
        {
            foreach (var lug in closed[group].Skip(1))
            {
                ways.Add(new Way(closed[group][0], lug, Wire: -1, group));
            }
        }

        foreach (var branch in network.Branches.Where(branch => dials.StateOf(branch) == SectionState.Joined))
        {
            var ends = EndsOf(circuit, branch);
            ways.Add(new Way(ends[0], ends[1], Wire: -1, Contact: -1));
        }

        var kept = ways.BetweenEnds();
        var lugs = new bool[circuit.Lugs.Length];
        var wires = new bool[circuit.Wires.Length];
        var contacts = new SortedDictionary<int, SortedSet<int>>();
        foreach (var end in ways.Ends)
        {
            lugs[end] = true;
        }

        foreach (var way in kept)
        {
            lugs[way.From] = lugs[way.To] = true;
            if (way.Wire >= 0)
            {
                wires[way.Wire] = true;
            }

            if (way.Contact >= 0)
            {
                contacts.TryAdd(way.Contact, []);
                contacts[way.Contact].UnionWith([way.From, way.To]);
            }
        }

        return new Trace(
            (circuit.JackToName() is { } jack ? $"{jack}: " : "") + StateText.AsSaid(state),
            [.. lugs],
            [.. wires],
            [.. contacts.Values.Select(group => group.ToImmutableArray())]
        );
    }

    private static ImmutableArray<ImmutableArray<int>> Closed(Circuit circuit, State state) =>
        [.. state.Stated.SelectMany(at => circuit.Controls[at.Control].Positions[at.Position].Closed)];

    private static ImmutableArray<int> EndsOf(Circuit circuit, Branch branch) =>
        (circuit.Elements[branch.Element], branch.Kind) switch
        {
            (Track track, BranchKind.TrackLow) => [track.Low, track.Wiper],
            (Track track, _) => [track.Wiper, track.High],
            (Amplifier amplifier, BranchKind.AmplifierOutput) => [amplifier.Out, amplifier.Common],
            (var element, _) => element.Ends,
        };
}
