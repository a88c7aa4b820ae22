namespace WireText.Matching;

/// <summary>A choice of parts for whole instruments.</summary>
/// <param name="Parts">For each instrument a part for each slot.</param>
internal sealed record MatchChoice(int[][] Parts, int Holding, double Cost, bool IsExact, double LeastCost)
{
    public static readonly MatchChoice None = new([], 0, 0, IsExact: true, 0);

    /// <summary>More that hold, then more that are whole, then a lower cost.</summary>
    public bool IsBetterThan(MatchChoice other) =>
        Holding != other.Holding ? Holding > other.Holding
        : Parts.Length != other.Parts.Length ? Parts.Length > other.Parts.Length
        : Cost < other.Cost - 1e-12;
}

/// <summary>Looks for the best choice of parts.</summary>
internal sealed class MatchSearch(MatchCosts costs, CancellationToken cancellation)
{
    /// <summary>Looks at figures, in looks at a meter's reading, before a search ends where it stands. Chosen: a second or two.</summary>
    public const long MostLooks = 200_000;

    /// <summary>A claim that fails outweighs all that figures can be away; in squares of tolerances.</summary>
    private const double Failing = 1e8;

    /// <summary>A part that does not fit outweighs all claims.</summary>
    private const double Unfit = 1e12;

    /// <summary>Rounds over all slots. Chosen: a handful is usual.</summary>
    private const int MostRounds = 50;

    /// <param name="count">Instruments that are asked for.</param>
    public MatchChoice Find(int count)
    {
        var whole = WholeInstruments.Count(costs, count);
        var best = MatchChoice.None;
        var isExact = true;
        for (var size = whole; size > best.Holding; size--)
        {
            var found = costs.IsByPart ? ByPart(size) : BySearch(size);
            if (size == whole || found.IsBetterThan(best))
            {
                best = found;
            }

            isExact &= found.IsExact;
            if (!found.IsExact)
            {
                break;
            }
        }

        // What was not shown to be best for one size is none for all.
        return best with
        {
            IsExact = isExact,
        };
    }

    /// <summary>The cost is a sum over parts: the most instruments that hold by halving, each count an assignment, and the cheapest of those.</summary>
    private MatchChoice ByPart(int size)
    {
        var (low, high) = (0, size);
        var best = Assigned(size, 0)!;
        while (low < high)
        {
            var middle = (low + high + 1) / 2;
            if (Assigned(size, middle) is { } found)
            {
                (low, best) = (middle, found);
            }
            else
            {
                high = middle - 1;
            }
        }

        return Choice(best, isExact: true, null);
    }

    /// <summary>The cheapest parts of so many instruments of which the first ones hold; null where that cannot be.</summary>
    private int[][]? Assigned(int size, int holding)
    {
        var slots = costs.Slots.Length;
        var parts = AloneCosts();
        var columns = Assignment.Solve(size * slots, costs.Bin.Length, CostOf);
        var isThere = true;
        var chosen = new int[size][];
        for (var instrument = 0; instrument < size; instrument++)
        {
            chosen[instrument] = columns[(instrument * slots)..((instrument + 1) * slots)];
            for (var slot = 0; slot < slots; slot++)
            {
                isThere &= CostOf((instrument * slots) + slot, chosen[instrument][slot]) < Failing;
            }
        }

        return isThere ? chosen : null;

        double CostOf(int row, int part)
        {
            var (fits, holds, cost) = parts[row % slots][part];
            return !fits ? Unfit
                : !holds && row / slots < holding ? Failing
                : cost;
        }
    }

    /// <summary>For each slot and part: whether it fits, whether its claims hold with all else as written, and its cost.</summary>
    private (bool Fits, bool Holds, double Cost)[][] AloneCosts()
    {
        var slots = costs.Slots.Length;
        var alone = new (bool, bool, double)[slots][];
        var parts = new int[slots];
        for (var slot = 0; slot < slots; slot++)
        {
            alone[slot] = new (bool, bool, double)[costs.Bin.Length];
            Array.Fill(parts, -1);
            foreach (var part in costs.Fitting[slot])
            {
                parts[slot] = part;
                var (holds, cost) = (true, 0.0);
                for (var goal = 0; goal < costs.Goals.Length; goal++)
                {
                    if (costs.Goals[goal].Slots.Contains(slot))
                    {
                        var deviation = costs.DeviationOf(goal, parts);
                        holds &= deviation <= 1 || !costs.Goals[goal].IsClaimed;
                        cost += deviation * deviation;
                    }
                }

                alone[slot][part] = (true, holds, cost);
            }
        }

        return alone;
    }

    private MatchChoice BySearch(int size)
    {
        if (Assigned(size, 0) is not { } start)
        {
            return MatchChoice.None with { IsExact = false };
        }

        Improve(start);
        var best = Choice(start, isExact: false, null);
        if (InstrumentList.Of(costs, MostLooks) is not { } list)
        {
            return best with { LeastCost = 0 };
        }

        if (list.Greedy(size) is { } greedy)
        {
            Improve(greedy);
            var other = Choice(greedy, isExact: false, null);
            best = other.IsBetterThan(best) ? other : best;
        }

        var (packed, isProved) = list.Pack(size, best, cancellation);
        best = packed is null ? best : Choice(packed, isExact: false, null);
        return best with
        {
            IsExact = isProved,
            LeastCost = isProved ? best.Cost : Math.Min(best.Cost, list.LeastCost(size)),
        };
    }

    /// <summary>
    /// One slot after the other: with all other parts where they are, the best parts of that slot are an assignment. Then exchanges between
    /// slots of one kind. Until nothing is better.
    /// </summary>
    private void Improve(int[][] chosen)
    {
        for (var round = 0; round < MostRounds && costs.Looks < MostLooks; round++)
        {
            var before = Total(chosen);
            foreach (var slot in costs.Active)
            {
                cancellation.ThrowIfCancellationRequested();
                Reassign(chosen, slot);
            }

            Exchange(chosen);
            if (Total(chosen) >= before - 1e-9)
            {
                return;
            }
        }
    }

    private void Reassign(int[][] chosen, int slot)
    {
        var used = chosen.SelectMany(parts => parts.Where((_, other) => other != slot)).ToHashSet();
        var free = costs.Fitting[slot].Where(part => !used.Contains(part)).ToList();
        var trial = chosen.Select(parts => parts.ToArray()).ToArray();
        var columns = Assignment.Solve(
            chosen.Length,
            free.Count,
            (instrument, column) =>
            {
                trial[instrument][slot] = free[column];
                return Weighed(trial[instrument]);
            }
        );
        for (var instrument = 0; instrument < chosen.Length; instrument++)
        {
            trial[instrument][slot] = free[columns[instrument]];
        }

        if (Total(trial) < Total(chosen) - 1e-9)
        {
            for (var instrument = 0; instrument < chosen.Length; instrument++)
            {
                chosen[instrument][slot] = trial[instrument][slot];
            }
        }
    }

    private void Exchange(int[][] chosen)
    {
        var slots = costs.Slots.Length;
        for (var first = 0; first < chosen.Length * slots; first++)
        {
            for (var second = first + 1; second < chosen.Length * slots && costs.Looks < MostLooks; second++)
            {
                var ((a, s), (b, t)) = ((first / slots, first % slots), (second / slots, second % slots));
                var (x, y) = (chosen[a][s], chosen[b][t]);
                if (s == t || !costs.Fitting[s].Contains(y) || !costs.Fitting[t].Contains(x))
                {
                    continue;
                }

                var before = Weighed(chosen[a]) + (a == b ? 0 : Weighed(chosen[b]));
                (chosen[a][s], chosen[b][t]) = (y, x);
                if (Weighed(chosen[a]) + (a == b ? 0 : Weighed(chosen[b])) >= before - 1e-9)
                {
                    (chosen[a][s], chosen[b][t]) = (x, y);
                }
            }
        }
    }

    private double Weighed(int[] parts)
    {
        var (holds, cost) = costs.Of(parts);
        return cost + (holds ? 0 : Failing);
    }

    private double Total(int[][] chosen) => chosen.Sum(Weighed);

    private MatchChoice Choice(int[][] chosen, bool isExact, double? least)
    {
        var each = chosen.Select(parts => costs.Of(parts)).ToList();
        var cost = each.Sum(one => one.Cost);
        return new MatchChoice(chosen, each.Count(one => one.Holds), cost, isExact, least ?? cost);
    }
}
