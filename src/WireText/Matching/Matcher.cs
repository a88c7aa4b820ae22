using System.Collections.Immutable;
using WireText.Electrical.Studies;

namespace WireText.Matching;

/// <summary>Chooses from a bin of measured parts which goes where in a batch of one circuit.</summary>
public static class Matcher
{
    /// <summary>Instruments of one batch. Chosen.</summary>
    public const int MostInstruments = 100;

    /// <inheritdoc cref="MatchSearch.MostLooks"/>
    internal const long MostLooks = MatchSearch.MostLooks;

    /// <summary>Values of a slot that are tried when what to buy is looked for. Chosen: steps of a fortieth of the tolerance's range.</summary>
    private const int Steps = 40;

    /// <param name="pairs">Slots whose parts are to be alike, as indices into <see cref="MatchSlot.Of"/>.</param>
    /// <param name="count">Instruments, from 1 to <see cref="MostInstruments"/>.</param>
    public static MatchPlan Match(
        Study study,
        ImmutableArray<BinPart> bin,
        int count,
        ImmutableArray<(int, int)> pairs,
        CancellationToken cancellation = default
    )
    {
        var slots = MatchSlot.Of(study.Circuit);
        var goals = MatchGoal.Of(study, slots, pairs, cancellation);
        var costs = new MatchCosts(slots, goals, bin);
        var choice = new MatchSearch(costs, cancellation).Find(count);
        var spare = Enumerable.Range(0, slots.Length).Except(costs.Active).ToArray();
        Spare.Fill(costs, choice.Parts, spare);
        MatchedInstrument[] instruments =
        [
            .. choice
                .Parts.Select(parts => Instrument(costs, parts))
                .OrderBy(one => !one.Holds)
                .ThenBy(one => one.Cost),
        ];
        var used = choice.Parts.SelectMany(parts => parts).ToHashSet();
        return new MatchPlan(
            slots,
            goals,
            count,
            [.. instruments],
            choice.IsExact,
            choice.LeastCost,
            [.. bin.Where((_, part) => !used.Contains(part))],
            [
                .. Missing(costs, count - instruments.Length, used),
                .. instruments.SelectMany((one, place) => Better(costs, one, place)),
            ]
        );
    }

    private static MatchedInstrument Instrument(MatchCosts costs, int[] parts)
    {
        var (holds, cost) = costs.Of(parts);
        var chosen = costs.PartsOf(parts);
        return new MatchedInstrument(
            [.. chosen.Select(part => part!)],
            holds,
            cost,
            [.. costs.Goals.Select(goal => goal.FigureOf(chosen))],
            [.. costs.Goals.Select(goal => goal.DeviationOf(chosen))]
        );
    }

    /// <summary>What the instruments lack that the bin has not all parts for, when they take what is left.</summary>
    private static IEnumerable<WantedPart> Missing(MatchCosts costs, int count, HashSet<int> used)
    {
        var left = new WholeInstruments(costs.Fitting, costs.Bin.Length, used.Contains);
        for (var slot = 0; slot < costs.Slots.Length; slot++)
        {
            var lacking = Enumerable.Range(0, count).Count(_ => !left.Add(slot));
            if (lacking > 0)
            {
                var wanted = costs.Slots[slot];
                yield return new WantedPart(wanted, lacking, wanted.Least, wanted.Most, Instrument: null);
            }
        }
    }

    /// <summary>The one part of an instrument whose claims fail that has the widest range of values with which they hold; none where none does.</summary>
    private static IEnumerable<WantedPart> Better(MatchCosts costs, MatchedInstrument one, int place)
    {
        if (one.Holds)
        {
            yield break;
        }

        var best = costs
            .Active.Select(slot => RangeOf(costs, one, slot, place))
            .OfType<WantedPart>()
            .OrderByDescending(wanted => wanted.Most / wanted.Least)
            .FirstOrDefault();
        if (best is not null)
        {
            yield return best;
        }
    }

    private static WantedPart? RangeOf(MatchCosts costs, MatchedInstrument one, int slot, int place)
    {
        var wanted = costs.Slots[slot];
        BinPart?[] parts = [.. one.Parts];
        var (least, most) = (double.NaN, double.NaN);
        for (var step = 0; step <= Steps; step++)
        {
            var value = wanted.Least + ((wanted.Most - wanted.Least) * step / Steps);
            parts[slot] = one.Parts[slot] with { Value = value };
            if (costs.Goals.All(goal => !goal.IsClaimed || goal.DeviationOf(parts) <= 1))
            {
                (least, most) = (double.IsNaN(least) ? value : least, value);
            }
            else if (!double.IsNaN(least))
            {
                break;
            }
        }

        return double.IsNaN(least) ? null : new WantedPart(wanted, 1, least, most, place);
    }
}
