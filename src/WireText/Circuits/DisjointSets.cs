using System.Collections.Immutable;

namespace WireText.Circuits;

/// <summary>Sets of numbers that grow together (union by the smaller root, path halving).</summary>
public sealed class DisjointSets
{
    private readonly int[] parents;

    public DisjointSets(int count)
    {
        parents = new int[count];
        for (var i = 0; i < count; i++)
        {
            parents[i] = i;
        }
    }

    /// <summary>The smallest member of the set.</summary>
    public int Find(int item)
    {
        while (parents[item] != item)
        {
            parents[item] = parents[parents[item]];
            item = parents[item];
        }

        return item;
    }

    /// <summary>Makes two sets one; false when they were one already.</summary>
    public bool Unite(int a, int b)
    {
        var (first, second) = (Find(a), Find(b));
        if (first == second)
        {
            return false;
        }

        parents[Math.Max(first, second)] = Math.Min(first, second);
        return true;
    }

    /// <summary>For each item the number of its set; sets are numbered by their first item.</summary>
    public ImmutableArray<int> Number()
    {
        var numbers = new int[parents.Length];
        var next = 0;
        for (var i = 0; i < parents.Length; i++)
        {
            var root = Find(i);
            numbers[i] = root == i ? next++ : numbers[root];
        }

        return [.. numbers];
    }
}
