using System.Collections.Immutable;

namespace WireText.Matching;

/// <summary>Every instrument that can be made of a bin, as far as goals tell them apart: those that hold first, then by cost.</summary>
internal sealed class InstrumentList
{
    /// <summary>Instruments that are listed. Chosen: memory and a sort of a tenth of a second.</summary>
    public const int MostInstruments = 100_000;

    /// <summary>Steps of the search for a set of them without a part in common. Chosen: a tenth of a second.</summary>
    public const long MostSteps = 1_000_000;

    private readonly MatchCosts costs;
    private readonly List<(int[] Parts, bool Holds, double Cost)> all;
    private readonly int holding;

    private InstrumentList(MatchCosts costs, List<(int[] Parts, bool Holds, double Cost)> all)
    {
        this.costs = costs;
        this.all = [.. all.OrderBy(one => !one.Holds).ThenBy(one => one.Cost)];
        holding = all.Count(one => one.Holds);
    }

    /// <summary>Null where there are too many, or too much is to be looked at.</summary>
    public static InstrumentList? Of(MatchCosts costs, long mostLooks)
    {
        var looks = costs.Goals.Sum(goal => goal.Weight * Product(costs, goal.Slots));
        if (Product(costs, costs.Active) > MostInstruments || looks > mostLooks)
        {
            return null;
        }

        var found = new List<(int[], bool, double)>();
        var parts = Enumerable.Repeat(-1, costs.Slots.Length).ToArray();
        Fill(0);
        return new InstrumentList(costs, found);

        void Fill(int place)
        {
            if (place == costs.Active.Length)
            {
                var (holds, cost) = costs.Of(parts);
                found.Add(([.. parts], holds, cost));
                return;
            }

            var slot = costs.Active[place];
            foreach (var part in costs.Fitting[slot])
            {
                if (!parts.Contains(part))
                {
                    parts[slot] = part;
                    Fill(place + 1);
                    parts[slot] = -1;
                }
            }
        }
    }

    /// <summary>The first of the list whose parts are still there, one after the other; null where the others leave none.</summary>
    public int[][]? Greedy(int size)
    {
        var used = new HashSet<int>();
        var chosen = new List<int[]>();
        foreach (var one in all)
        {
            if (chosen.Count < size && !one.Parts.Any(used.Contains))
            {
                chosen.Add(one.Parts);
                used.UnionWith(one.Parts.Where(part => part >= 0));
            }
        }

        return chosen.Count == size ? Filled(chosen) : null;
    }

    /// <summary>Instruments without a part in common that are better than a choice; null where none was found, and whether all were looked at.</summary>
    /// <remarks>Depth first in the order of the list, so that those behind cost at least as much: branch and bound.</remarks>
    public (int[][]? Parts, bool IsProved) Pack(int size, MatchChoice than, CancellationToken cancellation)
    {
        var (bestHolding, bestCost, best) = (than.Holding, than.Cost, (int[][]?)null);
        var used = new bool[costs.Bin.Length];
        var chosen = new List<int[]>();
        var steps = 0L;
        Choose(0, 0, 0);
        return (best, steps <= MostSteps);

        void Choose(int start, int held, double cost)
        {
            if (chosen.Count == size)
            {
                if ((held > bestHolding || cost < bestCost - 1e-12) && Filled(chosen) is { } filled)
                {
                    (bestHolding, bestCost, best) = (held, cost, filled);
                }

                return;
            }

            var left = size - chosen.Count;
            for (var i = start; i < all.Count; i++)
            {
                if (++steps > MostSteps)
                {
                    return;
                }

                if (steps % 4_096 == 0)
                {
                    cancellation.ThrowIfCancellationRequested();
                }

                var mayHold = Math.Clamp(holding - i, 0, left);
                var least =
                    cost
                    + (mayHold * all[i].Cost)
                    + (mayHold < left ? (left - mayHold) * all[Math.Max(i, Math.Min(holding, all.Count - 1))].Cost : 0);
                if (held + mayHold < bestHolding || (held + mayHold == bestHolding && least >= bestCost - 1e-12))
                {
                    return;
                }

                if (Array.Exists(all[i].Parts, part => part >= 0 && used[part]))
                {
                    continue;
                }

                Mark(all[i].Parts, isUsed: true);
                chosen.Add(all[i].Parts);
                Choose(i + 1, held + (all[i].Holds ? 1 : 0), cost + all[i].Cost);
                chosen.RemoveAt(chosen.Count - 1);
                Mark(all[i].Parts, isUsed: false);
            }
        }

        void Mark(int[] parts, bool isUsed)
        {
            foreach (var part in parts.Where(part => part >= 0))
            {
                used[part] = isUsed;
            }
        }
    }

    /// <summary>
    /// No choice of so many costs less: each goal's cost is shared out among its slots, a part's share at the least that the goal can come to
    /// with it, and each slot's parts are the cheapest assignment of those shares.
    /// </summary>
    public double LeastCost(int size)
    {
        var shares = costs.Slots.Select(_ => new double[costs.Bin.Length]).ToArray();
        for (var goal = 0; goal < costs.Goals.Length; goal++)
        {
            var slots = costs.Goals[goal].Slots;
            var least = slots
                .Select(_ => Enumerable.Repeat(double.PositiveInfinity, costs.Bin.Length).ToArray())
                .ToArray();
            foreach (var one in all)
            {
                var deviation = costs.DeviationOf(goal, one.Parts);
                for (var i = 0; i < slots.Length; i++)
                {
                    var part = one.Parts[slots[i]];
                    least[i][part] = Math.Min(least[i][part], deviation * deviation);
                }
            }

            for (var i = 0; i < slots.Length; i++)
            {
                foreach (var part in costs.Fitting[slots[i]])
                {
                    shares[slots[i]][part] += double.IsFinite(least[i][part]) ? least[i][part] / slots.Length : 0;
                }
            }
        }

        var byShares = costs.Active.Sum(slot =>
        {
            var fitting = costs.Fitting[slot];
            return Assignment
                .Solve(size, fitting.Length, (_, column) => shares[slot][fitting[column]])
                .Sum(column => shares[slot][fitting[column]]);
        });
        return Math.Max(byShares, size * all.Min(one => one.Cost));
    }

    /// <summary>With the nearest of what is left in the slots that no goal depends on; null where too few are left.</summary>
    private int[][]? Filled(IReadOnlyList<int[]> chosen)
    {
        int[] others = [.. Enumerable.Range(0, costs.Slots.Length).Except(costs.Active)];
        var filled = chosen.Select(parts => parts.ToArray()).ToArray();
        return Spare.Fill(costs, filled, others) ? filled : null;
    }

    private static double Product(MatchCosts costs, ImmutableArray<int> slots) =>
        slots.Aggregate(1.0, (product, slot) => product * costs.Fitting[slot].Length);
}
