using System.Collections.Immutable;

namespace WireText.Circuits;

/// <summary>What is joined in every position. Nets are numbered by their first-declared lug.</summary>
/// <param name="OneNet">For each lug, the number of its net: solder and touching metal.</param>
/// <param name="Soldered">For each lug, the number of its net when touching metal does not count.</param>
/// <param name="Members">For each net of <paramref name="OneNet"/>, its lugs in order.</param>
public sealed record NetMap(
    ImmutableArray<int> OneNet,
    ImmutableArray<int> Soldered,
    ImmutableArray<ImmutableArray<int>> Members
)
{
    public int Count => Members.Length;

    public bool SameNet(int a, int b) => OneNet[a] == OneNet[b];

    public bool SameSolder(int a, int b) => Soldered[a] == Soldered[b];
}
