using System.Numerics;

namespace WireText.Drawing.Layout.Routing;

/// <summary>Search states waiting for their turn: the least estimate first, of equals the one that came last.</summary>
/// <remarks>
/// Estimates are small whole numbers, so each has a list of its own and nothing has to be sorted; two levels of bits say which
/// lists have something in them. The few estimates past the last list wait in a heap.
/// </remarks>
internal sealed class StateQueue
{
    /// <summary>A list an estimate: a path of some 1,600 steps fits, at 10 a step; dearer ones wait in the heap.</summary>
    private const int Lists = 1 << 14;
    private const int None = -1;

    private readonly int[] last = new int[Lists];
    private readonly ulong[] occupied = new ulong[Lists / 64];
    private readonly ulong[] occupiedWords = new ulong[Lists / (64 * 64)];
    private readonly StateHeap beyond = new();
    private (int State, int Cost, int Before)[] items = new (int, int, int)[1024];
    private int count;
    private int vacant = None;
    private int least = Lists;

    public StateQueue() => Array.Fill(last, None);

    public bool IsEmpty => least == Lists && beyond.IsEmpty;

    /// <summary>The least estimate of all; there must be one.</summary>
    public int LeastEstimate => least < Lists ? least : beyond.LeastEstimate;

    public void Clear()
    {
        while (least < Lists)
        {
            last[least] = None;
            Vacate(least);
            least = NextAfter(least);
        }

        beyond.Clear();
        (count, vacant) = (0, None);
    }

    /// <param name="estimate">Not negative.</param>
    public void Push(int estimate, int cost, int state)
    {
        if (estimate >= Lists)
        {
            beyond.Push(estimate, cost, state);
            return;
        }

        var item = TakeItem();
        items[item] = (state, cost, last[estimate]);
        last[estimate] = item;
        occupied[estimate >> 6] |= 1UL << (estimate & 63);
        occupiedWords[estimate >> 12] |= 1UL << ((estimate >> 6) & 63);
        least = Math.Min(least, estimate);
    }

    public (int Cost, int State) Pop()
    {
        if (least == Lists)
        {
            return beyond.Pop();
        }

        var item = last[least];
        var (state, cost, before) = items[item];
        items[item].Before = vacant;
        (vacant, last[least]) = (item, before);
        if (before == None)
        {
            Vacate(least);
            least = NextAfter(least);
        }

        return (cost, state);
    }

    /// <summary>A place that was left by a state that had its turn, or a new one.</summary>
    private int TakeItem()
    {
        var item = vacant;
        if (item != None)
        {
            vacant = items[item].Before;
            return item;
        }

        if (count == items.Length)
        {
            Array.Resize(ref items, 2 * count);
        }

        return count++;
    }

    private void Vacate(int list)
    {
        ref var word = ref occupied[list >> 6];
        word &= ~(1UL << (list & 63));
        if (word == 0)
        {
            occupiedWords[list >> 12] &= ~(1UL << ((list >> 6) & 63));
        }
    }

    /// <summary>The next list that has something in it, or the number of lists.</summary>
    private int NextAfter(int list)
    {
        var rest = occupied[list >> 6] & (ulong.MaxValue << (list & 63) << 1);
        if (rest != 0)
        {
            return (list & ~63) + BitOperations.TrailingZeroCount(rest);
        }

        var word = list >> 6;
        var words = occupiedWords[word >> 6] & (ulong.MaxValue << (word & 63) << 1);
        for (var group = word >> 6; ; words = occupiedWords[group])
        {
            if (words != 0)
            {
                var found = (64 * group) + BitOperations.TrailingZeroCount(words);
                return (64 * found) + BitOperations.TrailingZeroCount(occupied[found]);
            }

            if (++group == occupiedWords.Length)
            {
                return Lists;
            }
        }
    }
}
