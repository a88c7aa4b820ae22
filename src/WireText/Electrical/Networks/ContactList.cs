using System.Collections.Immutable;
using WireText.Circuits;

namespace WireText.Electrical.Networks;

/// <summary>The nets that the positions of one control join.</summary>
public sealed class ContactList
{
    // Most circuits that a search tries are done with before anybody asks for these.
    private readonly Lazy<ImmutableArray<NetPair>> possible;
    private readonly Lazy<ImmutableArray<ImmutableArray<NetPair>>> effective;
    private readonly Lazy<ImmutableArray<NetPair>> effectiveAnywhere;

    private ContactList(Circuit circuit, Control control)
    {
        Closed = [.. control.Positions.Select(position => ClosedBy(circuit, position))];
        possible = new(() => [.. Closed.SelectMany(pairs => pairs).Distinct()]);
        effective = new(() => [.. control.Positions.Select(position => EffectiveIn(circuit, position))]);
        effectiveAnywhere = new(() => [.. Effective.SelectMany(pairs => pairs).Distinct()]);
    }

    /// <summary>For each position, pairs that together join what the position joins; a pair inside one net is left out.</summary>
    public ImmutableArray<ImmutableArray<NetPair>> Closed { get; }

    /// <summary>
    /// For each position, every pair of different nets it makes one that each hold at least two lugs: contacts that lead somewhere.
    /// </summary>
    public ImmutableArray<ImmutableArray<NetPair>> Effective => effective.Value;

    /// <summary>Every pair that any position closes, each once, in order of first appearance.</summary>
    public ImmutableArray<NetPair> Possible => possible.Value;

    /// <summary>Every effective pair of any position, each once, in order of first appearance.</summary>
    public ImmutableArray<NetPair> EffectiveAnywhere => effectiveAnywhere.Value;

    public static ContactList Of(Circuit circuit, Control control) => new(circuit, control);

    private static ImmutableArray<NetPair> ClosedBy(Circuit circuit, Position position)
    {
        var pairs = ImmutableArray.CreateBuilder<NetPair>();
        foreach (var group in position.Closed)
        {
            var first = circuit.Nets.OneNet[group[0]];
            foreach (var lug in group)
            {
                var net = circuit.Nets.OneNet[lug];
                if (net != first && !pairs.Contains(NetPair.Of(first, net)))
                {
                    pairs.Add(NetPair.Of(first, net));
                }
            }
        }

        return pairs.ToImmutable();
    }

    private static ImmutableArray<NetPair> EffectiveIn(Circuit circuit, Position position)
    {
        var nets = position
            .Closed.SelectMany(group => group)
            .Select(lug => circuit.Nets.OneNet[lug])
            .Distinct()
            .Where(net => circuit.Nets.Members[net].Length >= 2)
            .ToList();
        var joins = new NetJoins(circuit.Nets.Count);
        foreach (var group in position.Closed)
        {
            foreach (var lug in group)
            {
                joins.Join(circuit.Nets.OneNet[group[0]], circuit.Nets.OneNet[lug]);
            }
        }

        return
        [
            .. from i in Enumerable.Range(0, nets.Count)
            from j in Enumerable.Range(i + 1, nets.Count - i - 1)
            where joins.Find(nets[i]) == joins.Find(nets[j])
            select NetPair.Of(nets[i], nets[j]),
        ];
    }
}
