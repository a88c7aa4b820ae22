using System.Collections.Immutable;

namespace WireText.Electrical.Forms;

/// <summary>How branches are joined in series and in parallel between a low and a high vertex. Flat: no series in a series.</summary>
internal abstract record JoinTree
{
    /// <summary>One branch.</summary>
    /// <param name="Place">Its place in <see cref="Solving.LiveNetwork.Branches"/>.</param>
    /// <param name="IsReversed">True when its plus node is the low one.</param>
    public sealed record Leaf(int Place, bool IsReversed) : JoinTree;

    /// <param name="Parts">From the low vertex to the high one.</param>
    public sealed record Series(ImmutableArray<JoinTree> Parts) : JoinTree;

    public sealed record Parallel(ImmutableArray<JoinTree> Parts) : JoinTree;

    /// <summary>The tree seen from the other side.</summary>
    public JoinTree Reversed() =>
        this switch
        {
            Leaf leaf => leaf with { IsReversed = !leaf.IsReversed },
            Series series => new Series([.. series.Parts.Reverse().Select(part => part.Reversed())]),
            Parallel parallel => new Parallel([.. parallel.Parts.Select(part => part.Reversed())]),
            _ => this,
        };

    public static JoinTree InSeries(JoinTree low, JoinTree high) =>
        new Series([.. low is Series a ? a.Parts : [low], .. high is Series b ? b.Parts : [high]]);

    public static JoinTree InParallel(JoinTree first, JoinTree second) =>
        new Parallel([.. first is Parallel a ? a.Parts : [first], .. second is Parallel b ? b.Parts : [second]]);

    /// <summary>The leaves, from low to high.</summary>
    public IEnumerable<Leaf> Leaves() =>
        this switch
        {
            Leaf leaf => [leaf],
            Series series => series.Parts.SelectMany(part => part.Leaves()),
            Parallel parallel => parallel.Parts.SelectMany(part => part.Leaves()),
            _ => [],
        };
}
