using System.Numerics;

namespace WireText.Proposing;

/// <summary>Which of up to sixteen nodes are one: a partition, four bits a node, each with the lowest node of its block.</summary>
internal readonly record struct Joining(ulong Bits)
{
    public const int MostNodes = 16;

    private const int Width = 4;
    private const ulong Ones = 0x1111_1111_1111_1111;

    /// <summary>No two nodes are one.</summary>
    public static Joining Apart { get; } = new(0xFEDC_BA98_7654_3210);

    /// <summary>The lowest node of the block that a node is in.</summary>
    public int this[int node] => (int)(Bits >> (node * Width)) & 0xF;

    /// <summary>How many joins make it: nodes less blocks.</summary>
    public int Rank => BitOperations.PopCount(Moved);

    /// <summary>A one at the foot of each node that is not the lowest of its block.</summary>
    private ulong Moved => Different(Bits ^ Apart.Bits);

    public bool AreOne(int a, int b) => this[a] == this[b];

    public Joining With(int a, int b)
    {
        var (one, other) = (this[a], this[b]);
        if (one == other)
        {
            return this;
        }

        var (low, high) = ((ulong)Math.Min(one, other), (ulong)Math.Max(one, other));
        var same = Ones & ~Different(Bits ^ (high * Ones));
        return new Joining((Bits & ~(same * 0xF)) | (same * low));
    }

    /// <summary>What both join.</summary>
    public Joining With(Joining other)
    {
        var joined = this;
        for (var moved = other.Moved; moved != 0; moved &= moved - 1)
        {
            var node = BitOperations.TrailingZeroCount(moved) / Width;
            joined = joined.With(node, other[node]);
        }

        return joined;
    }

    /// <summary>True when all that the other joins is one here.</summary>
    public bool Holds(Joining other)
    {
        for (var moved = other.Moved; moved != 0; moved &= moved - 1)
        {
            var node = BitOperations.TrailingZeroCount(moved) / Width;
            if (this[node] != this[other[node]])
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>The same among the first nodes; those behind stand apart.</summary>
    public Joining Among(int count)
    {
        var kept = count == MostNodes ? ulong.MaxValue : (1UL << (count * Width)) - 1;
        return new Joining((Bits & kept) | (Apart.Bits & ~kept));
    }

    /// <summary>The nodes that are one with another, a bit each.</summary>
    public int Joined()
    {
        var joined = 0;
        for (var moved = Moved; moved != 0; moved &= moved - 1)
        {
            var node = BitOperations.TrailingZeroCount(moved) / Width;
            joined |= (1 << node) | (1 << this[node]);
        }

        return joined;
    }

    private static ulong Different(ulong bits) => (bits | (bits >> 1) | (bits >> 2) | (bits >> 3)) & Ones;
}
