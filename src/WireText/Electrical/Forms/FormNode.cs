using System.Collections.Immutable;
using WireText.Circuits;

namespace WireText.Electrical.Forms;

/// <summary>How heard coils are joined. Children are in the order of their first-declared coils; no series holds a series.</summary>
public abstract record FormNode
{
    /// <summary>What lies in series with the node and no other coil does.</summary>
    public ImmutableArray<PlainPart> Through { get; init; } = [];

    /// <summary>What lies across the node and takes of its strength.</summary>
    public ImmutableArray<PlainPart> ShuntedBy { get; init; } = [];

    /// <summary>The node's strength in dB where a dial or a shunt lowers it against the others; null elsewhere.</summary>
    public double? Decibels { get; init; }

    public abstract IEnumerable<CoilForm> Coils { get; }

    /// <summary>True when nothing but its joins tells the node from its parts.</summary>
    internal bool IsPlainlyJoined => ShuntedBy.IsEmpty && Decibels is null;

    /// <summary>The element of the first-declared coil.</summary>
    public int FirstCoil => Coils.Min(coil => coil.Coil.Index);

    /// <summary>The same with every coil reversed.</summary>
    public FormNode Reversed() => FormNodes.Flip(this);

    /// <summary>Joins nodes, flat and in order; one alone stays as it is; null for none.</summary>
    public static FormNode? InSeries(ImmutableArray<FormNode> nodes) =>
        Join(
            nodes,
            node => node is SeriesForm { IsPlainlyJoined: true } series ? series.Parts : [node],
            parts => new SeriesForm(parts)
        );

    /// <summary>Joins nodes, flat and in order; one alone stays as it is; null for none.</summary>
    public static FormNode? InParallel(ImmutableArray<FormNode> nodes) =>
        Join(
            nodes,
            node =>
                node is ParallelForm { IsPlainlyJoined: true, Through.IsEmpty: true } parallel
                    ? parallel.Parts
                    : [node],
            parts => new ParallelForm(parts)
        );

    private static FormNode? Join(
        ImmutableArray<FormNode> nodes,
        Func<FormNode, ImmutableArray<FormNode>> partsOf,
        Func<ImmutableArray<FormNode>, FormNode> make
    )
    {
        if (nodes.Length <= 1)
        {
            return nodes.FirstOrDefault();
        }

        var joined = make([.. nodes.SelectMany(node => partsOf(node)).OrderBy(node => node.FirstCoil)]);

        // What lies in series with a part of a series lies in series with all of it.
        return joined is SeriesForm
            ? joined with
            {
                Through =
                [
                    .. nodes
                        .Where(node => node is SeriesForm { IsPlainlyJoined: true })
                        .SelectMany(node => node.Through),
                ],
            }
            : joined;
    }
}

/// <param name="Sign">+1, or −1 when its string signal is reversed; 0 for a coil without a magnet.</param>
public sealed record CoilForm(Coil Coil, int Sign) : FormNode
{
    public override IEnumerable<CoilForm> Coils => [this];
}

public sealed record SeriesForm(ImmutableArray<FormNode> Parts) : FormNode
{
    public override IEnumerable<CoilForm> Coils => Parts.SelectMany(part => part.Coils);
}

public sealed record ParallelForm(ImmutableArray<FormNode> Parts) : FormNode
{
    public override IEnumerable<CoilForm> Coils => Parts.SelectMany(part => part.Coils);
}

/// <summary>Elements without a heard coil that lie in series with one or across it.</summary>
/// <param name="Parts">Their parts, as indices into <see cref="Circuit.Parts"/>, in order of declaration.</param>
/// <param name="Text">Their values as a person writes them, tracks left out: <c>100n</c>, <c>2n2 ∥ 1M</c>.</param>
/// <param name="IsNamed">True when it is worth saying.</param>
public sealed record PlainPart(ImmutableArray<int> Parts, string Text, bool IsNamed);
