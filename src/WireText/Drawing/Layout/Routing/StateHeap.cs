namespace WireText.Drawing.Layout.Routing;

/// <summary>Search states waiting for their turn: the least estimate first, of equals the farthest along, then the smaller state.</summary>
internal sealed class StateHeap
{
    private (ulong Key, int State)[] heap = new (ulong, int)[1024];

    public int Count { get; private set; }

    public bool IsEmpty => Count == 0;

    /// <summary>The least estimate in the heap.</summary>
    public int LeastEstimate => (int)(heap[0].Key >> 32);

    public void Clear() => Count = 0;

    public void Push(int estimate, int cost, int state)
    {
        if (Count == heap.Length)
        {
            Array.Resize(ref heap, 2 * Count);
        }

        var item = (((ulong)(uint)estimate << 32) | (uint)~cost, state);
        var items = heap;
        var i = Count++;
        while (i > 0)
        {
            var parent = (i - 1) >> 2;
            if (!IsBefore(item, items[parent]))
            {
                break;
            }

            items[i] = items[parent];
            i = parent;
        }

        items[i] = item;
    }

    public (int Cost, int State) Pop()
    {
        var items = heap;
        var top = items[0];
        var last = items[--Count];
        var i = 0;
        while (true)
        {
            var first = (4 * i) + 1;
            if (first >= Count)
            {
                break;
            }

            var least = first;
            var end = Math.Min(first + 4, Count);
            for (var child = first + 1; child < end; child++)
            {
                if (IsBefore(items[child], items[least]))
                {
                    least = child;
                }
            }

            if (!IsBefore(items[least], last))
            {
                break;
            }

            items[i] = items[least];
            i = least;
        }

        items[i] = last;
        return ((int)~(uint)top.Key, top.State);
    }

    private static bool IsBefore((ulong Key, int State) a, (ulong Key, int State) b) =>
        a.Key < b.Key || (a.Key == b.Key && a.State < b.State);
}
