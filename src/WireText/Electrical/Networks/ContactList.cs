using System.Collections.Immutable;
using WireText.Circuits;

namespace WireText.Electrical.Networks;

/// <summary>The nets that the positions of one control join.</summary>
/// <param name="Closed">For each position, pairs that together join what the position joins; a pair inside one net is left out.</param>
/// <param name="Effective">
/// For each position, every pair of different nets it makes one that each hold at least two lugs: contacts that lead somewhere.
/// </param>
public sealed record ContactList(
    ImmutableArray<ImmutableArray<NetPair>> Closed,
    ImmutableArray<ImmutableArray<NetPair>> Effective
)
{
    /// <summary>Every pair that any position closes, each once, in order of first appearance.</summary>
    public ImmutableArray<NetPair> Possible { get; } = [.. Closed.SelectMany(pairs => pairs).Distinct()];

    /// <summary>Every effective pair of any position, each once, in order of first appearance.</summary>
    public ImmutableArray<NetPair> EffectiveAnywhere { get; } = [.. Effective.SelectMany(pairs => pairs).Distinct()];

    public static ContactList Of(Circuit circuit, Control control) =>
        new(
            [.. control.Positions.Select(position => ClosedBy(circuit, position))],
            [.. control.Positions.Select(position => EffectiveIn(circuit, position))]
        );

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
