using System.Collections.Immutable;

namespace WireText.Circuits;

/// <summary>Union-find, once, over everything that joins lugs in every position.</summary>
internal static class NetBuilder
{
    public static NetMap Build(int lugCount, IReadOnlyList<Join> joins)
    {
        var soldered = new DisjointSets(lugCount);
        foreach (var join in joins.Where(j => j.Kind != JoinKind.Touch))
        {
            soldered.Unite(join.From, join.To);
        }

        var solderNumbers = soldered.Number();
        foreach (var join in joins.Where(j => j.Kind == JoinKind.Touch))
        {
            soldered.Unite(join.From, join.To);
        }

        var netNumbers = soldered.Number();
        return new NetMap(netNumbers, solderNumbers, MembersOf(netNumbers));
    }

    private static ImmutableArray<ImmutableArray<int>> MembersOf(ImmutableArray<int> numbers)
    {
        var members = new List<ImmutableArray<int>.Builder>();
        for (var lug = 0; lug < numbers.Length; lug++)
        {
            if (numbers[lug] == members.Count)
            {
                members.Add(ImmutableArray.CreateBuilder<int>());
            }

            members[numbers[lug]].Add(lug);
        }

        return [.. members.Select(m => m.ToImmutable())];
    }
}
