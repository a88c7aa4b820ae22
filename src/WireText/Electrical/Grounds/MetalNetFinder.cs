using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Electrical.Networks;
using WireText.Electrical.Situations;

namespace WireText.Electrical.Grounds;

/// <summary>Finds how every bare metal lug of a circuit comes to the sleeve: by solder, by touch, by contacts, or not at all.</summary>
public sealed class MetalNetFinder
{
    /// <summary>Nets and elements looked at, over all metal, before the search for hot metal ends. Chosen: a second or two.</summary>
    internal const long WorkLimit = 20_000_000;

    private readonly Network network;
    private readonly SituationOutcomes? outcomes;
    private readonly CancellationToken cancellation;
    private long work;

    private MetalNetFinder(Network network, SituationOutcomes? outcomes, CancellationToken cancellation)
    {
        this.network = network;
        this.outcomes = outcomes;
        this.cancellation = cancellation;
    }

    /// <summary>The nets of metal in order of their first lug.</summary>
    /// <param name="outcomes">Null when the situations could not be listed: then no net is found hot.</param>
    public static ImmutableArray<MetalNet> Find(
        Network network,
        SituationOutcomes? outcomes,
        CancellationToken cancellation = default
    )
    {
        var finder = new MetalNetFinder(network, outcomes, cancellation);
        return
        [
            .. network
                .Circuit.Lugs.Where(lug => lug.IsMetal && !lug.IsInner)
                .GroupBy(lug => network.Circuit.Nets.Soldered[lug.Index])
                .Select(group => finder.Examine([.. group.Select(lug => lug.Index)])),
        ];
    }

    private MetalNet Examine(ImmutableArray<int> lugs)
    {
        var nets = network.Circuit.Nets;
        var net = nets.OneNet[lugs[0]];
        var isSoldered = nets.SameSolder(lugs[0], network.Circuit.Outputs[0].Sleeve);
        var contact = ContactReport.Between(network, net, network.Sleeve);
        var hot = contact.Relation is ContactRelation.OneNet or ContactRelation.Always ? null : FindHot(net);
        return new MetalNet(lugs, net, isSoldered, contact, hot);
    }

    /// <summary>Of the states in which the net is a live node but the sleeve while a string is heard, one with the fewest controls off rest.</summary>
    private State? FindHot(int net)
    {
        State? best = null;
        if (!network.HasContactAt(net) && !network.HasElementAt(net))
        {
            return null;
        }

        for (var i = 0; outcomes is not null && i < outcomes.Situations.Length; i++)
        {
            if (outcomes.AtRest[i] != StructuralOutcome.Sounding)
            {
                continue;
            }

            var open = new Stack<State>();
            open.Push(outcomes.Situations[i].State);
            while (work < WorkLimit && open.TryPop(out var state))
            {
                cancellation.ThrowIfCancellationRequested();
                work += network.NetCount + network.Branches.Length;
                if (ControlAt(net, state) is { } control)
                {
                    foreach (var next in Branches(state, control))
                    {
                        open.Push(next);
                    }
                }
                else if (IsHot(net, state) && (best is null || OffRest(state) < OffRest(best)))
                {
                    best = state;
                }
            }
        }

        return best;
    }

    private IEnumerable<State> Branches(State state, int control)
    {
        for (var position = network.Circuit.Controls[control].Positions.Length - 1; position >= 0; position--)
        {
            yield return state.At(control, position);
        }
    }

    /// <summary>The first control not yet asked that can join something to the node of a net.</summary>
    private int? ControlAt(int net, State state)
    {
        var nodeOf = network.InContact(state);
        for (var control = 0; control < state.ControlCount; control++)
        {
            if (state[control] is not null)
            {
                continue;
            }

            foreach (var pair in network.Contacts[control].Possible)
            {
                if ((nodeOf[pair.Low] == nodeOf[net]) != (nodeOf[pair.High] == nodeOf[net]))
                {
                    return control;
                }
            }
        }

        return null;
    }

    private bool IsHot(int net, State state)
    {
        var nodeOf = network.AtTheDials(state);
        return nodeOf[net] != nodeOf[network.Sleeve]
            && LivePart
                .Of(network, state)
                .Select(index => network.Branches[index])
                .Any(branch => nodeOf[branch.From] == nodeOf[net] || nodeOf[branch.To] == nodeOf[net]);
    }

    private int OffRest(State state) =>
        state.Stated.Count(at => at.Position != network.Circuit.Controls[at.Control].Rest);
}
