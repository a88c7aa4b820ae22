using System.Collections.Immutable;
using WireText.Circuits;

namespace WireText.Electrical.Sound;

/// <summary>Finds the fewest coils that, turned round, bring every state into phase.</summary>
public static class PhaseFlip
{
    /// <summary>More pickups than this turned round are no mistake of one lead; the search ends. Chosen.</summary>
    private const int MostTurned = 3;

    /// <summary>
    /// The coils of as few pickups as possible, the later-declared of equally many; a pickup whose own coils are against each
    /// other is turned coil by coil. Empty when none so few do it.
    /// </summary>
    /// <param name="states">States in which some coils are against others.</param>
    public static ImmutableArray<Coil> Find(ImmutableArray<PhaseGroups> states)
    {
        var coils = states
            .SelectMany(state => state.WithFirst.Concat(state.AgainstFirst))
            .DistinctBy(coil => coil.Index)
            .OrderBy(coil => coil.Index)
            .ToList();
        var units = coils
            .GroupBy(coil => coil.Part)
            .SelectMany(pickup =>
                IsSplitInside(states, pickup.Key)
                    ? pickup.Select(coil => new[] { coil })
                    :
                    [
                        [.. pickup],
                    ]
            )
            .Reverse()
            .ToList();
        for (var count = 1; count <= Math.Min(MostTurned, units.Count); count++)
        {
            foreach (var chosen in Choose(units, count, from: 0))
            {
                var turned = chosen.Select(coil => coil.Index).ToHashSet();
                if (states.All(state => AreInPhase(state, turned)))
                {
                    return [.. chosen.OrderBy(coil => coil.Index)];
                }
            }
        }

        return [];
    }

    private static bool IsSplitInside(ImmutableArray<PhaseGroups> states, int part) =>
        states.Any(state =>
            state.WithFirst.Any(coil => coil.Part == part) && state.AgainstFirst.Any(coil => coil.Part == part)
        );

    /// <summary>True when every coil lands on one side: all of one group turned and none of the other.</summary>
    private static bool AreInPhase(PhaseGroups state, HashSet<int> turned)
    {
        var sides = state
            .WithFirst.Select(coil => turned.Contains(coil.Index))
            .Concat(state.AgainstFirst.Select(coil => !turned.Contains(coil.Index)));
        return sides.Distinct().Count() == 1;
    }

    private static IEnumerable<Coil[]> Choose(List<Coil[]> units, int count, int from)
    {
        if (count == 0)
        {
            yield return [];
            yield break;
        }

        for (var i = from; i < units.Count; i++)
        {
            foreach (var rest in Choose(units, count - 1, i + 1))
            {
                yield return [.. units[i], .. rest];
            }
        }
    }
}
