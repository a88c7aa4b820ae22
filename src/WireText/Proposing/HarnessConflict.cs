using System.Collections.Immutable;
using WireText.Circuits;

namespace WireText.Proposing;

/// <summary>Finds positions that exclude each other: together no harness does them, and without any one of them one does.</summary>
internal static class HarnessConflict
{
    /// <summary>The positions of the open controls, in words; null where the budget ended before it was known.</summary>
    public static ImmutableArray<string>? Of(
        HarnessProblem problem,
        JoiningJudge judge,
        HarnessBudget budget,
        CancellationToken cancellation
    )
    {
        var open = problem.Circuit.Open.Select(one => one.Control).ToList();
        var kept = problem.States.Select(state => WordsOf(state)).Distinct(StringComparer.Ordinal).ToList();
        foreach (var words in kept.AsEnumerable().Reverse().ToList())
        {
            var left = kept.FindAll(other => other != words);
            var isPossible = HarnessLeast.IsPossible(
                new HarnessSearch(problem.Without(state => !left.Contains(WordsOf(state))), judge, budget, cancellation)
            );
            if (budget.IsSpent)
            {
                return null;
            }

            if (!isPossible)
            {
                kept = left;
            }
        }

        return [.. kept];

        string WordsOf(HarnessState state) =>
            string.Join(
                ' ',
                open.Select(control => StateText.Of(problem.Circuit.Controls[control], state.State[control]!.Value))
            );
    }
}
