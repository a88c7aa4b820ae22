using WireText.Electrical.Forms;

namespace WireText.Checks.Sound;

/// <summary>How two coils that are heard are joined.</summary>
internal enum PairJoin
{
    /// <summary>One of the two is not heard, or neither in series nor parallel.</summary>
    None,
    Series,
    Parallel,
}

/// <summary>The joins of the heard coils of a state, two by two; coils by their index among the elements.</summary>
internal sealed class CoilPairs
{
    private readonly Dictionary<(int First, int Second), PairJoin> joins = [];

    public static CoilPairs Of(HeardForm form)
    {
        var pairs = new CoilPairs();
        if (form.Root is { } root)
        {
            pairs.Add(root);
        }

        return pairs;
    }

    public IEnumerable<(int First, int Second)> Joined => joins.Keys;

    public PairJoin this[(int First, int Second) pair] => joins.GetValueOrDefault(pair);

    private void Add(FormNode node)
    {
        var (parts, join) = node switch
        {
            SeriesForm series => (series.Parts, PairJoin.Series),
            ParallelForm parallel => (parallel.Parts, PairJoin.Parallel),
            _ => ([], PairJoin.None),
        };
        for (var i = 0; i < parts.Length; i++)
        {
            Add(parts[i]);
            foreach (var other in parts.Skip(i + 1).SelectMany(part => part.Coils))
            {
                foreach (var coil in parts[i].Coils)
                {
                    var (a, b) = (coil.Coil.Index, other.Coil.Index);
                    joins[a < b ? (a, b) : (b, a)] = join;
                }
            }
        }
    }
}
