using System.Numerics;

namespace WireText.Drawing.Layout.Routing;

/// <summary>Search states waiting for their turn: the least estimate first, of equals the one that came last.</summary>
/// <remarks>
/// Estimates are small whole numbers, so each has a list of its own and nothing has to be sorted; two levels of bits say which
/// lists have something in them. The few estimates past the last list wait in a heap.
/// </remarks>
internal sealed class StateQueue
{
    private const int Lists = 1 << 14;
    private const int None = -1;

    private readonly int[] _last = new int[Lists];
    private readonly ulong[] _occupied = new ulong[Lists / 64];
    private readonly ulong[] _occupiedWords = new ulong[Lists / (64 * 64)];
    private readonly StateHeap _beyond = new();
    private (int State, int Cost, int Before)[] _items = new (int, int, int)[1024];
    private int _count;
    private int _vacant = None;
    private int _least = Lists;

    public StateQueue() => Array.Fill(_last, None);

    public bool IsEmpty => _least == Lists && _beyond.IsEmpty;

    /// <summary>The least estimate of all; there must be one.</summary>
    public int LeastEstimate => _least < Lists ? _least : _beyond.LeastEstimate;

    public void Clear()
    {
        while (_least < Lists)
        {
            _last[_least] = None;
            Vacate(_least);
            _least = NextAfter(_least);
        }

        _beyond.Clear();
        (_count, _vacant) = (0, None);
    }

    /// <param name="estimate">Not negative.</param>
    public void Push(int estimate, int cost, int state)
    {
        if (estimate >= Lists)
        {
            _beyond.Push(estimate, cost, state);
            return;
        }

        var item = TakeItem();
        _items[item] = (state, cost, _last[estimate]);
        _last[estimate] = item;
        _occupied[estimate >> 6] |= 1UL << (estimate & 63);
        _occupiedWords[estimate >> 12] |= 1UL << ((estimate >> 6) & 63);
        _least = Math.Min(_least, estimate);
    }

    public (int Cost, int State) Pop()
    {
        if (_least == Lists)
        {
            return _beyond.Pop();
        }

        var item = _last[_least];
        var (state, cost, before) = _items[item];
        _items[item].Before = _vacant;
        (_vacant, _last[_least]) = (item, before);
        if (before == None)
        {
            Vacate(_least);
            _least = NextAfter(_least);
        }

        return (cost, state);
    }

    /// <summary>A place that was left by a state that had its turn, or a new one.</summary>
    private int TakeItem()
    {
        var item = _vacant;
        if (item != None)
        {
            _vacant = _items[item].Before;
            return item;
        }

        if (_count == _items.Length)
        {
            Array.Resize(ref _items, 2 * _count);
        }

        return _count++;
    }

    private void Vacate(int list)
    {
        ref var word = ref _occupied[list >> 6];
        word &= ~(1UL << (list & 63));
        if (word == 0)
        {
            _occupiedWords[list >> 12] &= ~(1UL << ((list >> 6) & 63));
        }
    }

    /// <summary>The next list that has something in it, or the number of lists.</summary>
    private int NextAfter(int list)
    {
        var rest = _occupied[list >> 6] & (ulong.MaxValue << (list & 63) << 1);
        if (rest != 0)
        {
            return (list & ~63) + BitOperations.TrailingZeroCount(rest);
        }

        var word = list >> 6;
        var words = _occupiedWords[word >> 6] & (ulong.MaxValue << (word & 63) << 1);
        for (var group = word >> 6; ; words = _occupiedWords[group])
        {
            if (words != 0)
            {
                var found = (64 * group) + BitOperations.TrailingZeroCount(words);
                return (64 * found) + BitOperations.TrailingZeroCount(_occupied[found]);
            }

            if (++group == _occupiedWords.Length)
            {
                return Lists;
            }
        }
    }
}
