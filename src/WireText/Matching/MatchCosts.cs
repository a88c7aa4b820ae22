using System.Collections.Immutable;

namespace WireText.Matching;

/// <summary>What parts cost in an instrument. Each goal is looked at once for the parts that it depends on.</summary>
internal sealed class MatchCosts
{
    private readonly Dictionary<long, double>[] known;

    public MatchCosts(ImmutableArray<MatchSlot> slots, ImmutableArray<MatchGoal> goals, ImmutableArray<BinPart> bin)
    {
        (Slots, Goals, Bin) = (slots, goals, bin);
        known = [.. goals.Select(_ => new Dictionary<long, double>())];
        Fitting =
        [
            .. slots.Select(slot =>
                Enumerable.Range(0, bin.Length).Where(part => slot.Fits(bin[part])).ToImmutableArray()
            ),
        ];
        Active = [.. goals.SelectMany(goal => goal.Slots).Distinct().Order()];
    }

    public ImmutableArray<MatchSlot> Slots { get; }

    public ImmutableArray<MatchGoal> Goals { get; }

    public ImmutableArray<BinPart> Bin { get; }

    /// <summary>For each slot the parts of the bin that fit, as indices, in order.</summary>
    public ImmutableArray<ImmutableArray<int>> Fitting { get; }

    /// <summary>The slots that some goal depends on.</summary>
    public ImmutableArray<int> Active { get; }

    /// <summary>Looks so far, in looks at a meter's reading.</summary>
    public long Looks { get; private set; }

    /// <summary>True where each goal depends on one part, so that the cost is a sum over parts.</summary>
    public bool IsByPart => Goals.All(goal => goal.Slots.Length <= 1);

    /// <summary>The deviation of one goal, in tolerances.</summary>
    /// <param name="parts">For each slot a part of the bin, or −1 for the value as written.</param>
    public double DeviationOf(int goal, ReadOnlySpan<int> parts)
    {
        var key = 0L;
        foreach (var slot in Goals[goal].Slots)
        {
            key = unchecked((key * (Bin.Length + 1)) + parts[slot] + 1);
        }

        if (!known[goal].TryGetValue(key, out var deviation))
        {
            Looks += Goals[goal].Weight;
            known[goal].Add(key, deviation = Goals[goal].DeviationOf(PartsOf(parts)));
        }

        return deviation;
    }

    /// <summary>Whether every claim holds, and the cost, of one instrument.</summary>
    public (bool Holds, double Cost) Of(ReadOnlySpan<int> parts)
    {
        var (holds, cost) = (true, 0.0);
        for (var goal = 0; goal < Goals.Length; goal++)
        {
            var deviation = DeviationOf(goal, parts);
            holds &= deviation <= 1 || !Goals[goal].IsClaimed;
            cost += deviation * deviation;
        }

        return (holds, cost);
    }

    public BinPart?[] PartsOf(ReadOnlySpan<int> parts)
    {
        var found = new BinPart?[parts.Length];
        for (var slot = 0; slot < parts.Length; slot++)
        {
            found[slot] = parts[slot] < 0 ? null : Bin[parts[slot]];
        }

        return found;
    }
}
